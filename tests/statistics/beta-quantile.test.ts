import { expect, test } from 'vitest';
import { betaQuantile } from '../../src/statistics/beta-quantile.ts';
import grouped from '../published/grouped-shares/oracle.json' with { type: 'json' };

test.each(grouped.jeffreys)(
  'R’s qbeta, Jeffreys’ interval: $hits of $units at $level',
  ({ hits, units, level, low, high }) => {
    const [a, b] = [hits + 0.5, units - hits + 0.5];
    expect(betaQuantile((1 - level) / 2, a, b)).toBeCloseTo(low, 10);
    expect(betaQuantile((1 + level) / 2, a, b)).toBeCloseTo(high, 10);
  },
);

test('closed forms: arcsine, power, the evenly spread', () => {
  for (const p of [0, 0.01, 0.3, 0.5, 0.9, 1]) {
    expect(betaQuantile(p, 0.5, 0.5)).toBeCloseTo(Math.sin((Math.PI * p) / 2) ** 2, 12);
    expect(betaQuantile(p, 3, 1)).toBeCloseTo(p ** (1 / 3), 10);
    expect(betaQuantile(p, 1, 1)).toBeCloseTo(p, 12);
    expect(betaQuantile(p, 0.05, 1)).toBeCloseTo(p ** 20, 10);
  }
});

test('impossible ones are refused', () => {
  expect(() => betaQuantile(1.1, 1, 1)).toThrow('invalid p: 1.1');
  expect(() => betaQuantile(Number.NaN, 1, 1)).toThrow(RangeError);
  expect(() => betaQuantile(0.5, 0, 1)).toThrow('invalid shape: 0');
});
