import { type StageLengths, seasonDays } from '../../agronomy/crop-coefficient.ts';
import { addDays, type Day } from '../../day.ts';
import type { Garden, Station } from '../../garden/garden.ts';
import { thresholdsOf } from '../../garden/weather-settings.ts';
import { inYears } from '../year/plan-season.ts';
import type { CropPlan } from './crop-plan.ts';
import { tankSteps } from './dip-account.ts';
import type { SeasonWater } from './season-water.ts';
import type { TankFacts } from './tank-facts.ts';
import type { PlanStart } from './tank-plan.ts';

/** A year on once the last day of them all is over, for their season may still be open then. */
export function coming(crops: readonly CropPlan[], today: Day): readonly CropPlan[] {
  if (crops.some(({ growing }) => today < lastDayOf(growing.planted, growing.lengths))) return crops;
  return crops.map((plan) => ({ ...plan, growing: { ...plan.growing, planted: inYears(plan.growing.planted, 1) } }));
}

/** From tomorrow with what the last dip leaves while a season runs; else the next season with a full tank. */
export function planStart(
  garden: Garden,
  today: Day,
  seasons: readonly SeasonWater[],
  crops: readonly CropPlan[],
  tank: TankFacts,
  station: Station,
): PlanStart | null {
  const latest = seasons.at(-1);
  const [crop] = crops;
  if (!latest || !crop) return null;
  const last = crops
    .map(({ growing }) => lastDayOf(growing.planted, growing.lengths))
    .sort()
    .at(-1) as Day;
  const planted = crops.map(({ growing }) => growing.planted).sort()[0] as Day;
  const running = today >= planted && today < last;
  const dip = running ? latest.dips?.dips.findLast(({ day }) => day <= today) : undefined;
  const first = running ? addDays(today, 1) : planted;
  if (!dip || !tank.roof) return { first, last, start_l: tank.tank.holds_l, start_from: 'full' };
  const { soaking_day_mm } = thresholdsOf(garden.about);
  const steps = tankSteps(tank, tank.roof, dip, today, latest.givings, station, soaking_day_mm);
  return { first, last, start_l: steps.at(-1)?.end_l ?? dip.litres, start_from: 'dip' };
}

const lastDayOf = (planted: Day, lengths: StageLengths): Day => addDays(planted, seasonDays(lengths) - 1);
