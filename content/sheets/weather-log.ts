import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import type { Facts } from '../../src/book/chapter.ts';

/** One line a day at the gauge. */
export function weatherLog({ garden: { about } }: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('weather', [], key, width);
  const us = about.units === 'us';
  return {
    id: 'weather-log',
    title: 'Rain and warmth, day by day',
    rule: 'One line a day, read at the same hour. Write 0 for no rain and leave a day that nobody read blank. Without a gauge circle the word.',
    columns: [
      column('date', 26),
      column(us ? 'rain_in' : 'rain_mm', 26),
      column('rain', 40),
      column(us ? 'tmax_f' : 'tmax_c', 24),
      column(us ? 'tmin_f' : 'tmin_c', 24),
      column('note', 46),
    ],
    known: [],
    rows_a_sheet: 21,
    tall: false,
    landscape: false,
    cautions: ['storms'],
  };
}
