import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect, it } from 'vitest';
import { tInterval } from '../../src/statistics/interval.ts';
import { fitted } from './agreement.ts';

const TRIALS = 3000;
const LEVEL = 0.9;
const NOISE = 1.3;
const TREATMENT: Record<string, number> = { A: 6, B: 7.5, C: 5 };
/** They add up to zero, so a treatment's mean over equally weighted blocks is its own number. */
const BLOCK: Record<string, number> = { '1': -2, '2': 0.5, '3': 1.5 };

it.each([
  { name: 'three mounds each, no blocks', plots: 'A A A B B B C C C' },
  { name: 'complete blocks', plots: 'A1 A2 A3 B1 B2 B3 C1 C2 C3' },
  { name: 'blocks with gaps', plots: 'A1 A2 B1 B2 B3 C2 C3 C3' },
])('nine in ten 90 % intervals hold the truth they were drawn from: $name', ({ plots }) => {
  const normal = normals(7);
  const held = { mean: 0, difference: 0 };
  for (let trial = 0; trial < TRIALS; trial++) {
    const fit = fitted(
      plots.split(' ').map((plot) => {
        const [treatment = '', block = null] = plot;
        const level = (TREATMENT[treatment] ?? 0) + (block === null ? 0 : (BLOCK[block] ?? 0));
        return { treatment, block, value: level + NOISE * normal() };
      }),
    );
    const [mean, difference] = [fit.mean('A'), fit.difference('B', 'C')];
    held.mean += holds(tInterval(mean.estimate, mean.se, fit.df, LEVEL), 6);
    held.difference += holds(tInterval(difference.estimate, difference.se, fit.df, LEVEL), 2.5);
  }
  // Three standard errors of a share of 0.9 among so many trials.
  const slack = 3 * Math.sqrt((LEVEL * (1 - LEVEL)) / TRIALS);
  expect(Math.abs(held.mean / TRIALS - LEVEL)).toBeLessThan(slack);
  expect(Math.abs(held.difference / TRIALS - LEVEL)).toBeLessThan(slack);
});

const holds = (interval: { low: number; high: number }, truth: number): number =>
  interval.low <= truth && truth <= interval.high ? 1 : 0;

/** Standard normal numbers by the method of Box and Muller (1958). */
function normals(seed: number): () => number {
  const random = xoroshiro128plus(seed);
  return () => {
    const radius = Math.sqrt(-2 * Math.log(1 - uniformFloat64(random)));
    return radius * Math.cos(2 * Math.PI * uniformFloat64(random));
  };
}
