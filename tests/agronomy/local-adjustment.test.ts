import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BothWays, localAdjustment } from '../../src/agronomy/local-adjustment.ts';
import { NORRIS } from '../published/regression/nist.ts';
import { expectDigits } from '../statistics/agreement.ts';

const pairsOf = (rough: readonly number[], full: (rough: number, index: number) => number): BothWays[] =>
  rough.map((rough_mm, index) => ({ rough_mm, full_mm: full(rough_mm, index) }));
const DAYS = Array.from({ length: 60 }, (_, index) => 1 + index / 10);

describe('the line from rough to full', () => {
  it('NIST Norris, its 36 pairs taken twice: the same least squares, to the digits it certifies', () => {
    const twice = [...NORRIS.x, ...NORRIS.x];
    const fit = localAdjustment(pairsOf(twice, (_, index) => NORRIS.y[index % NORRIS.y.length] ?? Number.NaN));
    expect(fit?.n).toBe(72);
    expectDigits(fit?.a, NORRIS.certified.intercept.estimate, 9);
    expectDigits(fit?.b, NORRIS.certified.slope.estimate, 12);
  });
  it('a line comes back as it was', () => {
    fc.assert(
      fc.property(fc.double({ min: -2, max: 2, noNaN: true }), fc.double({ min: 0.2, max: 2, noNaN: true }), (a, b) => {
        const fit = localAdjustment(pairsOf(DAYS, (rough_mm) => a + b * rough_mm));
        expect(fit?.a).toBeCloseTo(a, 9);
        expect(fit?.b).toBeCloseTo(b, 9);
      }),
      { seed: 20250812, numRuns: 200 },
    );
  });
  it('does not care for the order of the days, nor what all the days share', () => {
    const wobbly = pairsOf(DAYS, (rough_mm, index) => 0.9 * rough_mm + (index % 7) / 10);
    const fit = localAdjustment(wobbly);
    expect(localAdjustment([...wobbly].reverse())?.b).toBeCloseTo(fit?.b ?? Number.NaN, 12);
    const lifted = wobbly.map(({ rough_mm, full_mm }) => ({ rough_mm: rough_mm + 1e6, full_mm }));
    expect(localAdjustment(lifted)?.b).toBeCloseTo(fit?.b ?? Number.NaN, 6);
  });
  it('leaves nothing over: the misses sum to zero, and against the rough too', () => {
    const wobbly = pairsOf(DAYS, (rough_mm, index) => 0.9 * rough_mm + ((index * index) % 11) / 10);
    const { a, b } = localAdjustment(wobbly) ?? { a: Number.NaN, b: Number.NaN };
    const misses = wobbly.map(({ full_mm, rough_mm }) => full_mm - a - b * rough_mm);
    expect(misses.reduce((sum, miss) => sum + miss, 0)).toBeCloseTo(0, 9);
    expect(misses.reduce((sum, miss, index) => sum + miss * (DAYS[index] ?? Number.NaN), 0)).toBeCloseTo(0, 9);
  });
});

describe('no line', () => {
  it('under 60 days', () => {
    expect(localAdjustment([])).toBeNull();
    expect(localAdjustment(pairsOf(DAYS.slice(1), (rough_mm) => rough_mm))).toBeNull();
    expect(localAdjustment(pairsOf(DAYS, (rough_mm) => rough_mm))).toMatchObject({ b: 1, n: 60 });
  });
  it('where the rough ones are all alike, though their mean is not quite them', () => {
    expect(
      localAdjustment(
        pairsOf(
          DAYS.map(() => 4.1),
          (_, index) => index,
        ),
      ),
    ).toBeNull();
  });
});

describe('mistakes of the caller throw', () => {
  it.each(['full_mm', 'rough_mm'] as const)('%s', (name) => {
    const attempt = () => localAdjustment([{ full_mm: 1, rough_mm: 1, [name]: Number.NaN }]);
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
