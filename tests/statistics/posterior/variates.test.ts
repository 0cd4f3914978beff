import { expect, it } from 'vitest';
import { tQuantile } from '../../../src/statistics/distributions.ts';
import { chiSquare, standardNormal } from '../../../src/statistics/posterior/variates.ts';
import { randomStream } from '../../../src/statistics/random-stream.ts';
import { expectShare, meanOf, sdOf } from './telling.ts';

const DRAWS = 20_000;

it.each([0.5, 1, 2, 3, 9.5, 200])('normal over the root of χ² over its df is t: df %d', (df) => {
  const random = randomStream(5);
  const ratios = Array.from({ length: DRAWS }, () => standardNormal(random) / Math.sqrt(chiSquare(random, df) / df));
  for (const share of [0.05, 0.3, 0.8, 0.975]) {
    expectShare(ratios.filter((value) => value < tQuantile(share, df)).length / DRAWS, share, DRAWS);
  }
});

it.each([0.5, 1, 7, 60])('χ² has mean df and variance 2 df: df %d', (df) => {
  const random = randomStream(6);
  const drawn = Array.from({ length: DRAWS }, () => chiSquare(random, df));
  expect(Math.abs(meanOf(drawn) / df - 1)).toBeLessThan((4 * Math.sqrt(2 / df)) / Math.sqrt(DRAWS));
  expect(Math.abs(sdOf(drawn) / Math.sqrt(2 * df) - 1)).toBeLessThan(0.06);
});
