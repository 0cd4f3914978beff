import { type FrostOfHalf, frostDates } from '../../agronomy/frost-days.ts';
import { addDays, type Day, dayOf, daysBetween, monthOf, yearOf } from '../../day.ts';
import type { Garden } from '../../garden/garden.ts';
import { isSouthern } from '../../garden/hemisphere.ts';
import { ownStation } from '../../garden/own-station.ts';
import { daysAfterWhich, daysBeforeWhich } from '../../statistics/day-percentile.ts';
import { FEWEST_YEARS } from '../weather/long-record.ts';
import type { PlanSeason } from './plan-season.ts';
import { thawStart } from './warm-up.ts';

/** A frost as a date of the season that is planned: in `held` of `years` years it was no later (in autumn, no earlier). */
export interface UsualFrost {
  /** Null where so few years had a frost at all that no day is needed. */
  readonly day: Day | null;
  readonly held: number;
  readonly years: number;
}

export interface UsualFrosts {
  /** Null with fewer than five years read. */
  readonly last_of_spring: UsualFrost | null;
  readonly first_of_autumn: UsualFrost | null;
}

/** One year in ten may be worse; of fewer than ten years, none. */
const ONE_IN = 10;

/** The frosts of the garden's own station, year by year, put into the season that is planned; null without station or season. */
export function usualFrosts(garden: Garden, plan: PlanSeason | null): UsualFrosts | null {
  const station = ownStation(garden);
  if (!station || !plan) return null;
  const southern = isSouthern(garden);
  const years = frostDates(station.days, { southern });
  const midsummer = turnOf(thawStart(plan.starts_on, southern));
  const usual = (half: 'spring' | 'autumn', dayOfYears: typeof daysAfterWhich): UsualFrost | null => {
    const offsets = years.flatMap((year) => offsetOf(year[half], year.turns_on));
    if (offsets.length < FEWEST_YEARS) return null;
    const worse = Math.floor(offsets.length / ONE_IN);
    const offset = dayOfYears(offsets, worse);
    const held = offsets.length - worse;
    return { day: offset === null ? null : addDays(midsummer, offset), held, years: offsets.length };
  };
  return { last_of_spring: usual('spring', daysAfterWhich), first_of_autumn: usual('autumn', daysBeforeWhich) };
}

/** The first day of the half-year after the one that warms up: half a year is six months, whatever February has. */
const turnOf = (start: Day): Day => dayOf(yearOf(start), monthOf(start) + 6, 1);

/** Days from midsummer, null for a year without; nothing for a half-year too little read. */
const offsetOf = (frost: FrostOfHalf, turns_on: Day): (number | null)[] => {
  if ('cannot' in frost) return [];
  return [frost.on === null ? null : daysBetween(turns_on, frost.on)];
};
