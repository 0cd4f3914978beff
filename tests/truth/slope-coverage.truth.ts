import { expect, test } from 'vitest';
import { SEASON_SETTINGS } from '../simulated/season/settings.ts';
import { judgedSlope, slopeHolds } from './judged-slope.ts';

/** TRUTH_GARDENS makes a shorter report. */
const GARDENS = Number(process.env.TRUTH_GARDENS ?? 2000);

test.each(SEASON_SETTINGS)('$name: printed slopes of sugar on rain hold what is true', (setting) => {
  const judged = Array.from({ length: GARDENS }, (_, index) => judgedSlope(setting, index + 1));
  const told = judged.filter(({ interval }) => interval !== null);
  const held = told.filter(slopeHolds).length;
  const width =
    told.reduce((sum, { interval }) => sum + (interval ? interval.high - interval.low : 0), 0) / told.length;
  console.log(
    `${setting.name} (${setting.model}): a number in ${told.length} of ${GARDENS}, held ${((100 * held) / told.length).toFixed(1)} of 100, mean width ${(10 * width).toFixed(2)} °Brix per 10 mm`,
  );
  // Nominal 90: right models 85 to 95, broken ones at least 83; few numbers are reported and not judged.
  if (told.length < 200) return;
  const limits = setting.model === 'right' ? [0.85, 0.95] : [0.83, 1];
  expect(held / told.length).toBeGreaterThanOrEqual(limits[0] ?? 0);
  expect(held / told.length).toBeLessThanOrEqual(limits[1] ?? 1);
});
