import { expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import type { SugarReading } from '../../src/ledger/rain-sugar/reading.ts';
import { settingNamed } from '../simulated/season/settings.ts';
import { slopeOracleWidth } from './sugar-oracle.ts';

const RAINS = [0, 0, 12, 3, 20, 0];
const FRUITS_A_DAY = 4;

/** Every fruit on a mound of its own. */
const readings = RAINS.flatMap((rain_mm, day) =>
  Array.from(
    { length: FRUITS_A_DAY },
    (_, fruit): SugarReading => ({
      key: `${day} ${fruit}`,
      variety: 'amber',
      season: '2025',
      mound: `${day} ${fruit}`,
      picked_on: `2025-08-0${day + 1}` as Day,
      brix: 10,
      rain_mm,
      windows: [],
      mass_kg: null,
      days_since_set: null,
      forecast: false,
    }),
  ),
);

test('one variety, days with equally many fruits: a regression of the means of the days', () => {
  const plain = settingNamed('3 seasons in blocks');
  const setting = {
    ...plain,
    levels: {
      ...plain.levels,
      mound: { ...plain.levels.mound, brix: 0.3 },
      block: { ...plain.levels.block, brix: 0.4 },
      fruit: { ...plain.levels.fruit, brix: 0.8 },
    },
    sugar: { ...plain.sugar, day_sd_brix: 0.5, reading_sd_brix: 0.2 },
  };
  const mean = RAINS.reduce((sum, rain) => sum + rain, 0) / RAINS.length;
  const squares = RAINS.reduce((sum, rain) => sum + (rain - mean) ** 2, 0);
  const ofOne = 0.5 ** 2 + (0.3 ** 2 + 0.4 ** 2 + 0.8 ** 2 + 0.2 ** 2) / FRUITS_A_DAY;
  expect(slopeOracleWidth(readings, setting)).toBeCloseTo(2 * 1.645 * Math.sqrt(ofOne / squares), 9);
});
