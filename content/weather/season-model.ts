import { HEAT_METHODS, type HeatMethod } from '../../src/agronomy/degree-days.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { phraseOf, type StandingPhrase } from '../../src/book/standing-phrase.ts';
import type { Day } from '../../src/day.ts';
import type { Figure } from '../../src/figure.ts';
import type { HeatSettings, Thresholds } from '../../src/garden/weather-settings.ts';
import type { Gap } from '../../src/ledger/weather/gaps.ts';
import { WEATHER_MEASURES, type WeatherMeasure } from '../../src/ledger/weather/measure.ts';
import type { SeasonMeasure, SeasonWeather } from '../../src/ledger/weather/season-weather.ts';
import type { Spell } from '../../src/ledger/weather/spells.ts';

export interface SeasonModel {
  readonly label: string;
  readonly station: string;
  /** When the station is read: morning, evening or midnight. */
  readonly read: string | null;
  readonly over: boolean;
  readonly first: Day;
  readonly last: Day;
  readonly days: number;
  readonly thresholds: Thresholds;
  readonly heat_settings: HeatSettings;
  readonly rows: readonly MeasureRow[];
  readonly warmth: StandingPhrase | null;
  readonly wetness: StandingPhrase | null;
  readonly rain: Figure;
  readonly wet_days: Figure;
  readonly hot_days: Figure;
  readonly mean: Figure;
  readonly warmest: { readonly figure: Figure; readonly on: Day | null };
  readonly coldest: { readonly figure: Figure; readonly on: Day | null };
  readonly wettest: { readonly figure: Figure; readonly on: Day | null };
  readonly longest_dry: Spell | null;
  readonly dry_spells: readonly Spell[];
  /** What was not read, and when; empty when every day was. */
  readonly gaps: readonly GapGroup[];
  /** Years of the record with these dates, whether ranked or not. */
  readonly years: number;
  /** Years left out of the ranking of temperatures or of rain, with too many days unread. */
  readonly left_out: readonly string[];
  readonly heat: readonly HeatRow[];
  readonly chart: string | null;
  /** Other seasons of the book, the last first; empty on an earlier season's page. */
  readonly seasons: readonly SeasonRow[];
}

export interface GapGroup {
  readonly lacks: Gap['lacks'];
  readonly stretches: readonly Gap[];
  /** Stretches not listed. */
  readonly more: number;
}

export interface MeasureRow {
  readonly measure: WeatherMeasure;
  /** One of the few a home book prints. */
  readonly plain: boolean;
  readonly figure: Figure;
  readonly phrase: StandingPhrase | null;
  /** Of the other years. */
  readonly usual: number | null;
  readonly lowest: number | null;
  readonly highest: number | null;
}

export interface HeatRow {
  readonly method: HeatMethod;
  readonly figure: Figure;
  readonly phrase: StandingPhrase | null;
  readonly capped: boolean;
}

export interface SeasonRow {
  readonly label: string;
  readonly path: string;
  readonly mean: Figure;
  readonly heat: Figure;
  readonly rain: Figure;
  readonly dry_run: Figure;
}

const MOST_STRETCHES = 5;
const PLAIN: readonly WeatherMeasure[] = ['mean_c', 'hot_days', 'rain_mm', 'wet_days', 'dry_run_days'];

/** Everything the page of one season's weather reads. */
export function seasonModel(
  facts: Facts,
  season: SeasonWeather,
  all: readonly SeasonWeather[],
  chart: string | null,
): SeasonModel {
  const { measures, heat, settings, window, gaps } = season;
  return {
    label: season.season.label,
    station: season.station,
    read: facts.garden.about.weather?.read ?? null,
    over: season.season.ends_on <= (facts.today ?? season.season.ends_on),
    first: window.first,
    last: window.last,
    days: window.days.length,
    thresholds: settings.thresholds,
    heat_settings: settings.heat,
    rows: WEATHER_MEASURES.filter((measure) => measures[measure].figure.value !== null).map((measure) => ({
      ...measureRow(measure, measures[measure]),
      // Without a gauge the words are all there is of the rain.
      plain: PLAIN.includes(measure) || (measure === 'soaking_days' && measures.rain_mm.figure.value === null),
    })),
    warmth: phraseOf(measures.mean_c.standing),
    wetness: phraseOf(measures.rain_mm.standing),
    rain: measures.rain_mm.figure,
    wet_days: measures.wet_days.figure,
    hot_days: measures.hot_days.figure,
    mean: measures.mean_c.figure,
    warmest: season.warmest,
    coldest: season.coldest,
    wettest: season.wettest,
    longest_dry: longestOf(season.dry_spells),
    dry_spells: season.dry_spells,
    gaps: gapGroups(gaps),
    years: measures.wet_days.years.length,
    left_out: leftOut([measures.mean_c, measures.rain_mm]),
    heat: HEAT_METHODS.map((method) => ({
      method,
      figure: heat[method].figure,
      phrase: phraseOf(heat[method].standing),
      capped: method !== 'average',
    })),
    chart,
    seasons: all.map((other, index) => seasonRow(other, index === 0)),
  };
}

function gapGroups(gaps: readonly Gap[]): GapGroup[] {
  return (['all', 'rain', 'temperature'] as const).flatMap((lacks) => {
    const stretches = gaps.filter((gap) => gap.lacks === lacks);
    const listed = stretches.slice(0, MOST_STRETCHES);
    return stretches.length > 0 ? [{ lacks, stretches: listed, more: stretches.length - listed.length }] : [];
  });
}

const measureRow = (measure: WeatherMeasure, { figure, standing }: SeasonMeasure): Omit<MeasureRow, 'plain'> => ({
  measure,
  figure,
  phrase: phraseOf(standing),
  usual: standing?.middle ?? null,
  lowest: standing?.lowest ?? null,
  highest: standing?.highest ?? null,
});

const longestOf = (spells: readonly Spell[]): Spell | null =>
  spells.reduce<Spell | null>((longest, spell) => (longest && longest.days >= spell.days ? longest : spell), null);

/** Years with readings but too few to rank, by either measure; none when nothing is ranked. */
function leftOut(measures: readonly SeasonMeasure[]): string[] {
  const labels = measures.flatMap(({ standing, years }) =>
    standing
      ? years.filter(({ label, read }) => read > 0 && !standing.years.includes(label)).map(({ label }) => label)
      : [],
  );
  return [...new Set(labels)].sort();
}

const seasonRow = ({ season, measures }: SeasonWeather, isLatest: boolean): SeasonRow => ({
  label: season.label,
  path: isLatest ? 'weather/' : `weather/${season.slug.toLowerCase()}/`,
  mean: measures.mean_c.figure,
  heat: measures.heat_c_days.figure,
  rain: measures.rain_mm.figure,
  dry_run: measures.dry_run_days.figure,
});
