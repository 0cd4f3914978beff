import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';
import { ENOUGH_READ } from '../weather/long-record.ts';
import { sameDates } from '../weather/window.ts';
import { type PlannedCrop, planWants } from './plan-wants.ts';
import { rainDay } from './rain-day.ts';
import type { TankFacts } from './tank-facts.ts';
import { type Afford, afford, type BandDay, levelBand, type PastYear, type Replay, replayTank } from './tank-replay.ts';
import type { ThirstRecord } from './thirst-record.ts';

/** The tank from a day to the end of the season, played through every past year. */
export interface TankPlan {
  readonly first: Day;
  readonly last: Day;
  readonly start_l: number;
  /** `dip`: reckoned on from the last dip; `full`: taken as full on the first day. */
  readonly start_from: 'dip' | 'full';
  readonly replay: Replay;
  /** With a fifth more wanted every day. */
  readonly thirstier: Replay;
  /** What giving up some water a week would do; null where nothing short of all would help. */
  readonly afford: Afford | null;
  readonly band: readonly BandDay[];
  readonly wanted_l_week: number;
}

const A_FIFTH_MORE = 1.2;
/** Fewer past years tell too little to count. */
const FEWEST_PAST_YEARS = 5;
const WEEK = 7;

export interface PlanStart {
  readonly first: Day;
  readonly last: Day;
  readonly start_l: number;
  readonly start_from: TankPlan['start_from'];
}

/** Null without a measured roof, with a soil nobody knows, or with fewer than five past years read well enough. */
export function tankPlan(
  { tank, roof }: TankFacts,
  station: Station,
  thirst: ThirstRecord,
  soaking_mm: number,
  crops: readonly PlannedCrop[],
  { first, last, start_l, start_from }: PlanStart,
): TankPlan | null {
  if (!roof || crops.length === 0 || daysBetween(first, last) < WEEK) return null;
  const years = sameDates(station, first, last).flatMap((window): PastYear[] => {
    const rains = window.days.map((day) => rainDay(day, soaking_mm));
    if (rains.filter(({ told }) => told !== 'not').length < ENOUGH_READ * rains.length) return [];
    const weather = rains.flatMap(({ rain_mm }, index) => {
      const eto = thirst.on(addDays(window.first, index));
      return eto ? [{ rain_mm, eto_mm: eto.eto_mm }] : [];
    });
    if (weather.length < rains.length) return [];
    const wants = crops.flatMap((crop) => {
      const own = planWants(crop, weather);
      return own ? [own] : [];
    });
    if (wants.length < crops.length) return [];
    const wanted = (day: number): number => wants.reduce((sum, own) => sum + (own[day] ?? 0), 0);
    return [{ label: window.label, days: weather.map(({ rain_mm }, day) => ({ rain_mm, wanted_l: wanted(day) })) }];
  });
  if (years.length < FEWEST_PAST_YEARS) return null;
  const settings = { tank, roof, start_l, years };
  const thirstier = years.map(({ label, days }) => ({
    label,
    days: days.map(({ rain_mm, wanted_l }) => ({ rain_mm, wanted_l: wanted_l * A_FIFTH_MORE })),
  }));
  const days = years.flatMap((year) => year.days);
  return {
    first,
    last,
    start_l,
    start_from,
    replay: replayTank(settings),
    thirstier: replayTank({ ...settings, years: thirstier }),
    afford: afford(settings),
    band: levelBand(settings),
    wanted_l_week: (days.reduce((sum, { wanted_l }) => sum + wanted_l, 0) * WEEK) / days.length,
  };
}
