import { describe, expect, it } from 'vitest';
import {
  type CovarianceFit,
  type CovariateObservation,
  fitCovariance,
} from '../../src/statistics/covariance-analysis.ts';
import { LEPROSY } from '../published/covariance/leprosy.ts';
import oracle from '../published/covariance/oracle.json' with { type: 'json' };
import { expectDigits, expectPrinted, fitted, oneWay, row as rowOf } from './agreement.ts';

function analysed(observations: readonly CovariateObservation[]): CovarianceFit {
  const found = fitCovariance(observations);
  if ('cannot' in found) throw new Error(`refused: ${JSON.stringify(found.cannot)}`);
  return found;
}

const row = (found: CovarianceFit, term: string) => found.rows.find((one) => one.term === term);

const PATIENTS = Object.entries(LEPROSY.drugs).flatMap(([group, pairs]) =>
  pairs.map(([covariate, value]) => ({ group, covariate, value })),
);

it('leprosy bacilli as printed: before counts adjusted for, the drugs no longer stand out', () => {
  const found = analysed(PATIENTS);
  const { group, covariate, residual, slope, means, unadjusted_ss, r_squared, equal_slopes } = LEPROSY.printed;
  expect(PATIENTS).toHaveLength(30);
  expect([row(found, 'group')?.df, row(found, 'covariate')?.df, found.df]).toEqual([
    group.df,
    covariate.df,
    residual.df,
  ]);
  expectPrinted(row(found, 'group')?.ss, group.ss);
  expectPrinted(row(found, 'group')?.f, group.f);
  expectPrinted(row(found, 'group')?.p, group.p);
  expectPrinted(row(found, 'covariate')?.ss, covariate.ss);
  expectPrinted(row(found, 'covariate')?.f, covariate.f);
  expectPrinted(row(found, 'residual')?.ms, residual.ms);
  expectPrinted(found.slope.estimate, slope);
  for (const [name, mean] of Object.entries(means)) {
    expectPrinted(found.mean(name).estimate, mean);
    expect(found.mean(name).n).toBe(10);
  }
  expectPrinted(found.equal_slopes?.f, equal_slopes.f);
  expectPrinted(found.equal_slopes?.p, equal_slopes.p);
  expect([found.equal_slopes?.df, found.equal_slopes?.df_residual]).toEqual([
    equal_slopes.df,
    equal_slopes.df_residual,
  ]);
  expect(found.type).toBe('II');

  const alone = fitted(
    oneWay(
      Object.fromEntries(Object.entries(LEPROSY.drugs).map(([drug, pairs]) => [drug, pairs.map((one) => one[1])])),
    ),
  );
  expectPrinted(rowOf(alone, 'treatment').ss, unadjusted_ss);
  expect(rowOf(alone, 'treatment').p).toBeLessThan(0.05);
  const total = rowOf(alone, 'treatment').ss + rowOf(alone, 'residual').ss;
  expectPrinted(1 - (row(found, 'residual')?.ss ?? 0) / total, r_squared);
});

describe.each(Object.entries(oracle.trials))(`%s, against ${oracle.made_with.R}`, (_name, trial) => {
  const found = analysed(trial.observations);
  // Values that share their first digits: what is left of them carries fewer.
  const digits = 9;
  it('residual, slope and rows', () => {
    expect(found.df).toBe(trial.df);
    expectDigits(found.residual_sd, trial.residual_sd, digits);
    expectDigits(found.covariate_mean, trial.covariate_mean, digits);
    expectDigits(found.slope.estimate, trial.slope.estimate, digits);
    expectDigits(found.slope.se, trial.slope.se, digits);
    for (const expected of trial.rows) {
      const own = row(found, expected.term);
      expect(own?.df).toBe(expected.df);
      expectDigits(own?.ss, expected.ss, digits);
      expectDigits(own?.f, expected.f, digits);
      expectDigits(own?.p, expected.p, digits);
    }
    expect([found.equal_slopes?.df, found.equal_slopes?.df_residual]).toEqual([
      trial.equal_slopes.df,
      trial.equal_slopes.df_residual,
    ]);
    expectDigits(found.equal_slopes?.f, trial.equal_slopes.f, digits);
    expectDigits(found.equal_slopes?.p, trial.equal_slopes.p, digits);
  });
  it('adjusted means and their differences', () => {
    expect(found.groups).toEqual(trial.means.map((one) => one.group));
    for (const { group, estimate, se } of trial.means) {
      expectDigits(found.mean(group).estimate, estimate, digits);
      expectDigits(found.mean(group).se, se, digits);
    }
    for (const { a, b, estimate, se } of trial.differences) {
      expectDigits(found.difference(a, b).estimate, estimate, digits);
      expectDigits(found.difference(a, b).se, se, digits);
    }
  });
});

describe('edges', () => {
  const of = (group: string, pairs: [number, number][]) =>
    pairs.map(([covariate, value]) => ({ group, covariate, value }));
  it.each([
    [
      'one group',
      of('A', [
        [1, 2],
        [2, 5],
        [3, 4],
      ]),
      { code: 'one-group' },
    ],
    ['nothing', [], { code: 'one-group' }],
    [
      'a covariate that is the group',
      [
        ...of('A', [
          [1, 2],
          [1, 5],
        ]),
        ...of('B', [
          [2, 5],
          [2, 6],
        ]),
      ],
      { code: 'no-covariate-spread' },
    ],
    [
      'as many unknowns as values',
      [
        ...of('A', [
          [1, 2],
          [2, 5],
        ]),
        ...of('B', [[2, 5]]),
      ],
      { code: 'no-residual-df', values: 3, unknowns: 3 },
    ],
    [
      'values on two lines exactly',
      [
        ...of('A', [
          [1, 0.1],
          [2, 0.2],
          [3, 0.3],
        ]),
        ...of('B', [
          [1, 1.1],
          [2, 1.2],
        ]),
      ],
      { code: 'no-spread', df: 2 },
    ],
  ] as [string, CovariateObservation[], object][])('%s', (_name, observations, cannot) => {
    expect(fitCovariance(observations)).toEqual({ cannot });
  });
  it('a group of one value has no slope of its own to test', () => {
    const plots = [
      ...of('A', [
        [1, 2],
        [2, 5],
        [4, 4],
        [5, 9],
        [7, 6],
      ]),
      ...of('B', [[3, 1]]),
      ...of('C', [
        [1, 2],
        [2, 2],
      ]),
    ];
    expect(analysed(plots).equal_slopes).toBeNull();
    // Slopes of their own would use up every value.
    expect(
      analysed([
        ...of('A', [
          [1, 2],
          [2, 5],
        ]),
        ...of('B', [
          [3, 1],
          [4, 4.5],
        ]),
      ]).equal_slopes,
    ).toBeNull();
  });
  it('the same bits in any order', () => {
    const [found, again] = [analysed(PATIENTS), analysed([...PATIENTS].reverse())];
    expect(again.rows).toEqual(found.rows);
    expect(again.mean('D')).toEqual(found.mean('D'));
  });
  it('names it does not know, and numbers that are none', () => {
    expect(() => analysed(PATIENTS).mean('X')).toThrow('invalid group: X');
    expect(() => analysed(PATIENTS).difference('A', 'A')).toThrow('invalid difference: A');
    expect(() => fitCovariance([{ group: 'A', covariate: Number.NaN, value: 1 }])).toThrow('invalid covariate');
    expect(() => fitCovariance([{ group: 'A', covariate: 1, value: Number.POSITIVE_INFINITY }])).toThrow(
      'invalid value',
    );
  });
});
