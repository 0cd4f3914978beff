import { expect, test } from 'vitest';
import { dayLabels } from '../../../content/rain/day-labels.ts';
import type { Day } from '../../../src/day.ts';
import { createFormat } from '../../../src/format.ts';
import type { CropRain } from '../../../src/ledger/rain-sugar/crop-rain.ts';

const format = createFormat({ units: 'metric', locale: 'en-GB' });

const mark = (key: string, day: number, rain_mm: number, y: number) => ({
  key,
  picked_on: `2025-08-${String(day).padStart(2, '0')}` as Day,
  rain_mm,
  y,
});

const MARKS = [
  mark('dry', 1, 0, 10),
  mark('a-high', 5, 40, 9),
  mark('a-low', 5, 40, 8),
  mark('b-high', 9, 41, 9.2),
  mark('b-low', 9, 41, 8.2),
  mark('c', 13, 42, 8.5),
  mark('d', 20, 15, 9),
];

/** Labels when these days pull most, in this order. */
const labels = (pull: readonly number[], seasons = 1) =>
  Object.fromEntries(
    dayLabels(
      {
        pulls: pull.map((day) => ({ day: `2025-08-${String(day).padStart(2, '0')}` as Day, share: 0.2 })),
        evidence: { seasons },
      } as unknown as CropRain,
      MARKS,
      format,
    ),
  );

test('a day is written at its highest mark, the next one beside it at its lowest, a third there not at all', () => {
  expect(labels([5, 9, 13])).toEqual({
    'a-high': { text: '5 Aug', side: 'above' },
    'b-low': { text: '9 Aug', side: 'below' },
  });
});

test('away from others every day stands above; a dry day is not named; the year is told where there are several', () => {
  expect(labels([1, 5, 20], 2)).toEqual({
    'a-high': { text: '5 Aug 2025', side: 'above' },
    d: { text: '20 Aug 2025', side: 'above' },
  });
});
