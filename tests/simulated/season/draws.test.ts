import { describe, expect, test } from 'vitest';
import { chanceOf } from '../chance.ts';
import { gamma } from '../gamma.ts';
import { momentsOf } from '../moments.ts';
import { student } from '../student.ts';
import { departure, squareDeparture } from './departure.ts';
import { residual } from './residual.ts';

const DRAWS = 40_000;
const drawn = (draw: () => number): number[] => Array.from({ length: DRAWS }, draw);

/** Standard errors between the share of values beyond a quantile and the tail it leaves. */
const tailDeparture = (values: readonly number[], beyond: (value: number) => boolean, tail: number): number =>
  (values.filter(beyond).length / values.length - tail) / Math.sqrt((tail * (1 - tail)) / values.length);

describe('gamma numbers', () => {
  test.each([0.7, 2, 9])('of shape %d have mean and variance of it, and skewness 2/√shape', (shape) => {
    const values = drawn(chanceGamma(21, shape));
    expect(Math.abs(departure(values, shape))).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          values.map((value) => (value - shape) ** 2),
          shape,
        ),
      ),
    ).toBeLessThan(4);
    const cubes = values.map((value) => ((value - shape) / Math.sqrt(shape)) ** 3);
    expect(Math.abs(departure(cubes, 2 / Math.sqrt(shape)))).toBeLessThan(4);
    expect(Math.min(...values)).toBeGreaterThan(0);
  });

  // Chi-square is twice a gamma number of half its degrees of freedom. Critical values: NIST/SEMATECH e-Handbook of
  // Statistical Methods, table 1.3.6.7.4 (from memory).
  test.each([
    { freedom: 1, upper: [2.706, 3.841, 6.635], lower: [] },
    { freedom: 4, upper: [7.779, 9.488, 13.277], lower: [1.064, 0.711] },
    { freedom: 10, upper: [15.987, 18.307, 23.209], lower: [4.865, 3.94] },
  ])('doubled, leave the tails of the chi-square table, $freedom degrees of freedom', ({ freedom, upper, lower }) => {
    const values = drawn(chanceGamma(22, freedom / 2)).map((value) => 2 * value);
    for (const [index, limit] of upper.entries())
      expect(Math.abs(tailDeparture(values, (one) => one > limit, [0.1, 0.05, 0.01][index] ?? 0))).toBeLessThan(4);
    for (const [index, limit] of lower.entries())
      expect(Math.abs(tailDeparture(values, (one) => one < limit, [0.1, 0.05][index] ?? 0))).toBeLessThan(4);
  });

  test('want a shape', () => {
    for (const shape of [0, -1, Number.NaN]) expect(() => gamma(chanceOf(1), shape)).toThrow(RangeError);
  });
});

describe("Student's numbers", () => {
  // Critical values of t: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2 (from memory).
  test.each([
    { freedom: 3, limits: [1.638, 2.353, 3.182, 5.841] },
    { freedom: 10, limits: [1.372, 1.812, 2.228, 3.169] },
  ])('leave the tails of the t table, $freedom degrees of freedom', ({ freedom, limits }) => {
    const chance = chanceOf(23);
    const values = drawn(() => student(chance, freedom));
    for (const [index, limit] of limits.entries()) {
      const tail = [0.1, 0.05, 0.025, 0.005][index] ?? 0;
      expect(Math.abs(tailDeparture(values, (one) => one > limit, tail))).toBeLessThan(4);
      expect(Math.abs(tailDeparture(values, (one) => one < -limit, tail))).toBeLessThan(4);
    }
  });

  test('of 10 degrees of freedom have mean 0 and variance 10/8', () => {
    const chance = chanceOf(24);
    const values = drawn(() => student(chance, 10));
    expect(Math.abs(departure(values, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(values, Math.sqrt(10 / 8)))).toBeLessThan(4);
  });
});

describe('strays of fruits', () => {
  test.each([
    ['normal', 0],
    ['skewed', 2.26],
    ['left-skewed', -2.26],
  ] as const)('%s: mean 0, standard deviation 1, skewness %d', (shape, skewness) => {
    const chance = chanceOf(25);
    const values = drawn(() => residual(shape, chance));
    expect(Math.abs(departure(values, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(values, 1))).toBeLessThan(4);
    // Wide, for the sample skewness of a lognormal number settles slowly: see chance.test.ts.
    expect(Math.abs(momentsOf(values).skewness - skewness)).toBeLessThan(
      skewness === 0 ? 4 * Math.sqrt(6 / DRAWS) : 0.4,
    );
  });

  // t of 3 degrees of freedom has variance 3 and no fourth moment, so its tails are looked at and not its spread.
  test('student: the tails of t with 3 degrees of freedom, brought to variance 1', () => {
    const chance = chanceOf(26);
    const values = drawn(() => residual('student', chance));
    expect(Math.abs(departure(values, 0))).toBeLessThan(4);
    expect(Math.abs(tailDeparture(values, (one) => Math.abs(one) > 2.353 / Math.sqrt(3), 0.1))).toBeLessThan(4);
    expect(Math.abs(tailDeparture(values, (one) => Math.abs(one) > 5.841 / Math.sqrt(3), 0.01))).toBeLessThan(4);
  });
});

function chanceGamma(seed: number, shape: number): () => number {
  const chance = chanceOf(seed);
  return () => gamma(chance, shape);
}
