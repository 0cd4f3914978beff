import { addDays, type Day, dayNumber } from '../../day.ts';
import type { Season } from '../../garden/garden.ts';

/** A book made on a Saturday, and used for seven days, that one the first. */
export interface ReplayWeek {
  readonly day: Day;
  readonly until: Day;
}

const WEEK_DAYS = 7;
/** Of the days since 1970-01-01, a Thursday: what is left over by sevens on a Saturday. */
const SATURDAY = 2;

/** The Saturdays of a season: no record moves them, so none that came later can. */
export function weeksOf({ starts_on, ends_on }: Pick<Season, 'starts_on' | 'ends_on'>): ReplayWeek[] {
  const weeks: ReplayWeek[] = [];
  const ahead = (SATURDAY - dayNumber(starts_on) + WEEK_DAYS * 10_000_000) % WEEK_DAYS;
  for (let day = addDays(starts_on, ahead); day <= ends_on; day = addDays(day, WEEK_DAYS))
    weeks.push({ day, until: addDays(day, WEEK_DAYS - 1) });
  return weeks;
}
