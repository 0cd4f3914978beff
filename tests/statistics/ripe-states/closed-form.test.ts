import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../../src/statistics/normal.ts';
import { grownSpan } from '../../../src/statistics/ripe-states/grown-span.ts';
import { normalShare, normalValue } from '../../../src/statistics/ripe-states/normal-table.ts';
import { remainingDraws, ripeWindow } from '../../../src/statistics/ripe-states/remaining-time.ts';
import type { RipeStates } from '../../../src/statistics/ripe-states/ripe-states.ts';
import type { RipeState } from '../../../src/statistics/ripe-states/seen-fruit.ts';
import { stateChance } from '../../../src/statistics/ripe-states/state-chance.ts';
import { given } from './telling.ts';

const STATES: readonly RipeState[] = ['U', 'J', 'P', 'O'];
const STAGES = { spread: 0.1, just: 0.1, prime: 0.2 };

/** Draws that say one thing each. */
const known = (...middles: number[]): RipeStates => {
  const each = (value: number): Float64Array => new Float64Array(middles.length).fill(value);
  return {
    varieties: [{ variety: 'a', cut: { U: 1, J: 1, P: 1, O: 1 }, middle: Float64Array.from(middles) }],
    draws: middles.length,
    common: Float64Array.from(middles),
    between: each(0.1),
    spread: each(STAGES.spread),
    just: each(STAGES.just),
    prime: each(STAGES.prime),
    seen: { prime: true, over: true },
    lattice: { points: 1, largest_share: 1 },
  };
};

const hanging = (from: number, to: number, call_wrong: number | null, variety: string | null = 'a') => ({
  variety,
  from,
  to,
  call_wrong,
});

describe('the table of the normal distribution', () => {
  it('agrees with the series', () => {
    for (let z = -3; z < 3; z += 0.00713) expect(Math.abs(normalShare(z) / normalCdf(z) - 1)).toBeLessThan(1e-11);
    for (let z = -8; z < -3; z += 0.0071) expect(Math.abs(normalShare(z) / normalCdf(z) - 1)).toBeLessThan(1e-8);
    expect([-1 / 0, 1 / 0, -40, 40].map(normalShare)).toEqual([0, 1, 0, 1]);
  });
  it('and back: 1.959963984540054 at 0.975 (Wichura 1988, Applied Statistics 37:477-484; from memory)', () => {
    expect(normalValue(0.975)).toBeCloseTo(1.959963984540054, 10);
    expect(normalValue(0.025)).toBeCloseTo(-1.959963984540054, 10);
    expect(() => normalValue(0)).toThrow(RangeError);
  });
});

describe('one fruit whose variety is known', () => {
  const at = (day: number, state: RipeState): number =>
    stateChance({ grown: grownSpan(day, day), state, call: null }, Math.log(40), STAGES, 0);

  it('one standard deviation after the middle: Φ(1) is ripe, the width of just ripe another', () => {
    const day = 40 * Math.exp(0.1);
    // Abramowitz & Stegun 1964, table 26.1: Φ(1) = 0.841344746.
    expect(at(day, 'U')).toBeCloseTo(1 - 0.841344746, 9);
    expect(at(day, 'J')).toBeCloseTo(0.841344746 - 0.5, 9);
    expect(at(day, 'O')).toBeCloseTo(0.022750132, 9);
    expect(at(day, 'P')).toBeCloseTo(0.5 - 0.022750132, 9);
  });

  it('a span of twelve days is the average of its days', () => {
    const parts = 4000;
    for (const state of STATES) {
      const days = Array.from({ length: parts }, (_, k) => at(34 + (12 * (k + 0.5)) / parts, state));
      const averaged = days.reduce((sum, one) => sum + one, 0) / parts;
      const spanned = stateChance({ grown: grownSpan(34, 46), state, call: null }, Math.log(40), STAGES, 0);
      expect(spanned).toBeCloseTo(averaged, 7);
    }
  });

  it('states share out what is possible, with a call too', () => {
    for (const [from, to] of [
      [0, 60],
      [39, 39],
      [20, 44],
    ] as const) {
      const all = (call: Parameters<typeof stateChance>[0]['call'], state: RipeState | null): number =>
        stateChance({ grown: grownSpan(from, to), state, call }, Math.log(40), STAGES, 0.15);
      expect(STATES.reduce((sum, state) => sum + all(null, state), 0)).toBeCloseTo(1, 9);
      const earlier = from / 10;
      const call = { grown: grownSpan(from - earlier, to - earlier), earlier };
      expect(STATES.reduce((sum, state) => sum + all(call, state), 0)).toBeCloseTo(all(call, null), 9);
    }
  });
});

