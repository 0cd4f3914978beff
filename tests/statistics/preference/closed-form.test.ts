import { describe, expect, it } from 'vitest';
import { placed } from '../../../src/statistics/preference/ballot.ts';
import { likelihoodOf } from '../../../src/statistics/preference/choice-likelihood.ts';
import { WEAK_PULL } from '../../../src/statistics/preference/worths.ts';
import { expectDigits } from '../agreement.ts';
import {
  byLetter,
  differenceOf,
  estimates,
  found,
  fruitsAlone,
  NO_PULL,
  order,
  pair,
  peakOf,
  times,
} from './tasting.ts';

/** Chances worked out by hand from log-worths of log 4, log 2 and 0, and ν = 1/2. */
const WORTHS = new Float64Array([Math.log(4), Math.log(2), 0]);
const LOG_TIES = Math.log(0.5);

const chance = (pairs: readonly string[], orders: readonly string[], logTies = LOG_TIES): number => {
  const everyone = { fruits: new Map([...'abc'].map((one) => [one, one])), pairs: [], orders: [order('a b c')] };
  const all = placed(everyone);
  const given = placed({ ...everyone, pairs: pairs.map(pair), orders: orders.map(order) });
  expect(given.pairs.length + given.orders.length).toBe(pairs.length + orders.length);
  const places = new Map(all.fruits.map((fruit, place) => [fruit, place]));
  const lift = (place: number): number => places.get(given.fruits[place] ?? '') ?? Number.NaN;
  const lifted = {
    ...all,
    pairs: given.pairs.map((one) => ({ ...one, first: lift(one.first), second: lift(one.second) })),
    orders: given.orders.map((one) => one.map(lift)),
  };
  return Math.exp(likelihoodOf(lifted, WORTHS, logTies).log);
};

describe('the chance of a ballot', () => {
  it('of a pair, Davidson’s: 4 to 1 to ½√4', () => {
    expectDigits(chance(['a > c'], []), 4 / 6, 14);
    expectDigits(chance(['c > a'], []), 1 / 6, 14);
    expectDigits(chance(['a = c'], []), 1 / 6, 14);
    expectDigits(chance(['c = a'], []), 1 / 6, 14);
    expectDigits(chance(['a > b', 'b > c', 'a = c'], []), (2 / (3 + Math.SQRT1_2)) ** 2 / 6, 14);
  });

  it('of a pair where "the same" is not offered, Bradley and Terry’s', () => {
    expectDigits(chance(['a > c'], [], Number.NEGATIVE_INFINITY), 4 / 5, 14);
    expectDigits(chance(['c > b'], [], Number.NEGATIVE_INFINITY), 1 / 3, 14);
  });

  it('of an order of three, Luce’s: each chosen among those left', () => {
    expectDigits(chance([], ['a b c']), (4 / 7) * (2 / 3), 14);
    expectDigits(chance([], ['c b a']), (1 / 7) * (2 / 6), 14);
    expectDigits(chance([], ['b a c']), (2 / 7) * (4 / 5), 14);
    const all = ['a b c', 'a c b', 'b a c', 'b c a', 'c a b', 'c b a'];
    expectDigits(
      all.reduce((sum, one) => sum + chance([], [one]), 0),
      1,
      14,
    );
    expect(chance([], ['a b c'])).not.toBeCloseTo(chance([], ['c b a']), 2);
  });

  it('of an order of two is that of a pair without "the same"', () => {
    expectDigits(chance([], ['a c']), 4 / 5, 14);
  });

  it('has the slopes and the information that differences give', () => {
    const ballots = placed({
      fruits: byLetter(['a', 'b', 'c']),
      pairs: ['a > b', 'b = c', 'c > a'].map(pair),
      orders: ['a b c', 'c b'].map(order),
    });
    const at = (shift: readonly number[]) =>
      likelihoodOf(
        ballots,
        WORTHS.map((worth, place) => worth + (shift[place] ?? 0)),
        LOG_TIES + (shift[3] ?? 0),
      );
    const step = 1e-5;
    const { slope, information } = at([]);
    for (let i = 0; i < 4; i++) {
      const [up, down] = [step, -step].map((by) => at([0, 0, 0, 0].map((_, place) => (place === i ? by : 0))));
      expect(((up?.log ?? 0) - (down?.log ?? 0)) / 2 / step).toBeCloseTo(slope[i] ?? Number.NaN, 8);
      for (let j = 0; j < 4; j++) {
        const curved = ((down?.slope[j] ?? 0) - (up?.slope[j] ?? 0)) / 2 / step;
        expect(curved).toBeCloseTo(information[i]?.[j] ?? Number.NaN, 8);
      }
    }
  });
});

/** So many who liked a better, so many b, so many neither. */
const wins = (a: number, b: number, same = 0) =>
  fruitsAlone([...times(a, pair('a > b')), ...times(b, pair('b > a')), ...times(same, pair('a = b'))], []);

