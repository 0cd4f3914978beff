import { expect, it } from 'vitest';
import { randomStream } from '../../../src/statistics/random-stream.ts';
import { sharedMiddles, sharings } from '../../../src/statistics/ripe-states/shared-middles.ts';
import { sd } from './telling.ts';

const GRID = { lowest: -2, step: 0.01, count: 401 };
/** A variety whose middle is known to be at 0, and one of which nothing is known. */
const KNOWN = { first: 200, likelihood: Float64Array.of(1), log_best: 0 };
const UNKNOWN = { first: 0, likelihood: new Float64Array(401).fill(1), log_best: 0 };

const drawn = (curves: readonly (typeof KNOWN)[]) => {
  const random = randomStream(1);
  const shared = sharedMiddles(curves, GRID, sharings(0.15, GRID, curves.length));
  return Array.from({ length: 4000 }, () => shared.draw(random));
};

it('one known middle: the common one is as far from it as varieties are apart', () => {
  const found = drawn([KNOWN]);
  // Standard deviation of 1: three standard errors of 4,000 draws are 0.034; half a step of the grid adds less.
  expect(Math.abs(sd(found.map(({ common, between }) => common / between)) - 1)).toBeLessThan(0.05);
  // It tells nothing of the spread: half-normal, mean scale √(2/π), its eight parts 1 in 50 short of the tail.
  const mean = found.reduce((sum, { between }) => sum + between, 0) / found.length;
  expect(Math.abs(mean / (0.15 * Math.sqrt(2 / Math.PI)) - 1)).toBeLessThan(0.04);
});

it('a variety of which nothing is known is √2 as far from a known one', () => {
  const found = drawn([KNOWN, UNKNOWN]);
  const away = found.map(({ middles, between }) => (middles[1] ?? Number.NaN) / between);
  expect(Math.abs(sd(away) / Math.SQRT2 - 1)).toBeLessThan(0.05);
});
