import { HEAT_METHODS } from '../../src/agronomy/degree-days.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Figure } from '../../src/figure.ts';
import { isEnough } from '../../src/ledger/weather/long-record.ts';
import { WEATHER_MEASURES } from '../../src/ledger/weather/measure.ts';
import type { SeasonWeather } from '../../src/ledger/weather/season-weather.ts';
import { stripChart } from './charts.ts';
import { seasonModel } from './season-model.ts';
import { heatTable, yearsTable } from './tables.ts';

/** What was the weather like? Rain, heat, spells, and where the season stands among the years. */
export const weather: QuestionChapter = {
  kind: 'question',
  id: 'weather',
  write(facts) {
    const seasons = [...facts.ledger.weather.values()].reverse();
    const [latest, ...earlier] = seasons;
    if (!latest) return [emptyPage(facts)];
    return [
      { ...seasonPage(facts, latest, seasons), path: 'weather/', title: FRAME.title, listed: true, earlier: false },
      ...earlier.map((season) => seasonPage(facts, season, [])),
    ];
  },
};

const FRAME = {
  chapter: 'weather',
  template: 'weather/index.njk',
  title: 'What was the weather like?',
  finding: 'weather/finding.njk',
  cautions: [],
};

const emptyPage = ({ garden }: Facts): Page => ({
  ...FRAME,
  path: 'weather/',
  level: recordLevel('little', { little: false, some: false, full: false }),
  model: { season: null, station: garden.about.weather?.station ?? null },
  charts: [],
  tables: [],
  figures: [],
  listed: true,
});

function seasonPage(facts: Facts, season: SeasonWeather, all: readonly SeasonWeather[]): Page {
  const chart = stripChart(facts, season);
  const { label, slug } = season.season;
  return {
    ...FRAME,
    path: `weather/${slug.toLowerCase()}/`,
    title: `What was the weather like in ${label}?`,
    level: levelOf(season),
    model: { season: seasonModel(facts, season, all, chart?.id ?? null) },
    charts: chart ? [chart] : [],
    tables: [yearsTable(season), heatTable(season)],
    figures: figuresOf(season),
    listed: false,
    earlier: true,
  };
}

/** Rain in words, then a gauge, then a thermometer as well. */
function levelOf({ measures }: SeasonWeather): RecordLevel {
  const isRead = (measure: 'rain_mm' | 'mean_c'): boolean => {
    const { own } = measures[measure];
    return own !== null && isEnough(own);
  };
  return recordLevel('little', {
    little: measures.wet_days.figure.value !== null || measures.mean_c.figure.value !== null,
    some: measures.rain_mm.figure.value !== null,
    full: isRead('rain_mm') && isRead('mean_c'),
  });
}

const figuresOf = ({ measures, heat, warmest, coldest, wettest }: SeasonWeather): Figure[] => [
  ...new Set([
    ...WEATHER_MEASURES.flatMap((measure) => [measures[measure].figure, measures[measure].place]),
    ...HEAT_METHODS.flatMap((method) => [heat[method].figure, heat[method].place]),
    warmest.figure,
    coldest.figure,
    wettest.figure,
  ]),
];