describe('windows where everything is known but the fruit', () => {
  it('nothing called: the quantiles of the log-normal less the age, and 0 where it has happened', () => {
    const { to_just, to_prime, to_over } = given(ripeWindow(known(Math.log(40)), hanging(36, 36, null), []));
    expect(to_just.median).toBeCloseTo(4, 4);
    expect(to_just.most.low).toBe(0);
    expect(to_just.most.high).toBeCloseTo(40 * Math.exp(0.1 * 1.6448536) - 36, 4);
    expect('cannot' in to_prime ? null : to_prime.median).toBeCloseTo(40 * Math.exp(0.1) - 36, 4);
    expect('cannot' in to_over ? null : to_over.half.low).toBeCloseTo(40 * Math.exp(0.3 - 0.06744898) - 36, 4);
  });

  it('held unripe: what is left of the log-normal above the age', () => {
    const { to_just, later } = given(ripeWindow(known(Math.log(40)), hanging(40, 40, 0), [0, 4]));
    expect(to_just.median).toBeCloseTo(40 * Math.exp(0.1 * 0.67448975) - 40, 4);
    expect(later[0]).toEqual({ after: 0, unripe: 1, ripe: 0, over: 0 });
    expect(later[1]?.unripe).toBeCloseTo((1 - normalCdf(Math.log(1.1) / 0.1)) / 0.5, 9);
  });

  it('a call that is wrong once in five: odds of four to one', () => {
    const [now] = given(ripeWindow(known(Math.log(40)), hanging(40, 40, 0.2), [0])).later;
    expect(now?.unripe).toBeCloseTo(0.8, 9);
    const long_since = 40 * Math.exp(-0.1);
    const [early] = given(ripeWindow(known(Math.log(long_since)), hanging(40, 40, 0.2), [0])).later;
    const unripe = 1 - 0.841344746;
    expect(early?.unripe).toBeCloseTo((0.8 * unripe) / (0.8 * unripe + 0.2 * (1 - unripe)), 8);
  });

  it('two draws: one that says ripe long ago counts for little when the fruit is unripe', () => {
    const [early, late] = [Math.log(36), Math.log(44)];
    const found = given(ripeWindow(known(early, late), hanging(40, 40, 0), [3]));
    const above = (middle: number, day: number): number => 1 - normalCdf((Math.log(day) - middle) / 0.1);
    const expected = (above(early, 43) + above(late, 43)) / (above(early, 40) + above(late, 40));
    expect(found.later[0]?.unripe).toBeCloseTo(expected, 8);
  });

  it('an unseen variety adds how far varieties differ', () => {
    const own = given(ripeWindow(known(Math.log(40)), hanging(20, 20, null), []));
    for (const variety of [null, 'never cut']) {
      const unseen = given(ripeWindow(known(Math.log(40)), hanging(20, 20, null, variety), []));
      expect(unseen.to_just.median).toBeCloseTo(own.to_just.median, 4);
      expect(Math.log((20 + unseen.to_just.most.high) / 40)).toBeCloseTo(Math.SQRT2 * 0.16448536, 4);
    }
  });
});

it('draws of the remaining time follow the window', () => {
  const states = known(...Array.from({ length: 1000 }, (_, at) => Math.log(38 + at / 250)));
  for (const call_wrong of [null, 0, 0.4]) {
    const fruit = hanging(37, 42, call_wrong);
    const window = given(ripeWindow(states, fruit, [2, 6]));
    const draws = given(remainingDraws(states, fruit, 3));
    const shareAbove = (values: Float64Array, time: number): number =>
      values.reduce((sum, one, at) => sum + (one > time ? (draws.weight[at] ?? 0) : 0), 0);
    expect(draws.weight.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    for (const { after, unripe, over } of window.later) {
      // Three standard errors of 1,000 draws.
      expect(Math.abs(shareAbove(draws.to_just, after) - unripe)).toBeLessThan(0.047);
      expect(Math.abs(1 - shareAbove(draws.to_over, after) - (over ?? Number.NaN))).toBeLessThan(0.047);
    }
  }
});
