import type { Facts } from '../../src/book/chapter.ts';
import { isOneDay } from '../../src/dated.ts';
import { type Day, daysBetween } from '../../src/day.ts';
import { type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop, Planting, Season } from '../../src/garden/garden.ts';
import { cropOf, type Flower, plantingOf } from './flower-of.ts';

/** The first flowers of one sex, over the plantings of one crop in one season. */
export interface FlowerSpan {
  readonly first: Day;
  readonly last: Day;
  /** Plantings or, where an entry names none, entries. */
  readonly count: number;
  /** Days from planting out; null where no planting with a known day is named. */
  readonly days: { readonly soonest: Figure; readonly latest: Figure } | null;
  /** The same in whole weeks, as the pages say them. */
  readonly weeks: { readonly low: number; readonly high: number; readonly side: 'before' | 'after' } | null;
}

/** Of one planting, or of the plot as a whole. */
export interface FlowerRow {
  readonly planting: Planting | null;
  readonly male: Seen | null;
  readonly female: Seen | null;
}

interface Seen {
  readonly on: Day;
  /** Null where the day of planting out is not known. */
  readonly days: number | null;
  readonly key: string;
}

export interface FirstFlowers {
  readonly crop: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly label: string;
  readonly slug: string;
  readonly rows: readonly FlowerRow[];
  readonly male: FlowerSpan | null;
  readonly female: FlowerSpan | null;
}

/** Of each crop the last season with a first flower written down to the day, or about; crops without are left out. */
export const firstFlowers = (facts: Facts): FirstFlowers[] =>
  facts.ledger.years.flatMap(({ crop }) => {
    const season = facts.garden.seasons.findLast((one) => rowsOf(one, crop).length > 0);
    return season ? [inSeason(facts, season, crop)] : [];
  });

function inSeason({ garden, ledger }: Facts, season: Season, crop: Crop): FirstFlowers {
  const rows = rowsOf(season, crop);
  const span = (sex: 'male' | 'female'): FlowerSpan | null => {
    const seen = rows.flatMap((row) => row[sex] ?? []);
    const days = seen.flatMap((one) => one.days ?? []);
    const figure = (end: 'soonest' | 'latest', value: number): Figure =>
      happened({
        id: `flowers.${season.slug}.${crop.id}.first_${sex}_${end}`,
        value,
        unit: 'days',
        n: days.length,
        replicate: { kind: 'planting', count: days.length },
        method: 'first-flower-days',
        basis: ledger.bases.of(seen.map(({ key }) => key)),
        reason: null,
      });
    const dates = seen.map(({ on }) => on).sort();
    const [first, last] = [dates[0], dates.at(-1)];
    if (!first || !last) return null;
    const [soonest, latest] = [Math.min(...days), Math.max(...days)];
    const told = days.length > 0;
    return {
      first,
      last,
      count: seen.length,
      days: told ? { soonest: figure('soonest', soonest), latest: figure('latest', latest) } : null,
      weeks: told ? weeksOf(soonest, latest) : null,
    };
  };
  const { slug, label } = season;
  const names = cropNames(crop, garden.about.locale);
  return { crop: crop.id, names, label, slug, rows, male: span('male'), female: span('female') };
}

/** A flower may open in the pot: days before planting out count below nought. */
function weeksOf(soonest: number, latest: number): NonNullable<FlowerSpan['weeks']> {
  const weeks = (days: number): number => Math.round(Math.abs(days) / 7);
  if (latest < 0) return { low: weeks(latest), high: weeks(soonest), side: 'before' };
  return { low: soonest < 0 ? 0 : weeks(soonest), high: weeks(latest), side: 'after' };
}

/** By planting, those of the plot as a whole last; of several entries the earliest. */
export function rowsOf(season: Season, crop: Crop): FlowerRow[] {
  const own = season.events.flowering.filter((flower) => cropOf(season, flower)?.id === crop.id);
  const seen = (entries: readonly Flower[], what: Flower['what'], planting: Planting | null): Seen | null => {
    const [first] = entries
      .flatMap(({ what: is, seen_on, key }) => (is === what && isOneDay(seen_on) ? [{ on: seen_on.first, key }] : []))
      .sort((a, b) => (a.on < b.on ? -1 : 1));
    return first ? { ...first, days: planting && daysFrom(planting, first.on) } : null;
  };
  const plantings = [...season.plantings.filter(({ variety }) => variety?.crop.id === crop.id), null];
  return plantings.flatMap((planting) => {
    const entries = own.filter((flower) => (plantingOf(season, flower)?.id ?? null) === (planting?.id ?? null));
    const male = seen(entries, 'first-male', planting);
    const female = seen(entries, 'first-female', planting);
    return male || female ? [{ planting, male, female }] : [];
  });
}

const daysFrom = ({ planted_on }: Planting, on: Day): number | null =>
  isOneDay(planted_on) ? daysBetween(planted_on.first, on) : null;

export const spanFigures = (span: FlowerSpan | null): Figure[] =>
  span?.days ? [span.days.soonest, span.days.latest] : [];
