import fc from 'fast-check';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { twoSamples } from '../../src/statistics/exact-tests.ts';
import {
  type DayObservation,
  type PermutationTest,
  type SharedDay,
  type Strength,
  shuffleDays,
} from '../../src/statistics/permutation.ts';
import { absoluteSlope, largestCorrelation } from '../../src/statistics/window-strength.ts';
import { MICE } from '../published/permutation/mice.ts';
import { CRITICAL, ORDERS } from '../published/permutation/ranks.ts';
import { expectDigits, expectPrinted } from './agreement.ts';

const SEED = 20250812;

function stream(seed = SEED): () => number {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}

interface Picking {
  readonly stratum: string;
  readonly covariates: readonly number[];
  readonly residuals: readonly number[];
}

const picking = (stratum: string, covariate: number, ...residuals: number[]): Picking => ({
  stratum,
  covariates: [covariate],
  residuals,
});

const daysOf = (pickings: readonly Picking[]): SharedDay[] =>
  pickings.map(({ stratum, covariates }, index) => ({ id: `day ${index}`, stratum, covariates }));

const observationsOf = (pickings: readonly Picking[]): DayObservation[] =>
  pickings.flatMap(({ residuals }, index) => residuals.map((residual) => ({ day: `day ${index}`, residual })));

/** The test; fails when it was refused. */
function shuffled(pickings: readonly Picking[], strength: Strength, draws = 999, seed = SEED): PermutationTest {
  const test = shuffleDays(daysOf(pickings), observationsOf(pickings), strength, { random: stream(seed), draws });
  if ('cannot' in test) throw new Error(`refused: ${test.cannot.code}`);
  return test;
}

describe('one fruit a day, one season: the exact null distribution of a rank correlation', () => {
  it.each(ORDERS)('$order: ρ $rho', ({ order, rho, p }) => {
    const test = shuffled(
      order.map((rank, index) => picking('2025', index + 1, rank)),
      largestCorrelation,
    );
    expect(test.method).toBe('all');
    expectPrinted(test.observed, rho);
    expectDigits(test.p, p, 10);
    expect(test.p <= 0.05).toBe(Number(rho) >= (CRITICAL[order.length] ?? 0));
  });
});

it('a yes-or-no covariate is the comparison of two groups: seven of the mice, three of them treated', () => {
  const [treated, control] = [MICE.treated.slice(0, 3), MICE.control.slice(0, 4)];
  const days = [...treated.map((one) => picking('2025', 1, one)), ...control.map((one) => picking('2025', 0, one))];
  const groups = twoSamples(treated, control);
  if ('cannot' in groups) throw new Error('refused');
  const test = shuffled(days, absoluteSlope);
  expect([test.arrangements, groups.arrangements]).toEqual([5040, 35]);
  expect(test.p).toBe(groups.p_two_sided);
  expect(test.observed).toBeCloseTo(Math.abs(groups.observed), 10);
});

it('drawn, all sixteen mice: within four standard errors of the 11,440 choices', () => {
  const days = [
    ...MICE.treated.map((one) => picking('2025', 1, one)),
    ...MICE.control.map((one) => picking('2025', 0, one)),
  ];
  const p = Number(MICE.p_two_sided);
  const draws = 4000;
  const test = shuffled(days, absoluteSlope, draws);
  expect([test.method, test.arrangements]).toEqual(['drawn', draws]);
  expect(test.p).toBe((1 + test.at_least) / (1 + draws));
  expect(Math.abs(test.p - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / draws));
});

describe('two seasons of two days, worked by hand', () => {
  const days = [picking('a', 1, 0), picking('a', 2, 3, 3), picking('b', 10, 1), picking('b', 20, 5)];
  const sumOfProducts: Strength = ([window = []], residuals) =>
    residuals.reduce((sum, one, index) => sum + one * (window[index] ?? 0), 0);

  it('four arrangements: 122, 116, 82, 76', () => {
    expect(shuffled(days, sumOfProducts)).toEqual({
      observed: 122,
      method: 'all',
      arrangements: 4,
      at_least: 1,
      p: 0.25,
    });
    const turned = [picking('a', 2, 0), picking('a', 1, 3, 3), picking('b', 10, 1), picking('b', 20, 5)];
    expect(shuffled(turned, sumOfProducts)).toMatchObject({ observed: 116, at_least: 2, p: 0.5 });
  });
  it('no value ever leaves its season or parts from its day', () => {
    const seen = new Set<string>();
    const watch: Strength = ([window = []], residuals) => {
      seen.add(residuals.map((one, index) => `${one}:${window[index]}`).join(' '));
      return 1;
    };
    expect(shuffled(days, watch).p).toBe(1);
    expect([...seen].sort()).toEqual([
      '0:1 3:2 3:2 1:10 5:20',
      '0:1 3:2 3:2 1:20 5:10',
      '0:2 3:1 3:1 1:10 5:20',
      '0:2 3:1 3:1 1:20 5:10',
    ]);
  });
});

