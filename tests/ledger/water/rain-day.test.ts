import { expect, test } from 'vitest';
import { rainDay } from '../../../src/ledger/water/rain-day.ts';

test('the gauge comes before the word, and a dry gauge is told', () => {
  expect(rainDay({ rain_mm: 3.4, rain: 'soaking' }, 20)).toEqual({ rain_mm: 3.4, told: 'gauge' });
  expect(rainDay({ rain_mm: 0, rain: null }, 20)).toEqual({ rain_mm: 0, told: 'gauge' });
});

test('words are none, a judged five millimetres, and the garden’s own soaking', () => {
  expect(rainDay({ rain_mm: null, rain: 'none' }, 25)).toEqual({ rain_mm: 0, told: 'words' });
  expect(rainDay({ rain_mm: null, rain: 'some' }, 25)).toEqual({ rain_mm: 5, told: 'words' });
  expect(rainDay({ rain_mm: null, rain: 'soaking' }, 25)).toEqual({ rain_mm: 25, told: 'words' });
});

test('a day nobody wrote of, and a row that says nothing of rain, are taken as dry and told apart', () => {
  expect(rainDay(null, 20)).toEqual({ rain_mm: 0, told: 'not' });
  expect(rainDay({ rain_mm: null, rain: null }, 20)).toEqual({ rain_mm: 0, told: 'not' });
});
