/** What the tests of posteriors share: posteriors that must not be refused, moments of draws, and invented fruits. */
import { expect } from 'vitest';
import { type Posterior, posterior } from '../../../src/statistics/posterior/posterior.ts';
import type { PosteriorData } from '../../../src/statistics/posterior/posterior-data.ts';

/** The posterior; fails the test when it was refused. */
export function told(data: PosteriorData, seed = 1, draws = 4000): Posterior {
  const found = posterior(data, { seed, draws });
  if ('cannot' in found) throw new Error(`refused: ${JSON.stringify(found.cannot)}`);
  return found;
}

export const constant = (n: number) => ({ name: 'constant', values: new Array<number>(n).fill(1) });

/** Groups of values with one random factor and a constant. */
export function grouped(groups: readonly (readonly number[])[], scale: number): PosteriorData {
  const y = groups.flat();
  const level = groups.flatMap((values, at) => values.map(() => `g${at}`));
  return { y, fixed: [constant(y.length)], random: [{ name: 'group', level, scale }] };
}

export const meanOf = (draws: ArrayLike<number>): number =>
  Array.from(draws).reduce((sum, one) => sum + one, 0) / draws.length;

export const sdOf = (draws: ArrayLike<number>): number => {
  const middle = meanOf(draws);
  return Math.sqrt(Array.from(draws).reduce((sum, one) => sum + (one - middle) ** 2, 0) / (draws.length - 1));
};

/** The draws of one level; fails the test when there is none. */
export function effect(found: Posterior, factor: string, level: string): Float64Array {
  const draws = found.factors.find((one) => one.name === factor)?.levels.find((one) => one.level === level)?.draws;
  if (!draws) throw new Error(`no level ${level} of ${factor}`);
  return draws;
}

/** Four standard errors of independent draws: one check in 16,000 fails by chance, and seeds are fixed. */
const STANDARD_ERRORS = 4;

/** Expects a share of draws to be that of its probability. */
export function expectShare(share: number, probability: number, draws: number): void {
  const slack = STANDARD_ERRORS * Math.sqrt((probability * (1 - probability)) / draws);
  expect(Math.abs(share - probability), `share ${share} for probability ${probability}`).toBeLessThan(slack);
}

/** Expects draws to have this mean, and this standard deviation (of a shape with tails up to those of t on 8). */
export function expectMoments(draws: ArrayLike<number>, mean: number, sd: number): void {
  const slack = (STANDARD_ERRORS * sd) / Math.sqrt(draws.length);
  expect(Math.abs(meanOf(draws) - mean), `mean ${meanOf(draws)} for ${mean}`).toBeLessThan(slack);
  expect(Math.abs(sdOf(draws) - sd), `sd ${sdOf(draws)} for ${sd}`).toBeLessThan(slack);
}
