import { describe, expect, test } from 'vitest';
import { departure, squareDeparture } from './departure.ts';
import { gardensOf } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import { writtenFruits } from './written.ts';

const RIGHT = settingNamed('3 seasons in blocks');
const UNLIKE = settingNamed('skewed sugar, unlike picking days');

/** Nothing moves sugar but the day and the meter: records alone can then tell what a day does. */
function onlyDays(setting: SeasonSetting): SeasonSetting {
  const flat = <T extends { brix: number }>(level: T): T => ({ ...level, brix: 0 });
  const { levels, sugar } = setting;
  const { variety, season, variety_by_season, block, mound, fruit } = levels;
  return {
    ...setting,
    levels: {
      ...levels,
      variety: flat(variety),
      season: flat(season),
      variety_by_season: flat(variety_by_season),
      block: flat(block),
      mound: flat(mound),
      fruit: flat(fruit),
    },
    sugar: { ...sugar, rise_brix: 0, fall_brix: 0, dilution_brix_per_mm: 0 },
  };
}

/** Products of all pairs of different values: their sum, and how many. */
function pairs(values: readonly number[]): { sum: number; count: number } {
  const sum = values.reduce((total, value) => total + value, 0);
  const squares = values.reduce((total, value) => total + value ** 2, 0);
  return { sum: sum ** 2 - squares, count: values.length * (values.length - 1) };
}

/** Average products of two fruits' strays of one season: picked on the same day, and on different days. */
function products(seasons: readonly ReadonlyMap<string, readonly number[]>[]): { same: number; different: number } {
  const total = { same: 0, sameCount: 0, different: 0, differentCount: 0 };
  for (const days of seasons) {
    const each = [...days.values()].map(pairs);
    const all = pairs([...days.values()].flat());
    const same = each.reduce((sum, one) => sum + one.sum, 0);
    const count = each.reduce((sum, one) => sum + one.count, 0);
    total.same += same;
    total.sameCount += count;
    total.different += all.sum - same;
    total.differentCount += all.count - count;
  }
  return { same: total.same / total.sameCount, different: total.different / total.differentCount };
}

function grouped(strays: readonly (readonly [string, number])[]): Map<string, number[]> {
  const days = new Map<string, number[]>();
  for (const [day, stray] of strays) days.set(day, [...(days.get(day) ?? []), stray]);
  return days;
}

describe.each([
  [RIGHT, 0.4],
  [UNLIKE, 0.7],
] as const)('$name', (setting, sd) => {
  const gardens = gardensOf(setting, 25);

  test(`picking days stray by ${sd} °Brix, on average not at all`, () => {
    const effects = gardens.flatMap(({ truth }) =>
      truth.seasons.flatMap(({ picking_days }) => picking_days.map(({ effect_brix }) => effect_brix)),
    );
    expect(effects.length).toBeGreaterThan(1000);
    expect(Math.abs(departure(effects, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(effects, sd))).toBeLessThan(4);
    expect(gardens.every(({ truth }) => truth.day_sd_brix === sd)).toBe(true);
  });

  test('every fruit picked on a day has the effect of that day, and no day is missing or told twice', () => {
    for (const { truth } of gardens.slice(0, 10))
      for (const { fruits, picking_days } of truth.seasons) {
        const effects = new Map(picking_days.map(({ date, effect_brix }) => [date, effect_brix]));
        const picks = fruits.flatMap(({ pick }) => pick ?? []);
        expect(picks.map(({ day_effect_brix }) => day_effect_brix)).toEqual(
          picks.map(({ picked_on }) => effects.get(picked_on)),
        );
        expect(picking_days.map(({ date }) => date)).toEqual([...new Set(picks.map((one) => one.picked_on))].sort());
        expect(new Set(effects.values()).size).toBe(picking_days.length);
      }
  });

  // Two fruits of one day share their day's effect and nothing else, so their strays have the covariance sd²; two of
  // different days share nothing. One value a garden, so the gardens' own spread gives the standard error.
  test('two fruits of one day are alike by the variance of days, two of different days not at all', () => {
    const found = gardens.map(({ texts, truth }) =>
      products(
        truth.seasons.map(({ slug, fruits }) => {
          const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
          return grouped(
            writtenFruits(texts, slug).flatMap(({ id, pick, cut }) => {
              const fruit = known.get(id);
              if (!fruit?.pick || !pick?.picked_on || !cut?.brix_centre || fruit.pick.brix <= 1) return [];
              const { ripeness_brix, dilution_brix } = fruit.pick;
              const stray = Number(cut.brix_centre) - fruit.traits.brix - ripeness_brix - dilution_brix;
              return [[pick.picked_on, stray] as const];
            }),
          );
        }),
      ),
    );
    expect(
      Math.abs(
        departure(
          found.map(({ same }) => same),
          sd ** 2,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          found.map(({ different }) => different),
          0,
        ),
      ),
    ).toBeLessThan(4);
  });

  test('so the records say by themselves where nothing else moves sugar', () => {
    const found = gardensOf(onlyDays(setting), 25).map(({ texts, truth }) =>
      products(
        truth.seasons.map(({ slug }) =>
          grouped(
            writtenFruits(texts, slug).flatMap(({ pick, cut }) =>
              pick?.picked_on && cut?.brix_centre ? [[pick.picked_on, Number(cut.brix_centre) - 10.5] as const] : [],
            ),
          ),
        ),
      ),
    );
    expect(
      Math.abs(
        departure(
          found.map(({ same }) => same),
          sd ** 2,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          found.map(({ different }) => different),
          0,
        ),
      ),
    ).toBeLessThan(4);
  });
});
