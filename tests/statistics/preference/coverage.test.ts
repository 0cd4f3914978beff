import { expect, it } from 'vitest';
import { type Priors, WEAK_PULL } from '../../../src/statistics/preference/worths.ts';
import { randomStream } from '../../../src/statistics/random-stream.ts';
import { drawTrial, found, type TrialPlan, worthOf } from './tasting.ts';

const TRIALS = 200;
/** As if every ballot were a repeat of its own. */
const FRUITS_FORGOTTEN: Priors = { ...WEAK_PULL, fruit: { known: 0 } };

/** The share of 90 % intervals of a variety's worth that hold the worth the ballots were drawn with. */
function coverage(plan: TrialPlan, priors: Priors, seed: number): number {
  const random = randomStream(seed);
  const normal = normals(random);
  let held = 0;
  let asked = 0;
  for (let trial = 0; trial < TRIALS; trial++) {
    const { tastings, worths } = drawTrial(plan, normal, random);
    const fit = found(tastings, priors);
    for (const group of fit.groups.filter((one) => one.length > 1)) {
      const centre = group.reduce((sum, variety) => sum + (worths[variety] ?? 0), 0) / group.length;
      const inside = group.filter((variety) => {
        const { interval } = worthOf(fit, variety);
        const truth = (worths[variety] ?? 0) - centre;
        return interval.low <= truth && truth <= interval.high;
      });
      held += inside.length;
      asked += group.length;
    }
  }
  return held / asked;
}

/** Standard normal numbers by the method of Box and Muller (1958). */
function normals(random: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

const SUPPER: TrialPlan = {
  varieties: 4,
  fruits_each: 3,
  pairs: 10,
  orders: 0,
  tasters: 4,
  variety_sd: 0.8,
  fruit_sd: 1,
  ties: 0.7,
};

it.each([
  { name: 'pairs, four tasters', plan: SUPPER },
  { name: 'pairs and orders of three, two fruits each', plan: { ...SUPPER, fruits_each: 2, pairs: 6, orders: 3 } },
])(
  'nine in ten 90 % intervals hold the worth, fewer when fruits are forgotten: $name',
  ({ plan }) => {
    const ours = coverage(plan, WEAK_PULL, 11);
    expect(ours).toBeGreaterThanOrEqual(0.86);
    expect(ours).toBeLessThanOrEqual(0.95);
    expect(coverage(plan, FRUITS_FORGOTTEN, 11)).toBeLessThan(0.8);
  },
  120_000,
);
