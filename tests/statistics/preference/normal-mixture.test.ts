import { describe, expect, it } from 'vitest';
import { mixtureCdf, mixtureMean, mixtureQuantile } from '../../../src/statistics/preference/normal-mixture.ts';
import { NORMAL } from '../../published/preference/normal.ts';

describe('a mixture', () => {
  const two = [
    { weight: 0.25, mean: -1, sd: 0.5, skewness: 0.4 },
    { weight: 0.75, mean: 2, sd: 1.5, skewness: -0.3 },
  ];

  it('of one curve has its quantiles', () => {
    const one = [{ weight: 1, mean: 3, sd: 2, skewness: 0 }];
    for (const [p, z] of NORMAL.quantiles) expect(Math.abs(mixtureQuantile(one, p) - (3 + 2 * z))).toBeLessThan(1e-9);
  });

  it('has a mean, and quantiles that undo the chances', () => {
    expect(mixtureMean(two)).toBe(1.25);
    for (const p of [0.001, 0.05, 0.5, 0.95, 0.999])
      expect(Math.abs(mixtureCdf(two, mixtureQuantile(two, p)) - p)).toBeLessThan(1e-10);
  });
});
