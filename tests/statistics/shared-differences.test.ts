import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tQuantile } from '../../src/statistics/distributions.ts';
import { randomStream } from '../../src/statistics/random-stream.ts';
import { type MoundValue, type SharedDifferences, sharedDifferences } from '../../src/statistics/shared-differences.ts';
import oracle from '../published/shared-differences/oracle.json' with { type: 'json' };
import { expectDigits, fitted } from './agreement.ts';

function compared(rows: readonly MoundValue[], yardstick = 'A'): SharedDifferences {
  const found = sharedDifferences(rows, yardstick);
  if ('cannot' in found) throw new Error(`refused: ${found.cannot.code}`);
  return found;
}

const of = (found: SharedDifferences, variety: string) => {
  const own = found.varieties.find((one) => one.variety === variety);
  if (!own) throw new Error(`not compared: ${variety}`);
  return own;
};

/** Mounds numbered within season and variety: { season: { variety: values } }. */
const mounds = (table: Record<string, Record<string, number[]>>): MoundValue[] =>
  Object.entries(table).flatMap(([season, varieties]) =>
    Object.entries(varieties).flatMap(([variety, values]) =>
      values.map((value, index) => ({ season, variety, mound: `${index + 1}`, value })),
    ),
  );

describe('three varieties in three seasons, reckoned by hand', () => {
  // Squares around cell means: 2019 A 2 (of 4, 6), B 8 (of 5, 9), C none; 2020 A 0.5 (of 7, 8), B none; 2021 A none, C 2 (of 1, 3).
  const rows = mounds({
    2019: { A: [4, 6], B: [5, 9], C: [3] },
    2020: { A: [7, 8], B: [10] },
    2021: { A: [2], C: [1, 3], D: [9] },
    2022: { B: [50], D: [40] },
  });
  const found = compared(rows);
  it('spread: 12.5 on 4 degrees of freedom', () => {
    // The mean of all 14 mounds is 157 / 14.
    expect(found.spread).toEqual({
      sd: Math.sqrt(12.5 / 4),
      df: 4,
      cv_of_100: expect.closeTo((100 * Math.sqrt(3.125) * 14) / 157, 10),
    });
    expect([found.comparisons, found.never_together]).toEqual([3, []]);
  });
  it('B: 2 in 2019 and 2.5 in 2020, the season without the yardstick left out', () => {
    const b = of(found, 'B');
    expect(b.seasons).toEqual([
      { season: '2019', difference: 2, mounds: 2, yardstick_mounds: 2 },
      { season: '2020', difference: 2.5, mounds: 1, yardstick_mounds: 2 },
    ]);
    expect(b.difference).toBe(2.25);
    expectDigits(b.sed, (Math.sqrt(3.125) * Math.sqrt(1 / 2 + 1 / 2 + 1 + 1 / 2)) / 2, 12);
    // 2 and 2.5 lie 0.25 off their mean: sd √0.125, over √2.
    expect(b.over_seasons).toEqual({ se: expect.closeTo(0.25, 12), df: 1 });
  });
  it('C: -2 in 2019 and 0 in 2021', () => {
    const c = of(found, 'C');
    expect(c.difference).toBe(-1);
    expectDigits(c.sed, (Math.sqrt(3.125) * Math.sqrt(1 + 1 / 2 + 1 / 2 + 1)) / 2, 12);
    expect(c.over_seasons).toEqual({ se: expect.closeTo(1, 12), df: 1 });
  });
  it('B with one mound left out: from 0.25 without its 9 to 3.25 without A’s 6', () => {
    // Left out in turn: A4 1.75, A6 2.75, B5 3.25, B9 1.25, and in 2020 A7 2, A8 2.5, and B10, which leaves 2019 alone at 2.
    const { without_mound: lines } = of(found, 'B');
    expect(lines?.smallest).toMatchObject({ season: '2019', variety: 'B', mound: '2', difference: 1.25, df: 3 });
    expect(lines?.largest).toMatchObject({ season: '2019', variety: 'B', mound: '1', difference: 3.25, df: 3 });
    // Without B's 9 the squares are 4.5 on 3.
    expectDigits(lines?.smallest.sed, (Math.sqrt(4.5 / 3) * Math.sqrt(1 + 1 / 2 + 1 + 1 / 2)) / 2, 12);
    expect(lines?.ends_it).toBe(0);
  });
  it('B with one season left out: 2 or 2.5', () => {
    const { without_season: lines } = of(found, 'B');
    expect(lines?.smallest).toMatchObject({ season: '2020', variety: null, mound: null, difference: 2, df: 3 });
    expectDigits(lines?.smallest.sed, Math.sqrt(12 / 3), 12);
    expect(lines?.largest).toMatchObject({ season: '2019', difference: 2.5, df: 2 });
    expectDigits(lines?.largest.sed, Math.sqrt(2.5 / 2) * Math.sqrt(1 + 1 / 2), 12);
  });
  it('D: one mound against one in one season, which nothing can be left out of', () => {
    const d = of(found, 'D');
    expect([d.difference, d.over_seasons, d.without_mound, d.without_season]).toEqual([
      7,
      { cannot: { code: 'one-season' } },
      null,
      null,
    ]);
    expectDigits(d.sed, Math.sqrt(3.125 * 2), 12);
  });
});

