import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { severityKey } from '../../src/records/severity.ts';

/** One line a look, a look that found nothing too. */
export function scoutingSheet({ reference }: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('scouting', [], key, width);
  return {
    id: 'scouting',
    title: 'Looking for trouble',
    rule: `Once a week, five plants a spot, under the leaves too, only when they are dry. Circle none as well. How bad, 9 the worst: ${severityKey()}.`,
    columns: [
      column('looked_on', 20),
      column('spots', 24),
      column('found', 92),
      column('what', 40),
      column('checked', 20),
      column('affected', 20),
      column('severity', 24),
    ],
    known: [],
    rows_a_sheet: 12,
    tall: true,
    landscape: true,
    cautions: cautionsAt(reference, 'scouting'),
  };
}