describe('two varieties', () => {
  it('differ by the log odds of winning, with Wald’s standard error', () => {
    const { estimate, se } = peakOf(wins(7, 3), NO_PULL).above('b', 'a');
    expect(estimate).toBeCloseTo(Math.log(7 / 3), 4);
    expect(se).toBeCloseTo(Math.sqrt(1 / 7 + 1 / 3), 4);
  });

  it('differ by the same beside those who say "the same", Davidson’s ν being s / √(w l)', () => {
    const fit = peakOf(wins(8, 2, 6), { ...NO_PULL, ties: 1000 });
    expect(fit.above('b', 'a').estimate).toBeCloseTo(Math.log(4), 4);
    expect(fit.log_ties).toBeCloseTo(Math.log(6 / 4), 4);
  });

  it('pulled, lie where the pull of both and the wins balance', () => {
    const variety = 0.8;
    const d = peakOf(wins(7, 3), { ...NO_PULL, variety }).above('b', 'a').estimate;
    // θ₁ = -θ₂ = d / 2 and 7 - 10 / (1 + exp(-d)) = d / 2 / 0.8².
    expect(7 - 10 / (1 + Math.exp(-d))).toBeCloseTo(d / 2 / variety ** 2, 9);
  });

  it('have the evidence that adding up over a fine grid gives, within three thousandths', () => {
    const variety = 0.8;
    const sum = 0.001 * onGrid((d) => density(d, variety) * won(d, 7, 3));
    expect(Math.abs(peakOf(wins(7, 3), { ...NO_PULL, variety }).log_evidence - Math.log(sum))).toBeLessThan(0.003);
  });

  it.each([
    [4, 1],
    [3, 0],
    [7, 3],
    [1, 1],
    [12, 2],
  ])('have the mean, the ends and the chance that adding up over a fine grid gives: %d to %d', (a, b) => {
    const variety = 0.8;
    const at = (d: number) => density(d, variety) * won(d, a, b);
    const whole = onGrid(at);
    const { estimate, interval, chance_above } = differenceOf(
      found(wins(a, b), { variety: { known: variety }, fruit: { known: 0 }, ties: null }),
      'a',
      'b',
    );
    expect(Math.abs(estimate - onGrid((d) => d * at(d)) / whole)).toBeLessThan(0.01);
    expect(Math.abs(chance_above - onGrid((d) => (d > 0 ? at(d) : 0)) / whole)).toBeLessThan(0.003);
    expect(Math.abs(onGrid((d) => (d < interval.low ? at(d) : 0)) / whole - 0.05)).toBeLessThan(0.003);
    expect(Math.abs(onGrid((d) => (d > interval.high ? at(d) : 0)) / whole - 0.05)).toBeLessThan(0.003);
  });
});

/** Of a difference of two worths of this spread. */
const density = (d: number, spread: number): number =>
  Math.exp((-d * d) / 4 / spread ** 2) / Math.sqrt(4 * Math.PI * spread ** 2);

/** Chance that the one wins so many and the other so many, in the order they came. */
const won = (d: number, one: number, other: number): number => Math.exp(one * d) / (1 + Math.exp(d)) ** (one + other);

/** Sum over midpoints a thousandth apart. */
function onGrid(value: (d: number) => number): number {
  let sum = 0;
  for (let k = -25_000; k < 25_000; k++) sum += value((k + 0.5) / 1000);
  return sum;
}

describe('where the pull is so wide that the normal curve fits badly', () => {
  it('one-sided ballots claim less than they could, not more', () => {
    const variety = 4.5;
    const at = (d: number) => density(d, variety) * won(d, 3, 0);
    const whole = onGrid(at);
    const fit = found(wins(3, 0), { variety: { known: variety }, fruit: { known: 0 }, ties: null });
    const { interval, chance_above } = differenceOf(fit, 'a', 'b');
    expect(chance_above).toBeLessThan(onGrid((d) => (d > 0 ? at(d) : 0)) / whole);
    expect(chance_above).toBeGreaterThan(0.9);
    expect(onGrid((d) => (d < interval.low ? at(d) : 0)) / whole).toBeLessThan(0.05);
    expect(onGrid((d) => (d > interval.high ? at(d) : 0)) / whole).toBeLessThan(0.05);
  });
});

describe('three varieties', () => {
  it('after one order, pulled, lie where slopes and pull balance', () => {
    const spread = 1.2;
    const fit = peakOf(fruitsAlone([], [order('a b c')]), { ...NO_PULL, variety: spread });
    const [a, b, c] = [fit.worth('a'), fit.worth('b'), fit.worth('c')];
    const [ea, eb, ec] = [Math.exp(a), Math.exp(b), Math.exp(c)];
    const all = ea + eb + ec;
    expect(1 - ea / all).toBeCloseTo(a / spread ** 2, 8);
    expect(1 - eb / all - eb / (eb + ec)).toBeCloseTo(b / spread ** 2, 8);
    expect(-ec / all - ec / (eb + ec)).toBeCloseTo(c / spread ** 2, 8);
    expect(a).toBeGreaterThan(b);
    expect(b).toBeGreaterThan(c);
  });

  it('in a ring are worth the same, in pairs and in orders', () => {
    const ring = ['a > b', 'b > c', 'c > a'].map(pair);
    const wheel = ['a b c', 'b c a', 'c a b'].map(order);
    for (const tastings of [fruitsAlone(ring, []), fruitsAlone([], wheel), fruitsAlone(ring, wheel)])
      for (const worth of Object.values(estimates(found(tastings, WEAK_PULL))))
        expect(Math.abs(worth)).toBeLessThan(1e-9);
  });
});
