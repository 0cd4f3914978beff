/** The last frost of spring and the first of autumn, year by year, from the lowest temperatures of days. */
import { type Day, dayOf, daysBetween, monthOf, yearOf } from '../day.ts';

/** Fewer than this share of a half-year's days read, and a frost may have come on one of the others. */
const ENOUGH_READ = 0.95;

export interface NightRead {
  readonly date: Day;
  /** null when nobody read it. */
  readonly tmin_c: number | null;
}

export interface FrostRules {
  /** South of the equator a year runs from July to June, elsewhere from January to December. */
  readonly southern: boolean;
  /** A night this cold or colder is a frost: 0 °C in the air at the height of the thermometer unless told. */
  readonly threshold_c?: number;
}

/** The day of the frost, null when there was none in the half-year; or why that cannot be said. */
export type FrostOfHalf =
  | { readonly on: Day | null }
  | { readonly cannot: { readonly code: 'too-few-days'; readonly read: number; readonly of: number } };

/** A year with its summer in the middle. */
export interface FrostYear {
  readonly starts_on: Day;
  /** First day of the second half: 1 July, or 1 January in the south. */
  readonly turns_on: Day;
  /** Last frost before it turns. */
  readonly spring: FrostOfHalf;
  /** First frost from then on. */
  readonly autumn: FrostOfHalf;
}

/**
 * Every year the days touch, in order, with its last frost before midsummer and its first after. At or below the
 * threshold is a frost: common practice for freeze dates in the USA (32 °F or lower, from memory); the climate index
 * "frost days" counts only below 0 °C and can differ. A half-year counts when 95 of 100 of its days were read; a day
 * absent or null is not read, so a frost found is the last (first) one read.
 * Throws RangeError for a date that comes twice, or a temperature or threshold that is not finite.
 */
export function frostDates(days: readonly NightRead[], { southern, threshold_c = 0 }: FrostRules): FrostYear[] {
  check('threshold_c', threshold_c);
  const halves = byHalf(days);
  const years = [...new Set([...halves.keys()].map((half) => Math.floor((half - Number(southern)) / 2)))];
  return years
    .sort((a, b) => a - b)
    .map((year) => {
      const spring = 2 * year + Number(southern);
      const frosts = (half: number) => frostsOf(half, halves.get(half) ?? [], threshold_c);
      return {
        starts_on: firstOf(spring),
        turns_on: firstOf(spring + 1),
        spring: frosts(spring).last,
        autumn: frosts(spring + 1).first,
      };
    });
}

/** Read days by calendar half-year, numbered from that of January in the year 0. */
function byHalf(days: readonly NightRead[]): Map<number, NightRead[]> {
  const halves = new Map<number, NightRead[]>();
  const seen = new Set<Day>();
  for (const day of days) {
    if (seen.has(day.date)) throw new RangeError(`invalid date: ${day.date} twice`);
    seen.add(day.date);
    if (day.tmin_c !== null) check('tmin_c', day.tmin_c);
    const half = 2 * yearOf(day.date) + (monthOf(day.date) > 6 ? 1 : 0);
    const others = halves.get(half) ?? [];
    others.push(day);
    halves.set(half, others);
  }
  return halves;
}

const firstOf = (half: number): Day => dayOf(Math.floor(half / 2), half % 2 === 0 ? 1 : 7, 1);

function frostsOf(half: number, days: readonly NightRead[], threshold_c: number) {
  const of = daysBetween(firstOf(half), firstOf(half + 1));
  const read = days.filter(({ tmin_c }) => tmin_c !== null).length;
  if (read < ENOUGH_READ * of) {
    const cannot = { cannot: { code: 'too-few-days' as const, read, of } };
    return { first: cannot, last: cannot };
  }
  const frosts = days
    .filter(({ tmin_c }) => tmin_c !== null && tmin_c <= threshold_c)
    .map(({ date }) => date)
    .sort();
  return { first: { on: frosts[0] ?? null }, last: { on: frosts.at(-1) ?? null } };
}

function check(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
