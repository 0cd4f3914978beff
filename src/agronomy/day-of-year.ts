import { type Day, dayOf, daysBetween, yearOf } from '../day.ts';

/** The number of a day in its year, 1 for 1 January to 365 or, in leap years, 366 for 31 December. */
export const dayOfYear = (day: Day): number => daysBetween(dayOf(yearOf(day), 1, 1), day) + 1;
