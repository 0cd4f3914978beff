import { expect, test } from 'vitest';
import { addDays, type Day } from '../../../src/day.ts';
import { ownStation } from '../../../src/garden/own-station.ts';
import { heatRecord } from '../../../src/ledger/weather/heat-record.ts';
import { planting, smallGarden } from '../small-garden.ts';
import { aprilRows } from './gate-weather.ts';

const FIRST = '2025-04-01' as Day;
const HEAT = { method: 'average', base_c: 10, cap_c: 40 } as const;

/** Heat of so many days from 1 April on: a day read has 20 °C and gives 10 °C·days, one of the unread (from 0) nothing is known of. */
function heatOf(days: number, unread: readonly number[]): number | null {
  const rows = Array.from({ length: 29 }, (_, day) => (unread.includes(day) ? '0,,' : '0,25,15'));
  const station = ownStation(
    smallGarden({ plantings: planting('P1', 'S1'), weather: `date,rain_mm,tmax_c,tmin_c\n${aprilRows(2025, rows)}\n` }),
  );
  if (!station) throw new Error('no station');
  return heatRecord(station, HEAT)(FIRST, addDays(FIRST, days));
}

test('the last day does not count, and nothing is told backwards or of a record not begun', () => {
  expect(heatOf(12, [])).toBe(120);
  expect(heatOf(0, [])).toBe(0);
  expect(heatOf(-1, [])).toBeNull();
  expect(heatOf(29, [])).toBe(290);
});

test('up to three unread days are like the others of their stretch, as long as most were read', () => {
  expect(heatOf(12, [3])).toBe(120);
  expect(heatOf(12, [3, 4, 11])).toBe(120);
  expect(heatOf(12, [3, 4, 5, 11])).toBeNull();
  // Of four days two.
  expect(heatOf(4, [0, 1])).toBe(40);
  expect(heatOf(4, [0, 1, 2])).toBeNull();
  expect(heatOf(1, [0])).toBeNull();
});
