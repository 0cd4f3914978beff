import { type Rank, rankOf } from '../../statistics/rank.ts';
import { type Measured, measured, type WeatherMeasure, type WeatherSettings } from './measure.ts';
import type { Window } from './window.ts';

/** A year takes part in a ranking when this share of its days was read. */
export const ENOUGH_READ = 0.95;
/** Fewer years are not ranked. */
export const FEWEST_YEARS = 5;

export interface YearMeasured extends Measured {
  readonly label: string;
}

/**
 * Where one window stands among the same dates of all years with enough readings, itself counted in. Sums and counts
 * are compared evened out to all days, or a few unread days would cost a year its place.
 */
export interface Standing {
  readonly from_top: Rank;
  readonly from_bottom: Rank;
  /** Of the other years. */
  readonly lowest: number;
  readonly middle: number;
  readonly highest: number;
  readonly years: readonly string[];
}

/** Windows are shared by seasons, and with them what was measured in them. */
const known = new WeakMap<Window, Map<string, YearMeasured>>();

/** One measure in every year of the record, whatever part of it was read. */
export function yearsMeasured(
  windows: readonly Window[],
  measure: WeatherMeasure,
  settings: WeatherSettings,
): YearMeasured[] {
  const how = JSON.stringify([measure, settings]);
  return windows.map((window) => {
    const told = known.get(window) ?? new Map<string, YearMeasured>();
    known.set(window, told);
    const year = told.get(how) ?? { label: window.label, ...measured(window, measure, settings) };
    told.set(how, year);
    return year;
  });
}

export const isEnough = ({ read, of }: Pick<Measured, 'read' | 'of'>): boolean => read >= ENOUGH_READ * of;

/** Null when the year itself, or the record, has too little to rank. */
export function standingOf(label: string, years: readonly YearMeasured[]): Standing | null {
  const ranked = years.flatMap((year) =>
    year.evened !== null && isEnough(year) ? [{ label: year.label, value: year.evened }] : [],
  );
  const own = ranked.find((year) => year.label === label);
  const others = ranked
    .filter((year) => year !== own)
    .map(({ value }) => value)
    .sort((a, b) => a - b);
  const [lowest, highest] = [others[0], others.at(-1)];
  if (!own || ranked.length < FEWEST_YEARS || lowest === undefined || highest === undefined) return null;
  const values = ranked.map(({ value }) => value);
  return {
    from_top: rankOf(own.value, values, 'top'),
    from_bottom: rankOf(own.value, values, 'bottom'),
    lowest,
    middle: middleOf(others),
    highest,
    years: ranked.map((year) => year.label),
  };
}

/** The median of sorted numbers. */
export function middleOf(sorted: readonly number[]): number {
  const half = Math.floor(sorted.length / 2);
  const [below, above] = [sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN, sorted[half] ?? Number.NaN];
  return (below + above) / 2;
}