describe(`against ${oracle.made_with.R}, emmeans ${oracle.made_with.emmeans}`, () => {
  it.each(Object.entries(oracle.trials))(
    '%s: contrasts of cell means by lm, everything left out in turn',
    (_name, trial) => {
      const found = compared(trial.rows);
      expect(found.spread).toEqual({
        sd: expect.closeTo(trial.spread.sd, 10),
        df: trial.spread.df,
        cv_of_100: expect.closeTo(trial.spread.cv_of_100, 9),
      });
      expect(found.varieties.map((one) => one.variety)).toEqual(trial.varieties.map((one) => one.variety));
      for (const expected of trial.varieties) {
        const own = of(found, expected.variety);
        expect(own.seasons.map((one) => one.season)).toEqual(expected.seasons);
        expectDigits(own.difference, expected.difference, 9);
        expectDigits(own.sed, expected.sed, 9);
        if (expected.over_seasons === null) expect(own.over_seasons).toEqual({ cannot: { code: 'one-season' } });
        else {
          const over = own.over_seasons as { se: number; df: number };
          expect(over.df).toBe(expected.over_seasons.df);
          expectDigits(over.se, expected.over_seasons.se, 9);
        }
        for (const which of ['without_mound', 'without_season'] as const) {
          const [ours, theirs] = [own[which], expected[which]];
          if (theirs === null) {
            expect(ours).toBeNull();
            continue;
          }
          expect(ours?.ends_it).toBe(theirs.ends_it);
          for (const end of ['smallest', 'largest'] as const) {
            expectDigits(ours?.[end].difference, theirs[end].difference, 9);
            expect(ours?.[end].df).toBe(theirs[end].df);
            if (theirs[end].sed === null) expect(ours?.[end].sed).toBeNull();
            else expectDigits(ours?.[end].sed, theirs[end].sed, 9);
          }
        }
      }
    },
  );

  it('one season, unequal mounds: the one-way model throughout', () => {
    const { rows, emmeans_additive } = oracle.trials.one_season;
    const found = compared(rows);
    expect(emmeans_additive).toHaveLength(2);
    for (const { variety, difference, se, df } of emmeans_additive) {
      expectDigits(of(found, variety).difference, difference, 9);
      expectDigits(of(found, variety).sed, se, 9);
      expect(found.spread).toMatchObject({ df });
    }
  });

  it.each(['no_gaps', 'balanced'] as const)('%s: the model with variety x season throughout', (name) => {
    const { rows, emmeans_interaction } = oracle.trials[name];
    const found = compared(rows);
    expect(emmeans_interaction).toHaveLength(2);
    for (const { variety, difference, se, df } of emmeans_interaction ?? []) {
      expectDigits(of(found, variety).difference, difference, 9);
      expectDigits(of(found, variety).sed, se, 9);
      expect(found.spread).toMatchObject({ df });
    }
  });

  it('the additive model: the same estimates when balanced, others with gaps, and its own residual either way', () => {
    for (const [name, same] of [
      ['balanced', true],
      ['gaps', false],
      ['no_gaps', false],
    ] as const) {
      const { rows, emmeans_additive } = oracle.trials[name];
      const found = compared(rows);
      const additive = fitted(rows.map((one) => ({ treatment: one.variety, block: one.season, value: one.value })));
      for (const { variety, difference, se, df } of emmeans_additive) {
        expectDigits(additive.difference(variety, 'A').estimate, difference, 9);
        expectDigits(additive.difference(variety, 'A').se, se, 9);
        expect(found.spread).not.toMatchObject({ df });
        // D never stood beside A: only the additive model compares it, by way of B and C.
        const own = found.varieties.find((one) => one.variety === variety);
        expect(own === undefined).toBe(variety === 'D');
        if (own && same) expectDigits(own.difference, difference, 9);
        if (own && !same) expect(Math.abs(own.difference - difference)).toBeGreaterThan(0.02);
      }
    }
    expect(compared(oracle.trials.gaps.rows).never_together).toEqual(['D']);
  });
});

