import { describe, expect, it } from 'vitest';
import { WEAK_PULL, worths } from '../../../src/statistics/preference/worths.ts';
import { byLetter, differenceOf, found, fruitsAlone, LEVEL, order, pair, worthOf } from './tasting.ts';

describe('worths are refused', () => {
  it('without a ballot', () => {
    expect(worths(fruitsAlone([], []), WEAK_PULL, LEVEL)).toEqual({ cannot: { code: 'no-ballots' } });
    const untasted = { fruits: byLetter(['a1', 'b1']), pairs: [], orders: [] };
    expect(worths(untasted, WEAK_PULL, LEVEL)).toEqual({ cannot: { code: 'no-ballots' } });
  });

  it('when only fruits of one variety were tasted', () => {
    const one = { fruits: byLetter(['a1', 'a2', 'b1']), pairs: [pair('a1 > a2')], orders: [] };
    expect(worths(one, WEAK_PULL, LEVEL)).toEqual({ cannot: { code: 'one-variety', variety: 'a' } });
  });
});

describe('what was never set beside something', () => {
  const fit = found(
    {
      fruits: byLetter(['a1', 'a2', 'b1', 'c1', 'c2', 'd1', 'e1', 'e2', 'x1']),
      pairs: ['a1 > b1', 'a2 > b1', 'a1 = a2', 'c1 > d1', 'e1 > e2'].map(pair),
      orders: [order('c2 d1 c1')],
    },
    WEAK_PULL,
  );

  it('cannot be compared with it', () => {
    expect(fit.groups).toEqual([['a', 'b'], ['c', 'd'], ['e']]);
    expect(fit.difference('a', 'c')).toEqual({ cannot: { code: 'not-joined' } });
    expect(fit.difference('e', 'a')).toEqual({ cannot: { code: 'not-joined' } });
    expect(differenceOf(fit, 'a', 'b').estimate).toBeGreaterThan(0);
    expect(() => fit.difference('a', 'x')).toThrow(RangeError);
    expect(() => fit.difference('a', 'a')).toThrow(RangeError);
  });

  it('has no worth when there was nothing beside it at all', () => {
    const alone = fit.varieties.find((one) => one.variety === 'e');
    expect(alone).toEqual({ variety: 'e', fruits: 0, ballots: 0, worth: { cannot: { code: 'nothing-beside-it' } } });
  });

  it('does not count: fruits and ballots are those beside another variety', () => {
    expect(fit.varieties.map(({ variety, fruits, ballots }) => [variety, fruits, ballots])).toEqual([
      ['a', 2, 2],
      ['b', 1, 2],
      ['c', 2, 2],
      ['d', 1, 2],
      ['e', 0, 0],
    ]);
  });

  it('leaves each group’s worths to add up to nothing', () => {
    const sum = (names: string) => [...names].reduce((total, one) => total + worthOf(fit, one).estimate, 0);
    expect(Math.abs(sum('ab'))).toBeLessThan(1e-12);
    expect(Math.abs(sum('cd'))).toBeLessThan(1e-12);
  });
});

it('at known spreads, a group is judged as if the others had not been tasted', () => {
  const priors = { variety: { known: 1 }, fruit: { known: 0.5 }, ties: null };
  const fruits = byLetter(['a1', 'b1', 'b2', 'c1', 'd1']);
  const alone = found({ fruits, pairs: [pair('a1 > b1')], orders: [order('b2 a1')] }, priors);
  const among = found({ fruits, pairs: ['a1 > b1', 'c1 > d1'].map(pair), orders: [order('b2 a1')] }, priors);
  for (const variety of ['a', 'b']) {
    const [one, other] = [worthOf(alone, variety), worthOf(among, variety)];
    expect(other.estimate).toBeCloseTo(one.estimate, 9);
    expect(other.interval.low).toBeCloseTo(one.interval.low, 8);
    expect(other.interval.high).toBeCloseTo(one.interval.high, 8);
  }
});

describe('what is not a ballot is thrown out', () => {
  const fruits = byLetter(['a1', 'b1']);
  const run =
    (pairs: string[], orders: string[], priors = WEAK_PULL, level = LEVEL) =>
    () =>
      worths({ fruits, pairs: pairs.map(pair), orders: orders.map(order) }, priors, level);

  it.each([
    ['a fruit beside itself', run(['a1 > a1'], [])],
    ['a fruit twice in an order', run([], ['a1 b1 a1'])],
    ['an order of one', run([], ['a1'])],
    ['a fruit without a variety', run(['a1 > z1'], [])],
    ['"the same" where it was not offered', run(['a1 = b1'], [], { ...WEAK_PULL, ties: null })],
    ['varieties that cannot differ', run(['a1 > b1'], [], { ...WEAK_PULL, variety: { known: 0 } })],
    ['a negative spread', run(['a1 > b1'], [], { ...WEAK_PULL, fruit: { known: -1 } })],
    ['a prior of no width', run(['a1 > b1'], [], { ...WEAK_PULL, fruit: { half_normal: 0 } })],
    ['a spread that is no number', run(['a1 > b1'], [], { ...WEAK_PULL, ties: Number.NaN })],
    ['a level of 1', run(['a1 > b1'], [], WEAK_PULL, 1)],
    ['a level of 0', run(['a1 > b1'], [], WEAK_PULL, 0)],
  ])('%s', (_what, attempt) => {
    expect(attempt).toThrow(RangeError);
  });

  it('but not fruits known to be alike', () => {
    expect(run(['a1 > b1'], [], { ...WEAK_PULL, fruit: { known: 0 } })).not.toThrow();
  });
});
