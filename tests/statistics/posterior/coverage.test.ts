import { expect, it } from 'vitest';
import { coverageOf } from '../../truth/coverage.ts';
import { judgedTrial } from './judged-trial.ts';

const TRIALS = 200;
const DRAWS = 500;

/** With truths from the priors, ranges hold nine in ten of them by construction, if every step is right. */
it.each([
  { name: 'two seasons', varieties: 5, seasons: 2, mounds: 2, fruits: 2 },
  { name: 'one season, unequal mounds', varieties: 6, seasons: 1, mounds: 3, fruits: 2, bore: 0.6 },
])('90 % ranges hold 87 to 95 in 100 truths: $name', (plan) => {
  const trials = Array.from({ length: TRIALS }, (_, at) => judgedTrial({ ...plan, sd: null }, at + 1, DRAWS));
  const [means, differences] = [trials.map((one) => one.means), trials.map((one) => one.differences)].map(coverageOf);
  expect(means?.held).toBeGreaterThan(0.87);
  expect(means?.held).toBeLessThan(0.95);
  expect(differences?.held).toBeGreaterThan(0.87);
  expect(differences?.held).toBeLessThan(0.95);
});

it('claims come true as often as they say', () => {
  const plan = { varieties: 4, seasons: 1, mounds: 2, fruits: 2, sd: null };
  const claims = Array.from({ length: TRIALS }, (_, at) => judgedTrial(plan, at + 1001, DRAWS)).flatMap(
    (one) => one.claims,
  );
  for (const [low, high] of [
    [0, 0.25],
    [0.25, 0.75],
    [0.75, 1.01],
  ] as const) {
    const made = claims.filter(({ share }) => share >= low && share < high);
    const said = made.reduce((sum, { share }) => sum + share, 0) / made.length;
    const true_ = made.filter(({ holds }) => holds).length / made.length;
    // Claims of one trial share a variety: three standard errors of half as many.
    const slack = 3 * Math.sqrt((said * (1 - said)) / (made.length / 2));
    expect(Math.abs(true_ - said), `${made.length} claims of ${said} came true ${true_}`).toBeLessThan(slack);
  }
});
