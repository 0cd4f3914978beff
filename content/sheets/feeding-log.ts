import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';

/** One line each time something is put on the ground. */
export function feedingLog({ garden: { about }, reference }: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('feeding', [], key, width);
  const us = about.units === 'us';
  return {
    id: 'feeding-log',
    title: 'What was given to the ground',
    rule: 'One line each time. Write the amount for all its spots together in one of the columns, or circle a word. Copy the three numbers from the bag. No spot named: the whole garden.',
    columns: [
      column('given_on', 18),
      column('spots', 20),
      column('material', 112),
      column(us ? 'mass_lb' : 'mass_kg', 16),
      column(us ? 'volume_gal' : 'volume_l', 16),
      column('barrows', 15),
      column('roughly', 22),
      column('label_n', 15),
      column('label_p2o5', 15),
      column('label_k2o', 15),
      column('worked_in', 14),
    ],
    known: [],
    rows_a_sheet: 8,
    tall: true,
    landscape: true,
    cautions: cautionsAt(reference, 'feeding'),
  };
}
