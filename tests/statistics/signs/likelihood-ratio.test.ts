import { describe, expect, it, test } from 'vitest';
import {
  ratioBelow,
  type SignCounts,
  signCounts,
  signEvidence,
} from '../../../src/statistics/signs/likelihood-ratio.ts';
import oracle from '../../published/likelihood-ratios/oracle.json' with { type: 'json' };
import { SCOTT } from '../../published/likelihood-ratios/printed.ts';
import { expectPrinted } from '../agreement.ts';

const counts = (k1: number, n1: number, k2: number, n2: number): SignCounts => ({
  yes: { shown: k1, looked: n1 },
  no: { shown: k2, looked: n2 },
});

test.each(oracle.cases)(
  'R’s quadrature: $yes and $no at $level',
  ({ yes, no, level, ratio, low, high, points_to_yes }) => {
    const found = signEvidence({ yes, no }, level);
    expect(found.shown.ratio / ratio).toBeCloseTo(1, 5);
    if (low === 0) expect(found.shown.interval.low).toBe(0);
    else expect(found.shown.interval.low / low).toBeCloseTo(1, 5);
    expect(found.shown.interval.high / high).toBeCloseTo(1, 5);
    expect(found.points_to_yes).toBeCloseTo(points_to_yes, 6);
    expect(found.shown.interval.level).toBe(level);
  },
);

describe('a printed diagnostic test', () => {
  it('Simel’s interval of it, as printed', () => {
    for (const [{ shown: k1, looked: n1 }, { shown: k2, looked: n2 }, printed] of [
      [SCOTT.yes, SCOTT.no, SCOTT.positive],
      [{ shown: 74, looked: 744 }, { shown: 640, looked: 842 }, SCOTT.negative],
    ] as const) {
      const [ratio, se] = [k1 / n1 / (k2 / n2), Math.sqrt(1 / k1 - 1 / n1 + 1 / k2 - 1 / n2)];
      expectPrinted(ratio, printed.ratio);
      expectPrinted(ratio * Math.exp(-1.959964 * se), printed.low);
      expectPrinted(ratio * Math.exp(1.959964 * se), printed.high);
    }
  });
  it('ours lies within one case in the smallest cell of it', () => {
    const { shown, absent } = signEvidence(SCOTT, SCOTT.level);
    for (const [found, [k1, n1, k2, n2]] of [
      [shown, [670, 744, 202, 842]],
      [absent, [74, 744, 640, 842]],
    ] as const) {
      const [ratio, se] = [k1 / n1 / (k2 / n2), Math.sqrt(1 / k1 - 1 / n1 + 1 / k2 - 1 / n2)];
      for (const [value, simel] of [
        [found.ratio, ratio],
        [found.interval.low, ratio * Math.exp(-1.959964 * se)],
        [found.interval.high, ratio * Math.exp(1.959964 * se)],
      ] as const)
        expect(Math.abs(Math.log(value / simel))).toBeLessThan(1 / 74);
    }
  });
});

describe('closed forms', () => {
  it('one ripe fruit with the sign, one unripe without', () => {
    // ∫ (4/π) cos²φ (2/π)(φ - sin φ cos φ) dφ over 0 to π/2.
    expect(ratioBelow({ shown: 1, looked: 1 }, { shown: 0, looked: 1 }, 1)).toBeCloseTo(0.5 - 4 / Math.PI ** 2, 7);
  });
  it('the same counts: as likely above as below 1', () => {
    for (const [k, n] of [
      [0, 3],
      [2, 3],
      [9, 40],
    ] as const) {
      const found = signEvidence(counts(k, n, k, n), 0.9);
      expect(found.shown.ratio).toBeCloseTo(1, 6);
      expect(found.points_to_yes).toBeCloseTo(0.5, 7);
    }
  });
  it('the groups changed over turn the ratio upside down', () => {
    const [there, back] = [signEvidence(counts(8, 11, 3, 7), 0.9), signEvidence(counts(3, 7, 8, 11), 0.9)];
    expect(there.shown.ratio * back.shown.ratio).toBeCloseTo(1, 6);
    expect(there.shown.interval.low * back.shown.interval.high).toBeCloseTo(1, 6);
    expect(there.points_to_yes + back.points_to_yes).toBeCloseTo(1, 7);
  });
  it('not shown is the sign whose showing is not showing', () => {
    expect(signEvidence(counts(8, 11, 3, 7), 0.9).absent).toEqual(signEvidence(counts(3, 11, 4, 7), 0.9).shown);
  });
  it('one more ripe fruit with the sign never lowers the ratio', () => {
    for (let k = 0; k < 8; k++) {
      const [less, more] = [signEvidence(counts(k, 8, 3, 6), 0.9), signEvidence(counts(k + 1, 8, 3, 6), 0.9)];
      expect(more.shown.ratio).toBeGreaterThan(less.shown.ratio);
      expect(more.shown.interval.low).toBeGreaterThan(less.shown.interval.low);
      expect(more.points_to_yes).toBeGreaterThan(less.points_to_yes);
    }
  });
});

describe('90 % ranges over every outcome, weighed by its chance', () => {
  const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n, k - 1) * (n - k + 1)) / k);
  const chance = (k: number, n: number, p: number) => choose(n, k) * p ** k * (1 - p) ** (n - k);
  it.each([
    { ripe: 14, unripe: 6, shares: [0.85, 0.4] },
    { ripe: 14, unripe: 6, shares: [0.6, 0.6] },
    { ripe: 14, unripe: 6, shares: [0.9, 0.15] },
    { ripe: 8, unripe: 8, shares: [0.3, 0.1] },
  ])('$ripe ripe, $unripe unripe, shares $shares', ({ ripe, unripe, shares }) => {
    const [p = 0, q = 1] = shares;
    let held = 0;
    for (let k = 0; k <= ripe; k++)
      for (let m = 0; m <= unripe; m++) {
        const weight = chance(k, ripe, p) * chance(m, unripe, q);
        if (weight < 1e-5) continue;
        const { low, high } = signEvidence(counts(k, ripe, m, unripe), 0.9).shown.interval;
        if (low <= p / q && p / q <= high) held += weight;
      }
    expect(held).toBeGreaterThan(0.87);
    expect(held).toBeLessThan(0.97);
  });
});

test('counts by question: the unripe have no part in too late, the unlooked in neither', () => {
  const fruits = [
    { state: 'unripe', shown: true },
    { state: 'unripe', shown: false },
    { state: 'just-ripe', shown: true },
    { state: 'prime', shown: null },
    { state: 'prime', shown: false },
    { state: 'over', shown: true },
    { state: 'over', shown: null },
  ] as const;
  expect(signCounts(fruits, 'ripe-yet')).toEqual(counts(2, 3, 1, 2));
  expect(signCounts(fruits, 'too-late')).toEqual(counts(1, 1, 1, 2));
});

test.each([
  ['looked', () => signEvidence(counts(0, 0, 1, 2), 0.9)],
  ['looked', () => signEvidence(counts(1, 1.5, 1, 2), 0.9)],
  ['shown', () => signEvidence(counts(3, 2, 1, 2), 0.9)],
  ['level', () => signEvidence(counts(1, 2, 1, 2), 1)],
])('impossible %s are refused', (name, attempt) => {
  expect(attempt).toThrow(RangeError);
  expect(attempt).toThrow(`invalid ${name}:`);
});
