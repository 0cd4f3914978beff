import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';

/** One line a dip of the tank; null for a garden without one. */
export function tankLog({ garden: { about }, reference }: Facts): BlankSheet | null {
  if (about.tank === null) return null;
  const column = (key: string, width: number) => blankColumn('dips', [], key, width);
  return {
    id: 'tank-log',
    title: 'How full the tank is',
    rule: 'Once a week and after a storm, before the first can. Stand a dry stick on the floor, read where it is wet, shut the lid at once.',
    columns: [
      column('dipped_on', 30),
      column(about.units === 'us' ? 'depth_in' : 'depth_cm', 32),
      column('overflowed', 36),
      column('by', 28),
      column('note', 60),
    ],
    known: [],
    rows_a_sheet: 21,
    tall: false,
    landscape: false,
    cautions: cautionsAt(reference, 'tank'),
  };
}
