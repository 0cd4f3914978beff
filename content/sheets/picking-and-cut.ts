import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import type { Facts } from '../../src/book/chapter.ts';

/** From the vine to the table: what came off, and what the knife and the tongue found. */
export function pickingAndCut({ garden: { about } }: Facts): BlankSheet {
  const pick = (key: string, width: number) => blankColumn('fruits', ['pick'], key, width);
  const cut = (key: string, width: number) => blankColumn('fruits', ['cut'], key, width);
  return {
    id: 'picking-and-cut',
    title: 'Picked, cut and tasted',
    rule: 'Weigh it whole. Cut, look, then taste from the centre. Circle one word in each cell, and write nothing where nobody tried.',
    columns: [
      blankColumn('fruits', [], 'id', 16),
      pick('picked_on', 17),
      pick(about.units === 'us' ? 'mass_lb' : 'mass_kg', 14),
      pick('parted', 27),
      cut('state', 28),
      cut('sweet', 29),
      cut('crisp', 21),
      cut('juicy', 23),
      cut('liked', 18),
      cut('seeds', 29),
      cut('than_last', 22),
      cut('keep_seed', 12),
    ],
    known: [],
    rows_a_sheet: 10,
    tall: true,
    landscape: true,
    cautions: ['wasps', 'knife', 'cut-fruit', 'bitter-fruit', 'bitter-seed'],
  };
}
