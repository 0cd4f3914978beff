import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import type { Facts } from '../../src/book/chapter.ts';
import type { Dated } from '../../src/dated.ts';
import { plantingsOf } from './plot.ts';

/** What stands where, to hang in the shed and to correct. */
export function plantingList(facts: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('plantings', [], key, width);
  const day = (date: Dated | null): string => (date ? facts.format.datedShort(date) : '');
  return {
    id: 'planting-list',
    title: 'What stands where',
    rule: 'Cross out what is wrong and write beside it. Count the plants alive four weeks after planting out.',
    columns: [
      column('spot', 16),
      column('id', 22),
      column('variety', 42),
      column('sown_on', 20),
      column('planted_on', 22),
      column('plants_set', 16),
      column('plants_alive', 16),
      column('note', 32),
    ],
    known: plantingsOf(facts).map((planting) => [
      planting.spot.id,
      planting.id,
      planting.variety?.name ?? '',
      day(planting.sown_on),
      day(planting.planted_on),
      planting.plants_set === null ? '' : facts.format.count(planting.plants_set),
    ]),
    rows_a_sheet: 21,
    tall: false,
    landscape: false,
    cautions: [],
  };
}
