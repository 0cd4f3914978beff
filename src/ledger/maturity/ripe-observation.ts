import { type Day, daysBetween } from '../../day.ts';
import type { RipeTime } from '../../statistics/survival/ripe-time.ts';
import type { HeatBetween } from '../weather/heat-record.ts';
import type { Ripening } from './ripening.ts';
import type { SetDay } from './set-day.ts';

/** How long from one day to another: in days, or in heat; null when it cannot be told. */
export type Length = (from: Day, to: Day) => number | null;

export const inDays: Length = (from, to) => Math.max(daysBetween(from, to), 0);
export const inHeat =
  (heat: HeatBetween): Length =>
  (from, to) =>
    from > to ? 0 : heat(from, to);

/**
 * The time from an origin to ripeness as the records bound it: exact or between two days for a ripe pick, at most for a
 * fruit found over-ripe, more than for one not yet ripe when it was last seen. Null when a length cannot be told.
 */
export function ripeObservation(origin: SetDay, { kind, on }: Ripening, length: Length): RipeTime | null {
  if (on.first === null) return null;
  const [low, high] = [length(origin.last, on.first), length(origin.first, on.last)];
  if (low === null || high === null) return null;
  switch (kind) {
    case 'ripe':
      return { low: Math.min(low, high), high };
    case 'over':
      return { low: null, high };
    case 'not-yet':
      return { low, high: null };
  }
}
