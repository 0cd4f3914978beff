import type { Interval } from '../../figure.ts';
import type { UncertainChance } from '../../statistics/pick-or-wait/chance-draws.ts';

/** Half the width of a 90 % interval of a normal curve, in standard deviations. */
const HALF_WIDTH_SD = 1.645;
const FEWEST = 1;
const MOST = 1000;

/**
 * A chance and its 90 % interval as if counted on so many: those with which a beta distribution has the variance the
 * interval's width tells of, m (1 − m) / variance − 1.
 */
export function asCounted(mean: number, { low, high }: Interval): UncertainChance {
  const variance = ((high - low) / (2 * HALF_WIDTH_SD)) ** 2;
  const counted = variance > 0 ? (mean * (1 - mean)) / variance - 1 : MOST;
  return { mean, counted: Math.min(MOST, Math.max(FEWEST, counted)) };
}
