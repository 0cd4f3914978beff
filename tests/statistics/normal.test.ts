import { describe, expect, it } from 'vitest';
import { normalCdf, normalDensity } from '../../src/statistics/normal.ts';
import { NORMAL } from '../published/preference/normal.ts';
import { expectDigits, expectPrinted } from './agreement.ts';

describe('normalCdf', () => {
  it.each(NORMAL.cdf)('at %d is %s as printed', (z, printed) => {
    expectPrinted(normalCdf(z), printed);
    expectDigits(1 - normalCdf(-z), Number(printed), 14);
  });

  it.each(NORMAL.far_tails)('keeps its digits far out, at %d', (z, tail) => {
    expectDigits(normalCdf(-z), tail, 12);
  });
});

it('normalDensity is the slope of normalCdf', () => {
  for (const z of [-2, -0.3, 0, 1.1]) {
    const slope = (normalCdf(z + 1e-5) - normalCdf(z - 1e-5)) / 2e-5;
    expect(Math.abs(slope - normalDensity(z))).toBeLessThan(1e-9);
  }
});
