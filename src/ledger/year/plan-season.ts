import { type Day, dateOf, dayOf, monthOf, yearOf } from '../../day.ts';
import type { Garden } from '../../garden/garden.ts';

/** The season a plan is for: the one that runs on the day of the book, else the next. */
export interface PlanSeason {
  readonly label: string;
  readonly starts_on: Day;
  readonly ends_on: Day;
  /** It is on, and its own plantings count. */
  readonly running: boolean;
}

/** Null before the first season. */
export function planSeasonOf({ seasons }: Garden, today: Day | null): PlanSeason | null {
  const latest = seasons.at(-1);
  if (!latest || today === null) return null;
  if (today < latest.ends_on) return { ...edges(latest), label: latest.label, running: true };
  const [starts_on, ends_on] = [inYears(latest.starts_on, 1), inYears(latest.ends_on, 1)];
  return { label: labelOf(starts_on, ends_on), starts_on, ends_on, running: false };
}

/** The same date so many years on; 29 February becomes 1 March where there is none. */
export const inYears = (day: Day, years: number): Day => dayOf(yearOf(day) + years, monthOf(day), dateOf(day));

const edges = ({ starts_on, ends_on }: Pick<PlanSeason, 'starts_on' | 'ends_on'>) => ({ starts_on, ends_on });

const labelOf = (first: Day, last: Day): string =>
  yearOf(first) === yearOf(last) ? first.slice(0, 4) : `${first.slice(0, 4)}/${last.slice(2, 4)}`;
