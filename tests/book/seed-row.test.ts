import { expect, test } from 'vitest';
import { seedRow } from '../../src/book/seed-row.ts';

/** Share in tenths, seeds filled, told exactly. Halves are filled; one seed for some, nine for not quite all. */
const BY_HAND: readonly [number, number, boolean][] = [
  [0, 0, true],
  [0.04, 1, false],
  [0.5, 1, false],
  [1, 1, true],
  [1.49, 1, false],
  [1.5, 2, false],
  [4.4, 4, false],
  [7, 7, true],
  [(10 * 10) / 13, 8, false],
  [9.4, 9, false],
  [9.5, 9, false],
  [9.99, 9, false],
  [10, 10, true],
];

test.each(BY_HAND)('%d of ten fills %d seeds, exactly: %s', (tenths, filled, exact) => {
  expect(seedRow(tenths)).toEqual({ filled, exact });
});
