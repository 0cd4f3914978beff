import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Tastings } from '../../../src/statistics/preference/ballot.ts';
import { placed } from '../../../src/statistics/preference/ballot.ts';
import { posteriorMode } from '../../../src/statistics/preference/posterior-mode.ts';
import { WEAK_PULL, type Worths } from '../../../src/statistics/preference/worths.ts';
import { byLetter, differenceOf, estimates, found, fruitsAlone, pair, worthOf } from './tasting.ts';

const SEEDED = { seed: 20251109, numRuns: 25 };
const FRUITS = ['a1', 'a2', 'b1', 'b2', 'c1', 'd1'];
const TURNED = { first: 'second', same: 'same', second: 'first' } as const;

const fewFruits = (count: number) => fc.shuffledSubarray(FRUITS, { minLength: count, maxLength: count });
const pairs = fc
  .tuple(fewFruits(2), fc.constantFrom('first', 'same', 'second'))
  .map(([[first = '', second = ''], said]) => ({ first, second, said }) as const);
const orders = fc.oneof(fewFruits(2), fewFruits(3), fewFruits(4)).map((best_first) => ({ best_first }));
const tastings = fc
  .record({ pairs: fc.array(pairs, { minLength: 4, maxLength: 10 }), orders: fc.array(orders, { maxLength: 4 }) })
  .map((ballots): Tastings => ({ fruits: byLetter(FRUITS), ...ballots }))
  .filter(({ pairs: given }) => given.some(({ first, second }) => first[0] !== second[0]));

/** Runs a check on tastings of at least two varieties. */
const onTastings = (run: (given: Tastings, fit: Worths) => void): void =>
  fc.assert(
    fc.property(tastings, (given) => run(given, found(given, WEAK_PULL))),
    SEEDED,
  );

/** The same worths, up to rounding. */
function expectWorths(again: Worths, fit: Worths, named = (variety: string) => variety, sign = 1): void {
  for (const one of fit.varieties) {
    const other = again.varieties.find(({ variety }) => variety === named(one.variety));
    expect(other?.fruits).toBe(one.fruits);
    expect(other?.ballots).toBe(one.ballots);
    if ('cannot' in one.worth) {
      expect(other?.worth).toEqual(one.worth);
      continue;
    }
    const worth = worthOf(again, named(one.variety));
    const { low, high } = one.worth.interval;
    expect(worth.estimate).toBeCloseTo(sign * one.worth.estimate, 7);
    expect(worth.interval.low).toBeCloseTo(sign > 0 ? low : -high, 7);
    expect(worth.interval.high).toBeCloseTo(sign > 0 ? high : -low, 7);
  }
}

describe('worths', () => {
  it('are the same to the last digit in any order of the ballots, and for a pair named either way round', () => {
    onTastings((given, fit) => {
      const turned = given.pairs.map(({ first, second, said }) => ({
        first: second,
        second: first,
        said: TURNED[said],
      }));
      const again = found({ ...given, pairs: turned.reverse(), orders: given.orders.toReversed() }, WEAK_PULL);
      expect(again.varieties).toEqual(fit.varieties);
    });
  });

  it('do not depend on what fruits and varieties are called', () => {
    onTastings((given, fit) => {
      const called = (id: string): string => `${{ a: 'z', b: 'm', c: 'q', d: 'k' }[id.slice(0, 1)]}${id.slice(1)}`;
      const again = found(
        {
          fruits: new Map([...given.fruits].map(([fruit, variety]) => [called(fruit), called(variety)])),
          pairs: given.pairs.map((one) => ({ ...one, first: called(one.first), second: called(one.second) })),
          orders: given.orders.map((one) => ({ best_first: one.best_first.map(called) })),
        },
        WEAK_PULL,
      );
      expectWorths(again, fit, called);
    });
  });

  it('change sign when every pair says the opposite', () => {
    onTastings((given) => {
      const pairsOnly = { ...given, orders: [] };
      const opposite = given.pairs.map((one) => ({ ...one, said: TURNED[one.said] }));
      expectWorths(found({ ...pairsOnly, pairs: opposite }, WEAK_PULL), found(pairsOnly, WEAK_PULL), undefined, -1);
    });
  });

  it('stand inside their intervals, add up to nothing in a group, and differ by their difference', () => {
    onTastings((_given, fit) => {
      for (const group of fit.groups.filter((one) => one.length > 1)) {
        const own = group.map((variety) => worthOf(fit, variety));
        for (const { estimate, interval } of own) {
          expect(interval.low).toBeLessThan(estimate);
          expect(estimate).toBeLessThan(interval.high);
        }
        expect(Math.abs(own.reduce((sum, { estimate }) => sum + estimate, 0))).toBeLessThan(1e-9);
        const [a = '', b = ''] = group;
        const [there, back] = [differenceOf(fit, a, b), differenceOf(fit, b, a)];
        expect(there.estimate).toBeCloseTo(worthOf(fit, a).estimate - worthOf(fit, b).estimate, 9);
        expect(there.estimate).toBeCloseTo(-back.estimate, 9);
        expect(there.interval.low).toBeCloseTo(-back.interval.high, 7);
        expect(there.chance_above + back.chance_above).toBeCloseTo(1, 9);
      }
    });
  });

  it('lie closer together the harder the pull', () => {
    fc.assert(
      fc.property(tastings, (given) => {
        const ballots = placed(given);
        const lengths = [0.1, 0.3, 1, 3].map((variety) =>
          Math.hypot(...posteriorMode(ballots, { variety, fruit: 0.5, ties: 1 }).worths),
        );
        for (const [at, length] of lengths.entries())
          if (at > 0) expect(length).toBeGreaterThanOrEqual((lengths[at - 1] ?? 0) - 1e-9);
      }),
      SEEDED,
    );
  });
});

