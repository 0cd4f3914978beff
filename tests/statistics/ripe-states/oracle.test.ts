import { describe, expect, it } from 'vitest';
import { grownSpan } from '../../../src/statistics/ripe-states/grown-span.ts';
import { logLikelihoods } from '../../../src/statistics/ripe-states/middles-grid.ts';
import type { RipeState } from '../../../src/statistics/ripe-states/seen-fruit.ts';
import { type Sight, type Stages, stateChance } from '../../../src/statistics/ripe-states/state-chance.ts';
import oracle from '../../published/ripe-states/oracle.json' with { type: 'json' };
import { likeliestAt } from './likeliest-at.ts';
import { mean, sd, told } from './telling.ts';

/** A span much shorter than the fruits' own scatter is added to it as a variance. */
const SHORT_SPAN = 1e-5;
/** R sums calls over 20,000 steps. */
const STEPS = 1e-5;
const CLOSE = 1e-4;

interface Cut {
  readonly variety: string;
  readonly from: number;
  readonly to: number;
  readonly state: string;
}

const sightOf = ({ from, to, state }: Omit<Cut, 'variety'>): Sight => ({
  grown: grownSpan(from, to),
  state: state as RipeState,
  call: null,
});

describe('chances of a state are those of R', () => {
  it.each(oracle.chances)('$state of $from to $to, s $s, m $m', ({ from, to, state, m, s, just, prime, chance }) => {
    const ours = stateChance(sightOf({ from, to, state }), m, { spread: s, just, prime }, 0);
    expect(Math.abs(ours - chance)).toBeLessThan(from === to || to - from > 3 ? 1e-10 : SHORT_SPAN);
  });

  it.each(oracle.calls)('$state of $from to $to, called $earlier before, $wrong wrong', (given) => {
    const { from, to, earlier, wrong, m, s, just, prime } = given;
    const sight: Sight = {
      grown: grownSpan(from, to),
      state: given.state as RipeState | null,
      call: { grown: grownSpan(from - earlier, to - earlier), earlier },
    };
    const ours = stateChance(sight, m, { spread: s, just, prime }, wrong);
    expect(Math.abs(ours - given.chance)).toBeLessThan(
      from === to ? 1e-10 : to - from > 3 ? STEPS : SHORT_SPAN + STEPS,
    );
  });
});

/** Log likelihood of cuts with a middle for each variety. */
function logLikelihood(cuts: readonly Cut[], middles: Readonly<Record<string, number>>, stages: Stages): number {
  return Object.entries(middles).reduce((sum, [variety, middle]) => {
    const own = cuts.filter((one) => one.variety === variety).map(sightOf);
    return sum + (logLikelihoods(own, { from: middle, by: 1, count: 1 }, stages, 0)[0] ?? Number.NaN);
  }, 0);
}

interface Peak {
  readonly middles: Readonly<Record<string, number>>;
  readonly stages: Stages;
  readonly log: number;
}

/** Where the likelihood is highest; `known` widths stay. */
function peakOf(cuts: readonly Cut[], known: { readonly just: number; readonly prime: number } | null): Peak {
  const names = [...new Set(cuts.map(({ variety }) => variety))].sort();
  const at = (values: readonly number[]): Omit<Peak, 'log'> => {
    const [spread = 0, just = 0, prime = 0] = values.slice(names.length).map(Math.exp);
    return {
      middles: Object.fromEntries(names.map((name, k) => [name, values[k] ?? 0])),
      stages: known ? { spread, ...known } : { spread, just, prime },
    };
  };
  const height = (values: readonly number[]): number => {
    const { middles, stages } = at(values);
    return logLikelihood(cuts, middles, stages);
  };
  const start = [...names.map(() => Math.log(38)), Math.log(0.12), ...(known ? [] : [Math.log(0.08), Math.log(0.2)])];
  const best = likeliestAt(height, start, 0.2, 1e-7);
  return { ...at(best), log: height(best) };
}

function expectMiddles(actual: Peak['middles'], expected: Peak['middles']): void {
  expect(Object.keys(actual)).toEqual(Object.keys(expected));
  for (const [variety, middle] of Object.entries(expected))
    expect(Math.abs((actual[variety] ?? Number.NaN) - middle), variety).toBeLessThan(CLOSE);
}

describe.each(Object.entries(oracle.likeliest))('likeliest by optim: %s', (_name, fit) => {
  it('same likelihood, same place', () => {
    const { spread, just, prime } = fit;
    expect(Math.abs(logLikelihood(fit.cut, fit.middles, { spread, just, prime }) - fit.log_likelihood)).toBeLessThan(
      1e-7,
    );
    const peak = peakOf(fit.cut, null);
    expectMiddles(peak.middles, fit.middles);
    for (const [key, value] of Object.entries({ spread, just, prime }))
      expect(Math.abs(peak.stages[key as keyof Stages] - value), key).toBeLessThan(CLOSE);
    expect(Math.abs(peak.log - fit.log_likelihood)).toBeLessThan(1e-6);
  });
});

describe.each(Object.entries(oracle.known_widths))('likeliest by survreg, widths known: %s', (_name, fit) => {
  it('same place', () => {
    const peak = peakOf(fit.cut, { just: fit.just, prime: fit.prime });
    expectMiddles(peak.middles, fit.middles);
    expect(Math.abs(peak.stages.spread - fit.spread)).toBeLessThan(CLOSE);
  });
});

describe.each(Object.entries(oracle.ripe_or_not))('likeliest by survreg, ripe or not: %s', (_name, fit) => {
  it('same place, and likelihood but for the time scale, which neither has', () => {
    // Just ripe without end: whatever is not unripe.
    const cuts = fit.cut.map((one) => ({ ...one, state: one.state === 'U' ? 'U' : 'J' }));
    const peak = peakOf(cuts, { just: 50, prime: 1 });
    expectMiddles(peak.middles, fit.middles);
    expect(Math.abs(peak.stages.spread - fit.spread)).toBeLessThan(CLOSE);
    expect(Math.abs(peak.log - fit.log_likelihood)).toBeLessThan(1e-6);
  });
});

describe.each(Object.entries(oracle.brute))(
  'posterior by sums over a fine grid of all unknowns: %s',
  (_name, brute) => {
    const fruits = brute.cut.map((one) => ({ ...one, state: one.state as RipeState }));
    const states = told(fruits, { draws: 4000 });
    const middle = states.varieties[0]?.middle ?? new Float64Array();

    it('the middle', () => {
      expect(Math.abs(mean(middle) - brute.middle)).toBeLessThan(0.06 * brute.middle_sd);
      expect(Math.abs(sd(middle) / brute.middle_sd - 1)).toBeLessThan(0.05);
      const sorted = middle.toSorted();
      for (const [k, share] of [0.05, 0.5, 0.95].entries())
        expect(Math.abs((sorted[Math.round(share * 4000)] ?? 0) - (brute.middle_quantiles[k] ?? 0))).toBeLessThan(
          0.12 * brute.middle_sd,
        );
    });
    it('the spread and the widths', () => {
      for (const key of ['spread', 'just', 'prime'] as const)
        expect(Math.abs(mean(states[key]) / brute[key] - 1), key).toBeLessThan(0.03);
    });
  },
);
