/** What the tests of survival estimates share. */

import type { RipeTime } from '../../../src/statistics/survival/ripe-time.ts';
import { type RipeTimes, ripeTimes } from '../../../src/statistics/survival/ripe-times.ts';

/** The estimate; fails the test when it was refused. */
export function estimated(observations: readonly RipeTime[]): RipeTimes {
  const estimate = ripeTimes(observations);
  if ('cannot' in estimate) throw new Error(`refused: ${estimate.cannot.code}`);
  return estimate;
}

export const exact = (time: number): RipeTime => ({ low: time, high: time });
export const lost = (time: number): RipeTime => ({ low: time, high: null });
export const between = (low: number, high: number): RipeTime => ({ low, high });
export const overripe = (high: number): RipeTime => ({ low: null, high });
