import { describe, expect, it } from 'vitest';
import { cutAtZero, tInterval } from '../../src/statistics/interval.ts';
import { expectPrinted } from './agreement.ts';

describe('tInterval', () => {
  it('gives back the t table: estimate 0, standard error 1', () => {
    // t 0.95 on 5 degrees of freedom is 2.015 in the NIST/SEMATECH e-Handbook, 1.3.6.7.2 (from memory).
    const interval = tInterval(0, 1, 5, 0.9);
    expectPrinted(interval.high, '2.015');
    expectPrinted(interval.low, '-2.015');
    expect(interval.level).toBe(0.9);
  });
  it('moves with the estimate and widens with the standard error', () => {
    const unit = tInterval(0, 1, 5, 0.9);
    const other = tInterval(10, 2, 5, 0.9);
    expect(other.low).toBeCloseTo(10 + 2 * unit.low, 12);
    expect(other.high).toBeCloseTo(10 + 2 * unit.high, 12);
  });
  it.each([
    ['estimate', () => tInterval(Number.NaN, 1, 5, 0.9)],
    ['se', () => tInterval(1, 0, 5, 0.9)],
    ['se', () => tInterval(1, Number.POSITIVE_INFINITY, 5, 0.9)],
    ['df', () => tInterval(1, 1, 0, 0.9)],
    ['level', () => tInterval(1, 1, 5, 1)],
    ['level', () => tInterval(1, 1, 5, 90)],
  ])('impossible %s is refused', (name, attempt) => {
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});

it('cutAtZero takes off what lies below zero and nothing else', () => {
  expect(cutAtZero({ low: -1, high: 2, level: 0.9 })).toEqual({ low: 0, high: 2, level: 0.9 });
  expect(cutAtZero({ low: 1, high: 2, level: 0.9 })).toEqual({ low: 1, high: 2, level: 0.9 });
  expect(cutAtZero({ low: -2, high: -1, level: 0.9 })).toEqual({ low: 0, high: 0, level: 0.9 });
});
