import { describe, expect, test } from 'vitest';
import { brierScore, claimBins } from '../../../src/statistics/signs/claim-score.ts';
import { baseClaims, signClaims } from '../../../src/statistics/signs/plain-claims.ts';

const cut = (season: string, answer: boolean, shown: boolean | null) => ({
  season,
  answer,
  signs: [shown],
  days_since_set: null,
  variety: null,
});

describe('the score', () => {
  test('is the mean squared distance', () => {
    // (0.3)² + (0.8)² + (0.5)² = 0.09 + 0.64 + 0.25 = 0.98, of three.
    const claims = [
      { chance: 0.7, came: true },
      { chance: 0.8, came: false },
      { chance: 0.5, came: true },
    ];
    expect(brierScore(claims)).toBeCloseTo(0.98 / 3, 12);
  });
  test('of a coin is a quarter, of nobody’s claims none', () => {
    expect(brierScore([true, false].map((came) => ({ chance: 0.5, came })))).toBe(0.25);
    expect(brierScore([])).toBeNull();
    expect(() => brierScore([{ chance: 1.1, came: true }])).toThrow(RangeError);
  });
});

test('bins count claims by what they said', () => {
  const claims = [0, 3, 4, 6, 7, 8, 8].map((of_ten, index) => ({ of_ten, came: index % 2 === 0 }));
  expect(claimBins(claims)).toEqual([
    { from: 0, to: 3, claims: 2, came: 1, said: 1.5 },
    { from: 4, to: 6, claims: 2, came: 1, said: 5 },
    { from: 7, to: 10, claims: 3, came: 2, said: 23 / 3 },
  ]);
  expect(claimBins([]).map(({ said }) => said)).toEqual([null, null, null]);
  expect(() => claimBins([{ of_ten: 7.5, came: true }])).toThrow(RangeError);
});

describe('who knows no model', () => {
  const fruits = [
    cut('a', true, true),
    cut('a', false, false),
    cut('b', true, true),
    cut('b', true, null),
    cut('b', false, true),
  ];
  test('claims the share of the other seasons', () => {
    // Of season b two of three: 2.5 / 4. Of season a one of two: 1.5 / 3.
    expect(baseClaims(fruits)).toEqual([0.625, 0.625, 0.5, 0.5, 0.5]);
    expect(() => baseClaims(fruits.slice(0, 2))).toThrow(RangeError);
  });
  test('or the share of those that looked alike in one sign', () => {
    // Shown in b: one of two ripe, and one fruit at 0.625: 1.625 / 3. Not shown in b: none, so 0.625.
    // Shown in a: one of one, and one fruit at 0.5: 1.5 / 2. Not looked for in a: none, so 0.5.
    expect(signClaims(fruits, 0)).toEqual([1.625 / 3, 0.625, 0.75, 0.5, 0.75]);
  });
});
