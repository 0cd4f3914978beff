import type { Season } from '../../src/garden/garden.ts';
import { type Entry, entry } from './entry.ts';

/** Fruits looked over, visit by visit. */
export const visitEntries = ({ visits }: Season): Entry[] =>
  visits.map(({ visited_on, fruits }) =>
    entry({
      lane: 'looked',
      code: 'looked-over',
      date: { kind: 'day', first: visited_on, last: visited_on, text: visited_on },
      count: fruits.length,
    }),
  );
