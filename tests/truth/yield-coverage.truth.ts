import { expect, test } from 'vitest';
import { YIELD_SETTINGS } from '../simulated/yield/settings.ts';
import { coverageOf } from './coverage.ts';
import { isWithin, TABLE_HEAD, tableRows } from './coverage-table.ts';
import { judgedGarden } from './judged-garden.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Number(process.env.TRUTH_GARDENS ?? 2000);

console.log(`\n${TABLE_HEAD}`);

test.each(YIELD_SETTINGS)('ranges of yield per plant hold the truth: $name', (setting) => {
  const gardens = Array.from({ length: GARDENS }, (_, index) => judgedGarden(setting, index + 1));
  const means = coverageOf(gardens.map((garden) => garden.means));
  const differences = coverageOf(gardens.map((garden) => garden.differences));
  console.log(tableRows(setting, GARDENS, means, differences));
  expect({ means: isWithin(setting, means), differences: isWithin(setting, differences) }).toEqual({
    means: true,
    differences: true,
  });
});
