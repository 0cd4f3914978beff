import { type Day, daysBetween } from '../../day.ts';
import type { Crop, Garden, Station } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import type { HeatSettings } from '../../garden/weather-settings.ts';
import { inDays, inHeat, type Length } from '../maturity/ripe-observation.ts';
import { cropHeat } from '../maturity/season-maturity.ts';
import { heatRecord } from '../weather/heat-record.ts';

/** What the time of a fruit is counted in: heat at the station, or days. */
export type Clock =
  | { readonly unit: 'days'; readonly length: Length }
  | {
      readonly unit: 'c_days';
      readonly length: Length;
      readonly station: Station;
      readonly settings: HeatSettings;
    };

export const DAY_CLOCK: Clock = { unit: 'days', length: inDays };

/** Heat above the crop's base and under its cap; null without a station with a thermometer. */
export function heatClock(garden: Garden, crop: Crop): Clock | null {
  const station = ownStation(garden);
  if (!station?.days.some(({ tmin_c, tmax_c }) => tmin_c !== null && tmax_c !== null)) return null;
  const settings = cropHeat(garden, crop);
  return { unit: 'c_days', length: inHeat(heatRecord(station, settings)), station, settings };
}

/** Fewest and most of the time from some days to others; null where it cannot be told, or there is none. */
export function timeBetween(
  { length }: Clock,
  from: { readonly first: Day; readonly last: Day },
  to: { readonly first: Day; readonly last: Day },
): { readonly from: number; readonly to: number } | null {
  const [fewest, most] = [length(from.last, to.first), length(from.first, to.last)];
  if (fewest === null || most === null || most <= 0 || daysBetween(from.first, to.last) <= 0) return null;
  return { from: Math.min(fewest, most), to: most };
}
