import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { hasSlip, seasonOf } from './plot.ts';

/** What each fruit showed from outside, and the call, before any knife. */
export function visits(facts: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('visits', ['fruits', 0], key, width);
  const growing = (seasonOf(facts)?.plantings ?? []).flatMap(({ fruits }) =>
    fruits.filter(({ fate }) => fate === 'growing').map(({ id }) => id),
  );
  return {
    id: 'visits',
    title: 'Looking the fruit over',
    rule: 'One line a fruit: circle what you see and hear, then your call, before anybody cuts it. A line through the cell means that nobody looked.',
    columns: [
      column('fruit', 20),
      column('tendril', 30),
      column('ground_spot', 34),
      column('sound', 28),
      column('rind', 22),
      column('nail', 22),
      ...(hasSlip(facts) ? [column('slip', 20)] : []),
      column('call', 24),
    ],
    known: growing.map((id) => [id]),
    rows_a_sheet: 16,
    tall: true,
    cautions: ['stings'],
  };
}