describe('whatever the trial', () => {
  const row = fc.record({
    season: fc.constantFrom('1', '2', '3'),
    variety: fc.constantFrom('A', 'B', 'C'),
    mound: fc.constantFrom('1', '2', '3'),
    value: fc.integer({ min: 0, max: 150 }).map((tenths) => tenths / 10),
  });
  const rows = fc.array(row, { minLength: 4, maxLength: 24 });
  const seeded = { seed: 20260719, numRuns: 300 };

  it('the order of the values makes no bit differ', () => {
    const shuffled = rows.chain((all) =>
      fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
    );
    fc.assert(
      fc.property(shuffled, ([all, other]) => {
        expect(sharedDifferences(other, 'A')).toEqual(sharedDifferences(all, 'A'));
      }),
      seeded,
    );
  });

  it('a season good or bad for all changes no difference; swapping yardstick and variety turns the sign', () => {
    let checked = 0;
    fc.assert(
      fc.property(rows, (all) => {
        const found = sharedDifferences(all, 'A');
        if ('cannot' in found) return;
        const lifted = compared(all.map((one) => (one.season === '2' ? { ...one, value: one.value + 40 } : one)));
        for (const { variety, difference, sed } of found.varieties) {
          checked += 1;
          expect(of(lifted, variety).difference).toBeCloseTo(difference, 9);
          expect(of(compared(all, variety), 'A').difference).toBeCloseTo(-difference, 9);
          if (sed !== null) {
            expect(of(lifted, variety).sed).toBeCloseTo(sed, 9);
            expect(of(compared(all, variety), 'A').sed).toBeCloseTo(sed, 9);
          }
        }
      }),
      seeded,
    );
    expect(checked).toBeGreaterThan(100);
  });

  it('without jumps: leaving one out never leaves the range of lines, and the whole lies within the seasons’ lines', () => {
    fc.assert(
      fc.property(rows, (all) => {
        const found = sharedDifferences(all, 'A');
        if ('cannot' in found) return;
        for (const { difference, without_season: lines } of found.varieties) {
          if (lines === null) continue;
          expect(lines.smallest.difference).toBeLessThanOrEqual(difference + 1e-9);
          expect(lines.largest.difference).toBeGreaterThanOrEqual(difference - 1e-9);
        }
      }),
      seeded,
    );
  });
});

