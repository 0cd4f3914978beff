import { describe, expect, it } from 'vitest';
import { tQuantile, tTwoSidedP } from '../../src/statistics/distributions.ts';
import { rangeQuantile, rangeUpperTail } from '../../src/statistics/studentised-range.ts';
import oracle from '../published/studentised-range/oracle.json' with { type: 'json' };
import { Q_95, Q_99 } from '../published/studentised-range/printed.ts';
import { expectPrinted } from './agreement.ts';

describe('critical values as printed', () => {
  it.each(Q_95)('5 %% points on %i degrees of freedom', (df, printed) => {
    for (const [index, text] of printed.entries()) expectPrinted(rangeQuantile(0.95, index + 2, df), text);
  });
  it.each(Q_99)('1 %% points on %i degrees of freedom', (df, printed) => {
    for (const [index, text] of printed.entries()) expectPrinted(rangeQuantile(0.99, index + 2, df), text);
  });
});

/** What src/statistics/studentised-range.ts promises. */
const within = (df: number): number => (df >= 9 ? 1e-8 : df >= 4.5 ? 1e-6 : df >= 3 ? 1e-5 : 2e-4);

it(`tails against direct quadrature by ${oracle.made_with.R}`, () => {
  expect(oracle.tails.length).toBe(150);
  for (const { q, k, df, upper } of oracle.tails) {
    expect(Math.abs(rangeUpperTail(q, k, df) - upper), `${q} ${k} ${df}`).toBeLessThan(within(df));
  }
});

it('two values: the range is √2 times |t|', () => {
  for (const df of [3, 4.5, 9, 27, 120]) {
    for (const t of [0.4, 1.3, 2.6, 4.1]) {
      expect(Math.abs(rangeUpperTail(Math.SQRT2 * t, 2, df) - tTwoSidedP(t, df))).toBeLessThan(within(df));
    }
    const off = rangeQuantile(0.9, 2, df) - Math.SQRT2 * tQuantile(0.95, df);
    expect(Math.abs(off)).toBeLessThan(10 * within(df));
  }
});

it('ends and refusals', () => {
  expect(rangeUpperTail(0, 3, 9)).toBe(1);
  for (const [name, attempt] of [
    ['q', () => rangeUpperTail(-1, 3, 9)],
    ['q', () => rangeUpperTail(Number.NaN, 3, 9)],
    ['k', () => rangeUpperTail(2, 1, 9)],
    ['k', () => rangeUpperTail(2, 2.5, 9)],
    ['df', () => rangeUpperTail(2, 3, 1.9)],
    ['df', () => rangeQuantile(0.9, 3, 1)],
    ['p', () => rangeQuantile(1, 3, 9)],
    ['p', () => rangeQuantile(0, 3, 9)],
  ] as const) {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  }
});