it('drawn, no value leaves its season either', () => {
  const days = ['a', 'b'].flatMap((season, offset) =>
    Array.from({ length: 8 }, (_, index) => picking(season, 100 * offset + index, index)),
  );
  let arrangements = 0;
  const watch: Strength = ([window = []]) => {
    const sorted = [window.slice(0, 8), window.slice(8)].map((season) => season.sort((a, b) => a - b));
    expect(sorted).toEqual([0, 100].map((offset) => Array.from({ length: 8 }, (_, index) => offset + index)));
    arrangements += 1;
    return 1;
  };
  expect(shuffled(days, watch, 50)).toMatchObject({ method: 'drawn', p: 1 });
  expect(arrangements).toBe(51);
});

it('all are tried below 10,000 arrangements and drawn from there on', () => {
  const season = (name: string, days: number) =>
    Array.from({ length: days }, (_, index) => picking(name, index, index % 3));
  const method = (...counts: number[]) => {
    const days = counts.flatMap((count, index) => season(`${index}`, count));
    const { method, arrangements } = shuffled(days, absoluteSlope, 20);
    return [method, arrangements];
  };
  expect(method(7)).toEqual(['all', 5040]);
  expect(method(4, 3, 3)).toEqual(['all', 864]);
  expect(method(8)).toEqual(['drawn', 20]);
  expect(method(7, 2)).toEqual(['drawn', 20]);
  expect(method(100, 100)).toEqual(['drawn', 20]);
});

const value = fc.integer({ min: -9, max: 9 });
const pickings = (windows: number, most: number): fc.Arbitrary<Picking[]> =>
  fc.array(
    fc.record({
      stratum: fc.constantFrom('a', 'b'),
      covariates: fc.array(value, { minLength: windows, maxLength: windows }),
      residuals: fc.array(value, { minLength: 1, maxLength: 3 }),
    }),
    { minLength: 3, maxLength: most },
  );
const differs = (days: readonly Picking[]): boolean =>
  days.some((one) =>
    days.some((two) => one.stratum === two.stratum && one.covariates.join() !== two.covariates.join()),
  );

it('is the same for the same days and fruits in any order and under any ids, tried or drawn', () => {
  // Few different covariates, so that days are often told apart by their fruits alone.
  const alike = pickings(2, 12).map((days) =>
    days.map((one) => ({ ...one, covariates: one.covariates.map((value) => Math.sign(value)) })),
  );
  const other = (days: readonly Picking[]): fc.Arbitrary<Picking[]> =>
    fc
      .tuple(...days.map(({ residuals }) => fc.shuffledSubarray([...residuals], { minLength: residuals.length })))
      .map((residuals) => days.map((one, index) => ({ ...one, residuals: residuals[index] ?? [] })))
      .chain((turned) => fc.shuffledSubarray(turned, { minLength: turned.length }));
  // Powers and products tell every order of the fruits from every other.
  const strength: Strength = (windows, residuals) =>
    residuals.reduce((sum, one, index) => sum + (one + 0.1) * (index + 2) ** (windows[0]?.[index] ?? 0), 0) +
    largestCorrelation(windows, residuals);
  const methods = new Set<string>();
  fc.assert(
    fc.property(
      alike.filter(differs).chain((days) => fc.tuple(fc.constant(days), other(days))),
      ([one, two]) => {
        const [first, second] = [shuffled(one, strength, 30), shuffled(two, strength, 30)];
        methods.add(first.method);
        expect(second).toEqual(first);
      },
    ),
    { seed: SEED, numRuns: 100 },
  );
  expect(methods).toEqual(new Set(['all', 'drawn']));
});

it('a search over windows pays for itself: p lies between that of the strongest window alone and the sum of all', () => {
  let dearer = 0;
  fc.assert(
    fc.property(pickings(3, 6).filter(differs), (days) => {
      const reached = shuffled(days, largestCorrelation);
      // Each window alone, against what the strongest reached.
      const alone = [0, 1, 2].map((window) => {
        const own: Strength = (windows, residuals) => largestCorrelation([windows[window] ?? []], residuals);
        let atLeast = 0;
        const counting: Strength = (windows, residuals) => {
          const strength = own(windows, residuals);
          atLeast += strength >= reached.observed - 1e-9 ? 1 : 0;
          return strength;
        };
        const { observed, arrangements } = shuffled(days, counting);
        // The strength of the days as they came is asked once more than the arrangements.
        const again = observed >= reached.observed - 1e-9 ? 1 : 0;
        return { observed, p: (atLeast - again) / arrangements };
      });
      const strongest = Math.max(...alone.map((one) => one.p * (one.observed >= reached.observed - 1e-9 ? 1 : 0)));
      expect(reached.p).toBeGreaterThanOrEqual(strongest - 1e-12);
      expect(reached.p).toBeLessThanOrEqual(alone.reduce((sum, one) => sum + one.p, 0) + 1e-12);
      dearer += reached.p > strongest + 1e-12 ? 1 : 0;
    }),
    { seed: SEED, numRuns: 100 },
  );
  expect(dearer).toBeGreaterThan(20);
});

