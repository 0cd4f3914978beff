import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diseaseProgress, type Look } from '../../src/agronomy/disease-progress.ts';
import { addDays, dayOf } from '../../src/day.ts';
import { CURVES } from '../published/disease-progress/printed.ts';

const START = dayOf(2024, 6, 24);
const looksOf = (days: readonly number[], severities: readonly number[]): Look[] =>
  days.map((day, place) => ({ looked_on: addDays(START, day), severity: severities[place] ?? Number.NaN }));

it.each(CURVES)('$source: $area', ({ days, severities, area }) => {
  expect(diseaseProgress(looksOf(days, severities))).toBe(area);
});

describe('by hand', () => {
  it('4 for ten days is 40, from 0 to 9 over 8 days is 36', () => {
    expect(diseaseProgress(looksOf([0, 10], [4, 4]))).toBe(40);
    expect(diseaseProgress(looksOf([0, 8], [0, 9]))).toBe(36);
  });
  it('looks as they come: 0 on day 0, 2 on day 5, 2 on day 6, 6 on day 12 are 5 + 2 + 24', () => {
    expect(diseaseProgress(looksOf([6, 12, 0, 5], [2, 6, 0, 2]))).toBe(31);
  });
  it('a look at nothing is a look', () => {
    expect(diseaseProgress(looksOf([0, 7, 14], [0, 0, 0]))).toBe(0);
  });
  it('days are days over the end of a month and a leap day', () => {
    const looks = [
      { looked_on: dayOf(2024, 2, 27), severity: 3 },
      { looked_on: dayOf(2024, 3, 2), severity: 3 },
    ];
    expect(diseaseProgress(looks)).toBe(12);
  });
  it('two looks of one day are one of their mean, whichever comes first', () => {
    // 0 to 4 over 4 days, 4 to 2 over 2.
    expect(diseaseProgress(looksOf([0, 4, 4, 6], [0, 3, 5, 2]))).toBe(14);
    expect(diseaseProgress(looksOf([0, 4, 4, 6], [0, 5, 3, 2]))).toBe(14);
  });
  it('one day is no curve', () => {
    expect(diseaseProgress([])).toBeNull();
    expect(diseaseProgress(looksOf([3], [5]))).toBeNull();
    expect(diseaseProgress(looksOf([3, 3], [5, 6]))).toBeNull();
  });
  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('a severity of %d is refused', (severity) => {
    expect(() => diseaseProgress(looksOf([0, 1], [1, severity]))).toThrow(`invalid severity: ${severity}`);
  });
});

describe('any curve', () => {
  const looks = fc
    .uniqueArray(fc.integer({ min: 0, max: 90 }), { minLength: 2, maxLength: 12 })
    .chain((days) =>
      fc
        .array(fc.integer({ min: 0, max: 9 }), { minLength: days.length, maxLength: days.length })
        .map((severities) => looksOf(days, severities)),
    );
  const SEEDED = { seed: 20250812, numRuns: 200 };

  it('is the same in any order and lies between its least and its most for the whole time', () => {
    fc.assert(
      fc.property(looks, (seen) => {
        const area = diseaseProgress(seen) ?? Number.NaN;
        expect(diseaseProgress(seen.toReversed())).toBe(area);
        const days = seen.map(({ looked_on }) => Date.parse(looked_on) / 86_400_000);
        const span = Math.max(...days) - Math.min(...days);
        const severities = seen.map(({ severity }) => severity);
        expect(area).toBeGreaterThanOrEqual(Math.min(...severities) * span);
        expect(area).toBeLessThanOrEqual(Math.max(...severities) * span);
      }),
      SEEDED,
    );
  });
  it('cut at one of its looks is the sum of its parts', () => {
    fc.assert(
      fc.property(looks, fc.nat(), (seen, pick) => {
        const cut = seen[pick % seen.length]?.looked_on ?? START;
        const [before, after] = [
          seen.filter(({ looked_on }) => looked_on <= cut),
          seen.filter(({ looked_on }) => looked_on >= cut),
        ];
        expect((diseaseProgress(before) ?? 0) + (diseaseProgress(after) ?? 0)).toBe(diseaseProgress(seen));
      }),
      SEEDED,
    );
  });
});
