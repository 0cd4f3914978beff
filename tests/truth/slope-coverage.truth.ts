import { expect, test } from 'vitest';
import { SEASON_SETTINGS } from '../simulated/season/settings.ts';
import { coverageOf } from './coverage.ts';
import { isWithin, SLOPE_LIMITS, tableHead, tableRow } from './coverage-table.ts';
import { judgedSlope } from './judged-slope.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Number(process.env.TRUTH_GARDENS ?? 2000);
/** With fewer printed ranges the share is reported and not judged. */
const FEWEST_PRINTED = 200;

console.log(`\n${tableHead(SLOPE_LIMITS)}`);

test.each(SEASON_SETTINGS)('ranges of the slope of sugar on rain hold the truth: $name', (setting) => {
  const slopes = Array.from({ length: GARDENS }, (_, index) => judgedSlope(setting, index + 1));
  const printed = slopes.filter(({ interval }) => interval).length;
  if (printed === 0) return console.log(`${setting.name}: not one range in ${GARDENS} gardens`);
  const coverage = coverageOf(slopes.map((slope) => [slope]));
  console.log(tableRow(SLOPE_LIMITS, setting, GARDENS, 'slope', coverage));
  if (printed < FEWEST_PRINTED) return console.log(`  ${printed} ranges: too few to be judged`);
  expect(isWithin(SLOPE_LIMITS, setting, coverage)).toBe(true);
});
