import { expect, it } from 'vitest';
import { eliminationOf } from '../../../src/statistics/linear/elimination.ts';

const tied = (...ties: readonly (readonly number[])[]): Set<number>[] => ties.map((one) => new Set(one));

it('what has fewest ties goes first, so that a hub and its five mounds stay as sparse as they were', () => {
  const { unknown, later } = eliminationOf(tied([1, 2, 3, 4, 5], [0], [0], [0], [0], [0]), 6);
  expect(unknown.indexOf(0)).toBeGreaterThan(3);
  expect(later.reduce((sum, rows) => sum + rows.length, 0)).toBe(5);
});

it('the fixed part waits to the end, and what is taken away ties its neighbours', () => {
  // 0 is tied to 1 and 2 only: taking it away ties those two; 3 comes last though nothing is tied to it.
  const { unknown, later } = eliminationOf(tied([1, 2], [0], [0], []), 3);
  expect(unknown.at(-1)).toBe(3);
  expect(eliminationOf(tied([1, 2], [0], [0]), 1)).toEqual({ unknown: [0, 1, 2], later: [[1, 2], [2], []] });
  expect(later).toHaveLength(4);
});
