import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';

/** One line a first flower, a tagged one, or ten minutes of counting insects. */
export function flowerTally({ reference }: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('flowering', [], key, width);
  return {
    id: 'flower-tally',
    title: 'Flowers and insects',
    rule: 'One line a first flower, a tag or a count. Tag flowers on the day they open; a week later write how many set. Insects: ten minutes on a fine morning, and write 0 too.',
    columns: [
      column('seen_on', 20),
      column('planting', 22),
      column('what', 92),
      column('tag', 24),
      column('flowers', 22),
      column('took', 24),
      column('insects', 36),
    ],
    known: [],
    rows_a_sheet: 12,
    tall: true,
    landscape: true,
    cautions: cautionsAt(reference, 'flowering'),
  };
}
