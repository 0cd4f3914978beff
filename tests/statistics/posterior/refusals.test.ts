import { expect, it } from 'vitest';
import { posterior } from '../../../src/statistics/posterior/posterior.ts';
import type { PosteriorData } from '../../../src/statistics/posterior/posterior-data.ts';
import { constant, grouped } from './telling.ts';

const SETTINGS = { seed: 1, draws: 10 };
const data = grouped(
  [
    [1, 2, 4],
    [3, 5, 4],
  ],
  1,
);
const [group] = data.random;
const with_ = (change: Partial<PosteriorData>): PosteriorData => ({ ...data, ...change });

it.each([
  { name: 'nothing', given: { y: [], fixed: [], random: [] }, cannot: { code: 'no-values' } },
  {
    name: 'one value',
    given: grouped([[5]], 1),
    cannot: { code: 'no-residual-df', values: 1, unknowns: 1 },
  },
  {
    name: 'a single season beside the constant',
    given: with_({ fixed: [constant(6), { name: 'season', values: [1, 1, 1, 1, 1, 1] }] }),
    cannot: { code: 'rank-deficient', column: 'season' },
  },
  { name: 'equal values', given: with_({ y: [7, 7, 7, 7, 7, 7] }), cannot: { code: 'no-spread', df: 5 } },
])('tells why: $name', ({ given, cannot }) => {
  expect(posterior(given, SETTINGS)).toEqual({ cannot });
});

it('throws for what is no data', () => {
  const factor = { name: 'group', level: group?.level ?? [], scale: 1 };
  const wrong: PosteriorData[] = [
    with_({ y: [1, 2, 3, 4, 5, Number.NaN] }),
    with_({ y: [1, 2, 3, 4, 5, 1e200] }),
    with_({ fixed: [{ name: 'age', values: [1, 2, 3, 4, 5, Number.POSITIVE_INFINITY] }] }),
    with_({ fixed: [constant(5)] }),
    with_({ fixed: [constant(6), constant(6)] }),
    with_({ random: [{ ...factor, level: ['a'] }] }),
    with_({ random: [factor, factor] }),
    with_({ random: [{ ...factor, scale: 0 }] }),
    with_({ random: [{ ...factor, scale: Number.POSITIVE_INFINITY }] }),
    with_({ random: ['a', 'b', 'c', 'd', 'e'].map((name) => ({ ...factor, name })) }),
  ];
  for (const one of wrong) expect(() => posterior(one, SETTINGS)).toThrow(RangeError);
  for (const draws of [0, 2.5, Number.NaN]) expect(() => posterior(data, { seed: 1, draws })).toThrow(RangeError);
});