describe('the peak', () => {
  it('is the same from wherever the search begins', () => {
    const spreads = { variety: 1.5, fruit: 1, ties: 1 };
    fc.assert(
      fc.property(
        tastings,
        fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 30 }),
        (given, far) => {
          const ballots = placed(given);
          const peak = posteriorMode(ballots, spreads);
          const again = posteriorMode(
            ballots,
            spreads,
            Float64Array.from(peak.units, (_, place) => far[place] ?? 0),
          );
          for (const [place, unit] of peak.units.entries()) expect(again.units[place]).toBeCloseTo(unit, 7);
          expect(again.log_evidence).toBeCloseTo(peak.log_evidence, 7);
        },
      ),
      SEEDED,
    );
  });
});

describe('the fruit is the replicate', () => {
  const width = (fit: Worths): number => {
    const { low, high } = worthOf(fit, 'a').interval;
    return high - low;
  };
  const wins = (set: readonly string[]) => ({
    fruits: byLetter(['a1', 'a2', 'a3', 'a4', 'b1', 'b2', 'b3', 'b4']),
    pairs: set.map(pair),
    orders: [],
  });
  const onePairMany = [...'123456789abc'].map((taster) => (taster > '9' ? 'b1 > a1' : 'a1 > b1'));
  const manyPairs = [...'123456789abc'].map((taster, at) => {
    const k = (at % 4) + 1;
    return taster > '9' ? `b${k} > a${k}` : `a${k} > b${k}`;
  });

  it('twelve tasters of one pair of fruits leave more in doubt than of four pairs', () => {
    expect(width(found(wins(onePairMany), WEAK_PULL))).toBeGreaterThan(1.1 * width(found(wins(manyPairs), WEAK_PULL)));
  });

  it('and a thousand tasters of one pair do not settle the variety', () => {
    const thousand = Array.from({ length: 1000 }, (_, at) => (at % 3 === 0 ? 'b1 > a1' : 'a1 > b1'));
    expect(width(found(wins(thousand), WEAK_PULL))).toBeGreaterThan(0.5);
    const forgotten = found(wins(thousand), { ...WEAK_PULL, fruit: { known: 0 } });
    expect(width(forgotten)).toBeLessThan(0.2);
  });

  it('a variety that wins everything gets a worth with an end', () => {
    const fit = found(fruitsAlone(['a > b', 'a > c', 'a > b', 'b > c'].map(pair), []), WEAK_PULL);
    const { a = 0, b = 0, c = 0 } = estimates(fit);
    expect(a).toBeGreaterThan(b);
    expect(b).toBeGreaterThan(c);
    expect(worthOf(fit, 'a').interval.high).toBeLessThan(8);
  });
});
