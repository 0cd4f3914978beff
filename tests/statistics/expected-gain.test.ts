import { expect, test } from 'vitest';
import { expectedGain, type Line } from '../../src/statistics/expected-gain.ts';
import { UNIT_NORMAL_LOSS } from '../published/unit-normal-loss/table.ts';
import { between, type Chance, chanceOf, wholeBetween } from '../simulated/chance.ts';

const line = (mean: number, slope: number): Line => ({ mean, slope });

const manyLines = (chance: Chance, count: number): Line[] =>
  Array.from({ length: count }, () => line(between(chance, -3, 3), between(chance, -2, 2)));

/** By the trapezoidal rule on what stands in the sum, with nothing known of where lines cross. */
function byQuadrature(lines: readonly Line[], places: number): number {
  const step = 1 / 4000;
  const topAt = (z: number): number =>
    lines
      .map(({ mean, slope }) => mean + slope * z)
      .sort((a, b) => b - a)
      .slice(0, places)
      .reduce((sum, one) => sum + one, 0);
  let sum = 0;
  for (let at = -9 / step; at <= 9 / step; at++) {
    const z = at * step;
    sum += (topAt(z) * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
  }
  return step * sum - topAt(0);
}

test('one line, or as many places as lines: nothing to choose, nothing to gain', () => {
  expect(expectedGain([line(3, 2)])).toBeCloseTo(0, 14);
  expect(expectedGain([line(3, 2), line(-1, 4), line(0, -1)], 3)).toBeCloseTo(0, 13);
});

test('two lines: the unit normal loss integral of printed tables', () => {
  for (const [apart, loss] of UNIT_NORMAL_LOSS) {
    // A slope difference of 4 and a mean difference of 4u: 4 L(u), whichever of the two is ahead.
    expect(expectedGain([line(5, 1), line(5 + 4 * apart, -3)]) / 4).toBeCloseTo(loss, apart < 1 ? 4 : 5);
    expect(expectedGain([line(5, -3), line(5 - 4 * apart, 1)]) / 4).toBeCloseTo(loss, apart < 1 ? 4 : 5);
  }
});

test('many lines, several places: as by brute quadrature', () => {
  for (let seed = 1; seed <= 12; seed++) {
    const chance = chanceOf(seed);
    const lines = manyLines(chance, wholeBetween(chance, 3, 9));
    const places = wholeBetween(chance, 1, lines.length - 1);
    expect(expectedGain(lines, places)).toBeCloseTo(byQuadrature(lines, places), 6);
  }
});

test('parallel lines and equal lines gain nothing; one that ties today gains half of E|Z|', () => {
  expect(expectedGain([line(0, 2), line(1, 2), line(5, 2)])).toBeCloseTo(0, 13);
  expect(expectedGain([line(1, 0.5), line(1, 0.5), line(1, 0.5)], 2)).toBeCloseTo(0, 13);
  // E max(0, Z) = 1/√(2π).
  expect(expectedGain([line(1, 0), line(1, 1)])).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 13);
  // A twin takes the second place whenever its double takes the first: with Z, 2Z against two still lines.
  expect(expectedGain([line(0, 1), line(0, 1), line(0, 0), line(0, 0)], 2)).toBeCloseTo(2 / Math.sqrt(2 * Math.PI), 13);
});

test('shifted, tilted, turned round, or in another order the same; in other units as many times as large', () => {
  for (let seed = 21; seed <= 26; seed++) {
    const lines = manyLines(chanceOf(seed), 6);
    const gain = expectedGain(lines, 2);
    const turned = (change: (one: Line) => Line): number => expectedGain(lines.map(change), 2);
    expect(turned(({ mean, slope }) => line(mean + 100, slope))).toBeCloseTo(gain, 10);
    // What all of them move by moves the best of them as far, on average by 0.
    expect(turned(({ mean, slope }) => line(mean, slope + 3))).toBeCloseTo(gain, 11);
    expect(turned(({ mean, slope }) => line(mean, -slope))).toBeCloseTo(gain, 12);
    expect(turned(({ mean, slope }) => line(7 * mean, 7 * slope))).toBeCloseTo(7 * gain, 11);
    expect(expectedGain(lines.toReversed(), 2)).toBeCloseTo(gain, 12);
    expect(gain).toBeGreaterThan(0);
  }
});

test('a line far behind, or hardly steeper than another, adds nothing and breaks nothing', () => {
  const lines = [line(0, 1), line(0, -1)];
  const gain = expectedGain(lines);
  expect(expectedGain([...lines, line(-60, 2)])).toBeCloseTo(gain, 13);
  expect(expectedGain([...lines, line(-1, 1 + 1e-15)])).toBeCloseTo(gain, 13);
  expect(expectedGain([...lines, line(-1e300, 1e-10)])).toBeCloseTo(gain, 13);
});

test('a line that is not finite, or places that are not among the lines, are refused', () => {
  const lines = [line(0, 1), line(0, -1)];
  expect(() => expectedGain([...lines, line(Number.NaN, 1)])).toThrow(RangeError);
  expect(() => expectedGain([...lines, line(0, Number.POSITIVE_INFINITY)])).toThrow(RangeError);
  for (const places of [0, 3, 1.5, Number.NaN]) expect(() => expectedGain(lines, places)).toThrow(RangeError);
  expect(() => expectedGain([])).toThrow(RangeError);
});