describe('90 % intervals over 4 seasons of 3 mounds', () => {
  const TRIALS = 1000;
  const SLACK = 3 * Math.sqrt((0.9 * 0.1) / TRIALS);
  /** How often the interval from each standard error holds the long-run difference, which is 1. */
  function coverage(seasonToSeason: number): { sed: number; over_seasons: number } {
    const random = randomStream(20260719);
    // Standard normal numbers by the method of Box and Muller (1958).
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const held = { sed: 0, over_seasons: 0 };
    for (let trial = 0; trial < TRIALS; trial++) {
      const rows = ['1', '2', '3', '4'].flatMap((season) =>
        ['A', 'B'].flatMap((variety) => {
          const level = (variety === 'B' ? 1 : 0) + seasonToSeason * normal();
          return ['1', '2', '3'].map((mound) => ({ season, variety, mound, value: level + normal() }));
        }),
      );
      const found = compared(rows);
      const { difference, sed, over_seasons: over } = of(found, 'B');
      if (sed === null || 'cannot' in found.spread || 'cannot' in over) throw new Error('no interval');
      if (Math.abs(difference - 1) <= tQuantile(0.95, found.spread.df) * sed) held.sed += 1 / TRIALS;
      if (Math.abs(difference - 1) <= tQuantile(0.95, over.df) * over.se) held.over_seasons += 1 / TRIALS;
    }
    return held;
  }
  it('both hold 9 in 10 when varieties differ alike in every season', () => {
    const held = coverage(0);
    expect(Math.abs(held.sed - 0.9)).toBeLessThan(SLACK);
    expect(Math.abs(held.over_seasons - 0.9)).toBeLessThan(SLACK);
  });
  it('only the one over seasons does when each season suits another variety', () => {
    const held = coverage(1);
    expect(held.sed).toBeLessThan(0.7);
    expect(Math.abs(held.over_seasons - 0.9)).toBeLessThan(SLACK);
  });
});

describe('edges', () => {
  it('several values of one mound are one mound: their mean', () => {
    const fruits = mounds({ 1: { A: [4, 6], B: [8, 9] } });
    const split = [
      ...fruits.slice(0, 3),
      { season: '1', variety: 'B', mound: '2', value: 8 },
      { season: '1', variety: 'B', mound: '2', value: 10 },
    ];
    expect(compared(split)).toEqual(compared(fruits));
  });
  it('one mound a cell: no spread to judge by, but the seasons differ', () => {
    const found = compared(mounds({ 1: { A: [4], B: [5] }, 2: { A: [4], B: [8] } }));
    expect(found.spread).toEqual({ cannot: { code: 'no-repeats' } });
    expect([of(found, 'B').difference, of(found, 'B').sed]).toEqual([2.5, null]);
    expect(of(found, 'B').over_seasons).toEqual({ se: expect.closeTo(1.5, 12), df: 1 });
    expect(of(found, 'B').without_mound?.smallest).toMatchObject({ difference: 1, sed: null, df: null });
  });
  it('mounds that agree, and seasons that agree, are no certainty', () => {
    const found = compared(mounds({ 1: { A: [0.1, 0.1], B: [0.3, 0.3] }, 2: { A: [0.5, 0.5], B: [0.7, 0.7] } }));
    expect(found.spread).toEqual({ cannot: { code: 'no-spread', df: 4 } });
    expect(of(found, 'B').over_seasons).toEqual({ cannot: { code: 'seasons-agree' } });
  });
  it('a mean not above zero has no coefficient of variation', () => {
    expect(compared(mounds({ 1: { A: [-4, -6], B: [1, 2] } })).spread).toMatchObject({ cv_of_100: null });
  });
  it('a variety whose only mound goes leaves nothing, and says so', () => {
    const lines = of(compared(mounds({ 1: { A: [4, 6], B: [9] } })), 'B').without_mound;
    expect([lines?.smallest.difference, lines?.largest.difference, lines?.ends_it]).toEqual([3, 5, 1]);
  });
  it('nothing, no yardstick, no number', () => {
    expect(sharedDifferences([], 'A')).toEqual({ cannot: { code: 'no-values' } });
    expect(sharedDifferences(mounds({ 1: { B: [1] } }), 'A')).toEqual({ cannot: { code: 'no-yardstick' } });
    expect(compared(mounds({ 1: { A: [1, 2] } }))).toMatchObject({ comparisons: 0, varieties: [] });
    expect(() => sharedDifferences(mounds({ 1: { A: [Number.NaN] } }), 'A')).toThrow(RangeError);
  });
});
