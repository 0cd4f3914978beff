import { type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { plantingsOf } from './plot.ts';

/** Lines kept for each planting: a fruit of every plant, and one over. */
const LEAST = 2;
const MOST = 5;

/** One line a fruit, from the day it is seen. */
export function fruitRegister(facts: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('fruits', [], key, width);
  const set = (key: string, width: number) => blankColumn('fruits', ['set'], key, width);
  const end = (key: string, width: number) => blankColumn('fruits', ['end'], key, width);
  return {
    id: 'fruit-register',
    title: 'Fruits as they set',
    rule: 'One line a fruit. Set means: the flower is closed and the fruit the size of a pea. If you missed that day, write when you first saw it and circle its size.',
    columns: [
      column('planting', 19),
      column('id', 15),
      set('set_on', 17),
      set('first_seen_on', 17),
      set('first_seen_size', 28),
      column('fate', 40),
      end('ended_on', 16),
      end('lost_to', 34),
    ],
    known: plantingsOf(facts).flatMap(({ id, plants_set }) =>
      Array.from({ length: Math.min(MOST, Math.max(LEAST, (plants_set ?? 0) + 1)) }, () => [id]),
    ),
    rows_a_sheet: 18,
    tall: true,
    landscape: false,
    cautions: [],
  };
}
