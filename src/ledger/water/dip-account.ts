import { type Roof, roofInflows } from '../../agronomy/roof-runoff.ts';
import { runTank, type TankStep } from '../../agronomy/tank-balance.ts';
import { isOneDay } from '../../dated.ts';
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Season, Station } from '../../garden/garden.ts';
import { windowsOf } from '../weather/window.ts';
import type { Giving } from './given.ts';
import { rainDay } from './rain-day.ts';
import { dippedLitres, type TankFacts } from './tank-facts.ts';

/** What the tank held on a morning. */
export interface DippedDay {
  readonly day: Day;
  readonly litres: number;
  readonly key: string;
}

/** From one dip to the next: what roof and cans make of the first, held against the second. */
export interface DipPair {
  readonly from: DippedDay;
  readonly to: DippedDay;
  readonly reckoned_l: number;
  readonly days: number;
}

export interface DipAccount {
  readonly dips: readonly DippedDay[];
  /** Spans in which every day’s rain was told. */
  readonly pairs: readonly DipPair[];
  /** The dips’ mean over what was reckoned, litres a week; null without a pair. */
  readonly bias_l_week: number | null;
}

const WEEK = 7;

/** Null for a season without a dip that tells litres; without a measured roof or a station there are dips and no pairs. */
export function dipAccount(
  facts: TankFacts,
  season: Season,
  givings: readonly Giving[],
  station: Station | null,
  soaking_mm: number,
): DipAccount | null {
  const dips = season.events.dips.flatMap((dip): DippedDay[] => {
    const litres = dippedLitres(facts, dip);
    return litres === null || !isOneDay(dip.dipped_on) ? [] : [{ day: dip.dipped_on.first, litres, key: dip.key }];
  });
  if (dips.length === 0) return null;
  const { roof } = facts;
  const pairs = dips.slice(1).flatMap((to, index): DipPair[] => {
    const from = dips[index] as DippedDay;
    const days = daysBetween(from.day, to.day);
    const last = addDays(to.day, -1);
    if (!roof || !station || days < 1 || !isRainTold(station, from.day, last, soaking_mm)) return [];
    const steps = tankSteps(facts, roof, from, last, givings, station, soaking_mm);
    return [{ from, to, days, reckoned_l: steps.at(-1)?.end_l ?? from.litres }];
  });
  const days = pairs.reduce((sum, pair) => sum + pair.days, 0);
  const off_l = pairs.reduce((sum, { to, reckoned_l }) => sum + to.litres - reckoned_l, 0);
  return { dips, pairs, bias_l_week: days === 0 ? null : (off_l * WEEK) / days };
}

const isRainTold = (station: Station, first: Day, last: Day, soaking_mm: number): boolean =>
  windowsOf(station)(first, last).days.every((day) => rainDay(day, soaking_mm).told !== 'not');

/**
 * The tank from a morning to the end of a day by its roof and the cans drawn. A day without a word on the rain is taken as
 * dry: where rain is read in the morning, today’s is never told before tomorrow.
 */
export function tankSteps(
  { tank }: TankFacts,
  roof: Roof,
  from: DippedDay,
  last: Day,
  givings: readonly Giving[],
  station: Station,
  soaking_mm: number,
): readonly TankStep[] {
  const days = windowsOf(station)(from.day, last).days.map((day) => rainDay(day, soaking_mm));
  const inflows = roofInflows(
    roof,
    days.map(({ rain_mm }) => rain_mm),
  );
  const drawn = drawnByDay(givings);
  return runTank(
    tank,
    from.litres,
    inflows.map((inflow_l, index) => ({ inflow_l, wanted_l: drawn.get(addDays(from.day, index)) ?? 0 })),
  ).steps;
}

function drawnByDay(givings: readonly Giving[]): ReadonlyMap<Day, number> {
  const drawn = new Map<Day, number>();
  for (const { day, from_tank, litres } of givings) if (from_tank) drawn.set(day, (drawn.get(day) ?? 0) + litres);
  return drawn;
}
