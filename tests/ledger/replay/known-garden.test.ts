import { expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { knownGarden } from '../../../src/ledger/replay/known-garden.ts';
import { planting, smallGarden } from '../small-garden.ts';

test.each([
  ['morning', [0, null]],
  ['evening', [0, 5]],
])('of a gauge read in the %s the rain of the days up to the second is known as %j', (read, rain) => {
  // Read in the morning, the row of the 3rd tells of the rain of the 2nd.
  const weather = 'date,rain_mm,tmax_c,tmin_c\n2025-07-01,0,20,10\n2025-07-02,0,21,11\n2025-07-03,5,22,12\n';
  const shifted = read === 'morning' ? weather : weather.replace('02,0,', '02,5,').replace('03,5,', '03,0,');
  const garden = smallGarden({ plantings: planting('P1', 'S1'), weather: shifted, read });
  const days = knownGarden(garden, '2025-07-02' as Day).stations[0]?.days ?? [];
  const known = days.filter(({ date }) => date >= '2025-07-01');
  expect(known.map(({ rain_mm }) => rain_mm)).toEqual(rain);
  expect(known.map(({ tmin_c }) => tmin_c)).toEqual([10, 11]);
});
