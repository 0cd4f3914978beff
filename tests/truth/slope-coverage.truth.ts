import { expect, test } from 'vitest';
import { SEASON_SETTINGS } from '../simulated/season/settings.ts';
import { judgedSlope } from './judged-slope.ts';

/** TRUTH_GARDENS makes a shorter report. */
const GARDENS = Number(process.env.TRUTH_GARDENS ?? 2000);

test.each(SEASON_SETTINGS)('$name: printed slopes of sugar on rain hold what is true', (setting) => {
  const judged = Array.from({ length: GARDENS }, (_, index) => judgedSlope(setting, index + 1));
  const told = judged.filter(({ interval }) => interval !== null);
  const held = told.filter(({ interval, truth }) => interval && interval.low <= truth && truth <= interval.high).length;
  const width = told.reduce((sum, one) => sum + 10 * (one.width ?? 0), 0) / told.length;
  console.log(
    `${setting.name} (${setting.model}): a number in ${told.length} of ${GARDENS}, held ${((100 * held) / told.length).toFixed(1)} of 100, mean width ${width.toFixed(2)} °Brix per 10 mm`,
  );
  expect(judged).toHaveLength(GARDENS);
});
