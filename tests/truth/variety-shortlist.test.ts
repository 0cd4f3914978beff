import { expect, test } from 'vitest';
import { simulatedVarietyValues, type VarietyPlan } from './simulated-variety-values.ts';
import type { JudgedList } from './variety-shortlist-judged.ts';
import { regretOf } from './variety-shortlist-regret.ts';
import { claimRows, regretMeans } from './variety-shortlist-told.ts';

const map = (worth: Readonly<Record<string, number>>): ReadonlyMap<string, number> => new Map(Object.entries(worth));

test('what a list falls short by, by hand', () => {
  const found = regretOf({
    listed: ['a', 'c'],
    able: ['a', 'b', 'c', 'd'],
    raw: map({ a: 1, b: 9, c: 2, d: 8 }),
    lasting: map({ a: 4, b: 3, c: 2, d: 1 }),
    next: map({ a: 1, b: 7, c: 3, d: 5 }),
  });
  // Known best are a and b: average 4, best 7. Ours a and c: 2 and 3. Raw b and d: 6 and 7. By lot: average 4; of the six
  // pairs three have b, two of the others d, the last c: (3 × 7 + 2 × 5 + 3) / 6.
  expect(found).toEqual({
    length: 2,
    ours: { average: 2, best: 4 },
    raw: { average: -2, best: 0 },
    lot: { average: 0, best: expect.closeTo(7 - 34 / 6, 12) },
  });
  const worth = map({ a: 1, b: 2 });
  const of = (listed: readonly string[]) =>
    regretOf({ listed, able: ['a', 'b'], raw: worth, lasting: worth, next: worth });
  expect([of([]), of(['a', 'b'])]).toEqual([null, null]);
});

const listOf = (told: Partial<JudgedList>): JudgedList => ({
  claims: [],
  differences: [],
  held_out: [],
  goes: [],
  regret: null,
  ...told,
});

test('claims by what was said and by seasons; four stand for more', () => {
  const claim = (said: number, holds: boolean, seasons: number, lasts = holds) => ({ said, holds, lasts, seasons });
  const rows = claimRows([
    listOf({ claims: [claim(16, true, 1, false), claim(16, false, 1), claim(15, true, 1)] }),
    listOf({ claims: [claim(19, true, 4), claim(19, true, 6), claim(18, false, 2)] }),
  ]);
  expect(rows).toEqual([
    { seasons: 1, said: 16, made: 2, came_true: 10, lasted: 0 },
    { seasons: 2, said: 18, made: 1, came_true: 0, lasted: 0 },
    { seasons: 4, said: 19, made: 2, came_true: 20, lasted: 20 },
  ]);
});

test('regrets are averaged garden by garden, and set against the raw list in pairs', () => {
  const regret = (ours: number, raw: number, lot: number) => {
    const short = (own: number) => ({ average: own, best: 2 * own });
    return listOf({ regret: { length: 3, ours: short(ours), raw: short(raw), lot: short(lot) } });
  };
  const found = regretMeans([regret(1, 2, 4), regret(3, 2, 6), listOf({}), regret(2, 4, 2)]);
  expect(found).toMatchObject({ lists: 3, ours: { average: 2, best: 4 }, lot: { average: 4 } });
  // Behind by -1, 1 and -2: mean -2/3, standard deviation √(7/3), over √3.
  expect(found.behind_raw.average.mean).toBeCloseTo(-2 / 3, 12);
  expect(found.behind_raw.average.se).toBeCloseTo(Math.sqrt(7 / 3 / 3), 12);
  expect(() => regretMeans([listOf({})])).toThrow(RangeError);
});

const PLAN: VarietyPlan = {
  varieties: 40,
  seasons: 3,
  stands: 0.5,
  traits: ['brix', 'sound_kg_per_plant'],
  sd: { variety: 2, variety_season: 0.5, mound: 0.1, day: 0.1 },
};

test('simulated gardens spread as they are told to, and their truths are of one variety', () => {
  const { values, varieties, truths, seasons } = simulatedVarietyValues(PLAN, 3);
  const sd = (own: readonly number[]): number => {
    const mean = own.reduce((sum, one) => sum + one, 0) / own.length;
    return Math.sqrt(own.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (own.length - 1));
  };
  expect(truths).toHaveLength(80);
  // Within four standard errors, s/√(2n).
  expect(Math.abs(sd(truths.map(({ lasting }) => lasting)) - 2)).toBeLessThan((4 * 2) / Math.sqrt(160));
  const summers = truths.flatMap(({ lasting, in_season, next }) => [...in_season, next].map((one) => one - lasting));
  expect(Math.abs(sd(summers) - 0.5)).toBeLessThan((4 * 0.5) / Math.sqrt(640));
  // The yardstick stands in every season, the others in about half of them, never in none.
  const stood = (variety: string): number =>
    new Set(values.filter((one) => one.variety === variety).map(({ season }) => season)).size;
  expect(stood(varieties[0] ?? '')).toBe(3);
  expect(Math.min(...varieties.map(stood))).toBe(1);
  const share = varieties.slice(1).reduce((sum, one) => sum + stood(one), 0) / (39 * seasons.length);
  expect(share).toBeGreaterThan(0.4);
  expect(share).toBeLessThan(0.7);
  // A season's values less its truth differ between seasons by the summer alone, and within it by mounds and fruits.
  const left = seasons.map((season, at) =>
    values
      .filter((one) => one.season === season && one.trait === 'sound_kg_per_plant')
      .map(
        (one) =>
          one.value -
          (truths.find((own) => own.variety === one.variety && own.trait === one.trait)?.in_season[at] ?? 0),
      ),
  );
  for (const own of left) expect(Math.abs(sd(own) - 1)).toBeLessThan(4 / Math.sqrt(2 * own.length));
  expect(simulatedVarietyValues(PLAN, 3)).toEqual(simulatedVarietyValues(PLAN, 3));
});
