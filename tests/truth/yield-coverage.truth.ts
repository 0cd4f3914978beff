import { expect, test } from 'vitest';
import { YIELD_SETTINGS } from '../simulated/yield/settings.ts';
import { coverageOf } from './coverage.ts';
import { isWithin, tableHead, tableRow, YIELD_LIMITS } from './coverage-table.ts';
import { judgedGarden } from './judged-garden.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Number(process.env.TRUTH_GARDENS ?? 2000);

console.log(`\n${tableHead(YIELD_LIMITS)}`);

test.each(YIELD_SETTINGS)('ranges of yield per plant hold the truth: $name', (setting) => {
  const gardens = Array.from({ length: GARDENS }, (_, index) => judgedGarden(setting, index + 1));
  const means = coverageOf(gardens.map((garden) => garden.means));
  const differences = coverageOf(gardens.map((garden) => garden.differences));
  console.log(tableRow(YIELD_LIMITS, setting, GARDENS, 'means', means));
  console.log(tableRow(YIELD_LIMITS, setting, GARDENS, 'differences', differences));
  expect({
    means: isWithin(YIELD_LIMITS, setting, means),
    differences: isWithin(YIELD_LIMITS, setting, differences),
  }).toEqual({ means: true, differences: true });
});
