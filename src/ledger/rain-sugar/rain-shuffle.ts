import { type Draws, type PermutationTest, shuffleDays } from '../../statistics/permutation.ts';
import { largestCorrelation } from '../../statistics/window-strength.ts';
import { withinCells } from './cells.ts';
import { pickingDays } from './picking-day.ts';
import type { SugarReading } from './reading.ts';

/**
 * Could chance alone make sugar go with rain as strongly, in whichever window shows it most? Sugar less its variety's
 * mean in that season; whole picking days change places within their season, the rain of all WINDOWS together. From
 * the readings that have all windows; null when no two days of a season differ.
 */
export function rainShuffle(readings: readonly SugarReading[], draws: Draws): PermutationTest | null {
  const told = readings.filter(({ windows }) => windows.every((rain) => rain !== null));
  const residuals = withinCells(told, ({ brix }) => brix);
  const days = pickingDays(told);
  const test = shuffleDays(
    days.map(({ picked_on, season, windows }) => ({
      id: picked_on,
      stratum: season,
      covariates: windows.map((rain) => rain ?? 0),
    })),
    told.map(({ picked_on }, row) => ({ day: picked_on, residual: residuals[row] ?? 0 })),
    largestCorrelation,
    draws,
  );
  return 'cannot' in test ? null : test;
}
