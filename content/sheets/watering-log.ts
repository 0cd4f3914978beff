import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';

/** One line each time somebody waters, with what a finger found before. */
export function wateringLog({ reference }: Facts): BlankSheet {
  const given = (key: string, width: number) => blankColumn('waterings', [], key, width);
  const felt = (key: string, width: number) => blankColumn('soil', [], key, width);
  return {
    id: 'watering-log',
    title: 'Water given',
    rule: 'One line each time. Feel the soil first. Then count cans for each spot or minutes for all, or circle a word. No spot named: the whole garden.',
    columns: [
      given('watered_on', 18),
      given('spots', 32),
      felt('top', 28),
      felt('below', 28),
      given('cans_each', 18),
      given('minutes', 18),
      given('roughly', 26),
      given('how', 34),
      given('from', 26),
      given('by', 18),
    ],
    known: [],
    rows_a_sheet: 12,
    tall: true,
    landscape: true,
    cautions: cautionsAt(reference, 'watering'),
  };
}
