import { expect, test } from 'vitest';
import { rainShuffle } from '../../src/ledger/rain-sugar/rain-shuffle.ts';
import { randomStream } from '../../src/statistics/random-stream.ts';
import { settingNamed } from '../simulated/season/settings.ts';
import { simulatedReadings } from './simulated-readings.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Number(process.env.TRUTH_GARDENS ?? 1000);
const DRAWS = 999;
const NOMINAL = 0.1;
const MOST = 0.13;

const NOTHING = settingNamed('3 seasons, rain dilutes nothing');

console.log(`\nGardens where rain thins nothing and shuffled days say it does, at a nominal ${100 * NOMINAL} in 100:`);

test.each([0, 0.4, 0.7])('shuffled picking days seldom find rain that did nothing, day SD %d °Brix', (day_sd_brix) => {
  const setting = { ...NOTHING, sugar: { ...NOTHING.sugar, day_sd_brix } };
  const tests = Array.from({ length: GARDENS }, (_, index) =>
    rainShuffle(simulatedReadings(setting, index + 1).readings, { random: randomStream(index + 1), draws: DRAWS }),
  ).flatMap((one) => one ?? []);
  const found = tests.filter(({ p }) => p <= NOMINAL).length;
  console.log(`day SD ${day_sd_brix}: ${found} of ${tests.length} gardens`);
  expect(found / tests.length).toBeLessThanOrEqual(MOST);
});
