import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DIMENSIONS, type Dimension, fromSi, toSi } from '../src/units.ts';

/** Exact by definition: NIST Special Publication 811, appendix B, and the agreement of 1959 (from memory). */
const EXACT: readonly [Dimension, string, number, number][] = [
  ['mass', 'lb', 1, 0.45359237],
  ['rain', 'in', 1, 25.4],
  ['length', 'in', 1, 2.54],
  ['volume', 'gal', 1, 3.785411784],
  ['area', 'ft2', 1, 0.09290304],
  ['height', 'ft', 1, 0.3048],
  // A gallon is 231 cubic inches; minutes are the same on both sides.
  ['flow', 'gal_min', 1, (231 * 2.54 ** 3) / 1000],
  ['flow', 'gal_min', 100, 378.5411784],
  ['speed', 'km_h', 3.6, 1],
  ['speed', 'km_h', 90, 25],
  // A statute mile is 5280 feet, an hour 3600 seconds.
  ['speed', 'mph', 1, (5280 * 0.3048) / 3600],
  ['speed', 'mph', 100, 44.704],
  // Fixed points of the two scales: ice, steam, and where they meet.
  ['temperature', 'f', 32, 0],
  ['temperature', 'f', 212, 100],
  ['temperature', 'f', -40, -40],
];

describe('one unit in SI, as defined', () => {
  for (const [dimension, suffix, value, si] of EXACT) {
    test(`${value} ${suffix}`, () => {
      expect(toSi(dimension, suffix, value)).toBeCloseTo(si, 12);
      expect(fromSi(dimension, suffix, si)).toBeCloseTo(value, 12);
    });
  }
});

test('there and back again is where one began', () => {
  for (const [dimension, { suffixes }] of Object.entries(DIMENSIONS)) {
    for (const suffix of Object.keys(suffixes)) {
      fc.assert(
        fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (value) => {
          expect(fromSi(dimension as Dimension, suffix, toSi(dimension as Dimension, suffix, value))).toBeCloseTo(
            value,
            8,
          );
        }),
      );
    }
  }
});

test('a unit of another dimension is refused', () => {
  expect(() => toSi('mass', 'mm', 1)).toThrow(RangeError);
});
