/** What to guard against: windows that put everything unknown at its likeliest value. */
import { grownSpan } from '../../src/statistics/ripe-states/grown-span.ts';
import { middlesGrid, type VarietyCurve, varietyCurve } from '../../src/statistics/ripe-states/middles-grid.ts';
import type { RipeStates } from '../../src/statistics/ripe-states/ripe-states.ts';
import type { SeenFruit } from '../../src/statistics/ripe-states/seen-fruit.ts';
import type { Stages } from '../../src/statistics/ripe-states/state-chance.ts';
import { likeliestAt } from '../statistics/ripe-states/likeliest-at.ts';

/** Logs of a spread and widths, beyond which likelihood often runs off without end. */
const LEAST = Math.log(0.01);
const MOST = Math.log(1);
const SCALE = 0.3;

/** A posterior of a single draw. */
export function knownStates(stages: Stages, middles: ReadonlyMap<string, number>): RipeStates {
  const one = (value: number): Float64Array => Float64Array.of(value);
  return {
    varieties: Array.from(middles, ([variety, middle]) => ({
      variety,
      cut: { U: 0, J: 0, P: 0, O: 0 },
      middle: one(middle),
    })),
    draws: 1,
    common: one(0),
    between: one(0),
    spread: one(stages.spread),
    just: one(stages.just),
    prime: one(stages.prime),
    seen: { prime: true, over: true },
    lattice: { points: 1, largest_share: 1 },
  };
}

/** By maximum likelihood, each variety's middle on its own and the spread and widths of all together. */
export function likeliestStates(cut: readonly SeenFruit[]): RipeStates {
  const names = [...new Set(cut.map(({ variety }) => variety))];
  const sights = names.map((name) =>
    cut
      .filter(({ variety }) => variety === name)
      .map(({ from, to, state }) => ({ grown: grownSpan(from, to), state, call: null })),
  );
  const grid = middlesGrid(sights, SCALE);
  const curvesAt = (stages: Stages): VarietyCurve[] => sights.map((own) => varietyCurve(own, grid, stages, 0));
  const stagesAt = (logs: readonly number[]): Stages => {
    const [spread = 0, just = 0, prime = 0] = logs.map((log) => Math.exp(Math.min(MOST, Math.max(LEAST, log))));
    return { spread, just, prime };
  };
  const best = likeliestAt(
    (logs) => curvesAt(stagesAt(logs)).reduce((sum, { log_best }) => sum + log_best, 0),
    [Math.log(0.08), Math.log(0.06), Math.log(0.15)],
    0.5,
    0.01,
  );
  const stages = stagesAt(best);
  const middles = curvesAt(stages).map(({ first, likelihood }) => {
    // Where several places are as good, the one half-way.
    const good = [...likelihood.keys()].filter((place) => (likelihood[place] ?? 0) > 1 - 1e-6);
    return grid.lowest + (first + ((good[0] ?? 0) + (good.at(-1) ?? 0)) / 2) * grid.step;
  });
  return knownStates(stages, new Map(names.map((name, at) => [name, middles[at] ?? 0])));
}
