import { expect, test } from 'vitest';
import { correlation } from '../../src/statistics/correlation.ts';
import { ANSCOMBE } from '../published/regression/anscombe.ts';

test('the squared r of Anscombe’s four sets, as R prints it', () => {
  for (const { x, y, r } of ANSCOMBE) expect(correlation(x, y) ** 2).toBeCloseTo(Number(r.r_squared), 8);
});

test('whole lines, nothing that varies, and lists that do not match', () => {
  expect(correlation([1, 2, 3], [2, 4, 6])).toBeCloseTo(1, 12);
  expect(correlation([1, 2, 3], [3, 2, 1])).toBeCloseTo(-1, 12);
  expect(correlation([1, 2, 3], [5, 5, 5])).toBe(0);
  expect(() => correlation([1, 2], [1])).toThrow(RangeError);
});