describe('when rain does nothing', () => {
  /** Two seasons of four days, one to five fruits a day that share the day's effect. */
  const random = stream(7);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const RUNS = 400;
  const gardens = Array.from({ length: RUNS }, () =>
    ['a', 'b'].flatMap((season) =>
      Array.from({ length: 4 }, () => {
        const effect = normal();
        const fruits = Array.from({ length: 1 + Math.floor(random() * 5) }, () => effect + 0.3 * normal());
        return picking(season, random(), ...fruits);
      }),
    ),
  );
  const ps = gardens.map((days) => shuffled(days, absoluteSlope).p);

  it.each([0.05, 0.1, 0.25, 0.5, 0.75])('p is at most %d that often, within three standard errors', (level) => {
    const share = ps.filter((p) => p <= level + 1e-9).length / RUNS;
    // With 576 arrangements p comes in steps of 1/576, so it can be at most `level` a little less often.
    expect(Math.abs(share - level)).toBeLessThan(3 * Math.sqrt((level * (1 - level)) / RUNS) + 1 / 576);
  });
  it('shuffling fruits, as if each had its own rain, would find an effect far too often', () => {
    const asFruits = gardens.slice(0, 150).map((days) => {
      const fruits = days.flatMap(({ stratum, covariates, residuals }) =>
        residuals.map((residual) => picking(stratum, covariates[0] ?? 0, residual)),
      );
      return shuffled(fruits, absoluteSlope, 199).p;
    });
    expect(asFruits.filter((p) => p <= 0.1).length / 150).toBeGreaterThan(0.25);
  });
});

it('finds a strong effect, and the least p there can be', () => {
  const days = ['a', 'b'].flatMap((season, offset) => [1, 2, 3, 4].map((mm) => picking(season, mm, -mm, -mm - offset)));
  const test = shuffled(days, absoluteSlope);
  expect(test.arrangements).toBe(576);
  expect(test.p).toBeLessThan(0.01);
});

describe('strengths', () => {
  it('slope and correlation of a line', () => {
    expect(absoluteSlope([[1, 2, 3]], [5, 3, 1])).toBeCloseTo(2, 14);
    expect(largestCorrelation([[1, 2, 3]], [5, 3, 1])).toBeCloseTo(1, 14);
    expect(
      largestCorrelation(
        [
          [1, 2, 1],
          [1, 2, 3],
        ],
        [5, 3, 1],
      ),
    ).toBeCloseTo(1, 14);
  });
  it('are 0 without variation, also where a mean rounds', () => {
    expect(absoluteSlope([[0.1, 0.1, 0.1]], [1, 2, 3])).toBe(0);
    expect(largestCorrelation([[0.1, 0.1, 0.1]], [1, 2, 3])).toBe(0);
    expect(largestCorrelation([[1, 2, 3]], [0.7, 0.7, 0.7])).toBe(0);
    expect(absoluteSlope([], [])).toBe(0);
  });
});

describe('refused', () => {
  const draws = { random: stream(), draws: 99 };
  const fruit = (day: string): DayObservation => ({ day, residual: 1 });
  const day = (id: string, stratum: string, ...covariates: number[]): SharedDay => ({ id, stratum, covariates });

  it('as data: one day a season, the same rain on all, or days without fruit', () => {
    const cannot = (days: number) => ({ cannot: { code: 'nothing-to-shuffle', days } });
    const two = [fruit('x'), fruit('y')];
    expect(shuffleDays([day('x', 'a', 1), day('y', 'b', 2)], two, absoluteSlope, draws)).toEqual(cannot(2));
    expect(shuffleDays([day('x', 'a', 1), day('y', 'a', 1)], two, absoluteSlope, draws)).toEqual(cannot(2));
    expect(shuffleDays([day('x', 'a', 1), day('y', 'a', 2)], [fruit('x')], absoluteSlope, draws)).toEqual(cannot(1));
    expect(shuffleDays([], [], absoluteSlope, draws)).toEqual(cannot(0));
  });
  it.each([
    ['day', () => shuffleDays([day('x', 'a', 1)], [fruit('z')], absoluteSlope, draws)],
    ['days', () => shuffleDays([day('x', 'a', 1), day('x', 'a', 2)], [], absoluteSlope, draws)],
    ['residual', () => shuffleDays([day('x', 'a', 1)], [{ day: 'x', residual: Number.NaN }], absoluteSlope, draws)],
    ['covariates', () => shuffleDays([day('x', 'a', 1), day('y', 'a', 2, 3)], [], absoluteSlope, draws)],
    ['covariates', () => shuffleDays([day('x', 'a')], [], absoluteSlope, draws)],
    ['covariates', () => shuffleDays([day('x', 'a', Number.NaN)], [], absoluteSlope, draws)],
    ['draws', () => shuffleDays([], [], absoluteSlope, { ...draws, draws: 0 })],
    [
      'strength',
      () => shuffleDays([day('x', 'a', 1), day('y', 'a', 2)], [fruit('x'), fruit('y')], () => Number.NaN, draws),
    ],
  ])('by throwing: invalid %s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
