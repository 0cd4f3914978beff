import { describe, expect, test } from 'vitest';
import type { Mulch } from '../../../src/agronomy/mulched-coefficient.ts';
import { addDays, type Day } from '../../../src/day.ts';
import { type Growing, weekNeeds } from '../../../src/ledger/water/week-need.ts';
import { HALF_STRAW } from '../../published/fao-56/crop-coefficients.ts';
import { steadyThirst, TRAITS, told } from './watered-garden.ts';

const STEADY = { wind_m_s: 2, rh_min_pct: 45 };
const GROUND: Growing['ground'] = {
  spots: 1,
  canopy_m2: 6,
  canopy_from: 'told',
  root_m2: 4,
  root_depth_m: 0.5,
  bowl_m2: 1,
  available_mm: { low: 40, middle: 60, high: 80 },
  soil: null,
};
const GROWING: Growing = {
  traits: { ...TRAITS, stages: [], plastic: null, sources: [], entered: {} } as unknown as Growing['traits'],
  lengths: { initial_days: 14, development_days: 21, middle_days: 28, late_days: 14 },
  planted: '2026-05-01' as Day,
  climate: STEADY,
  ground: GROUND,
  mulch: { kind: 'none' },
};

/** Five years of days that ask for the same, so that cool, usual and hot weeks are one: 35 mm a week. */
const THIRST = steadyThirst(
  5,
  [2021, 2022, 2023, 2024, 2025].flatMap((year) =>
    Array.from({ length: 365 }, (_, index) => ({
      date: addDays(`${year}-01-01` as Day, index),
      eto_mm: 5,
      how: 'measured' as const,
    })),
  ),
);
const needsOf = (change: Partial<Growing> = {}) => weekNeeds({ ...GROWING, ...change }, THIRST);
const litres = (change: Partial<Growing> = {}): (number | undefined)[] =>
  needsOf(change).map(({ needs }) => needs[0]?.l_per_week);
const near = (values: readonly number[]): unknown[] => values.map((value) => expect.closeTo(value, 9));

/**
 * By hand, 35 (Kcb · 6 + (Kc − Kcb) · 1) litres a week, Kcb 0.15, 0.9, 0.6 and Kc 0.5, 1, 0.8:
 * first stage 0.15 and 0.35; growing, half way, 0.525 and 0.225; full 0.9 and 0.1; last, half way, 0.75 and 0.15.
 */
const BY_HAND = [43.75, 118.125, 192.5, 162.75];

describe('litres a week', () => {
  test('by stage: what the leaves drink on their ground, and wet ground loses on the bowl', () => {
    expect(litres()).toEqual(near(BY_HAND));
    expect(needsOf().map(({ stage }) => stage)).toEqual(['initial', 'development', 'middle', 'late']);
  });
  test('weather that never changes asks for the same in cool, usual and hot weeks', () => {
    for (const { needs, weeks } of needsOf()) {
      expect(weeks).toMatchObject({ cool_mm: 35, usual_mm: 35, hot_mm: 35, years: 5 });
      expect(needs.map(({ kind }) => kind)).toEqual(['cool', 'usual', 'hot']);
      expect(new Set(needs.map(({ l_per_week }) => l_per_week)).size).toBe(1);
    }
  });
  // FAO-56, chapter 10: half cover takes a quarter off what the soil loses, nothing off what plants drink.
  test('straw over half the ground takes a quarter off the soil’s part', () => {
    const mulch: Mulch = { kind: 'organic', cover: HALF_STRAW.cover };
    const kept = 1 - HALF_STRAW.cut;
    const want = [
      [0.15, 0.35],
      [0.525, 0.225],
      [0.9, 0.1],
      [0.75, 0.15],
    ].map(([leaves = 0, soil = 0]) => 35 * (6 * leaves + soil * kept));
    expect(litres({ mulch })).toEqual(near(want));
  });
  test('plastic cuts both, the plants’ part as it does their coefficient', () => {
    const mulch: Mulch = {
      kind: 'plastic',
      cover: 1,
      evaporation_cut: 1,
      transpiration_cut: 0.1,
      kc_initial: 0,
      kc_cut: 0,
    };
    expect(litres({ mulch })).toEqual(near([0.135, 0.4725, 0.81, 0.675].map((kcb) => 35 * 6 * kcb)));
  });
  test('a bowl nobody measured is 0.35 of the ground of its roots', () =>
    expect(litres({ ground: { ...GROUND, bowl_m2: null } })[0]).toBeCloseTo(35 * (0.15 * 6 + 0.35 * 1.4), 9));
  test('where the basal coefficient is the larger the soil takes nothing, and never gives', () => {
    const traits = { ...GROWING.traits, kc_middle: 0.8 };
    expect(litres({ traits })[2]).toBeCloseTo(35 * 6 * 0.9, 9);
  });
  test('in windier, drier air the full stages rise as FAO’s Eq. 62 and 70 have it, the first does not', () => {
    // 0.04 (3 − 2) − 0.004 (30 − 45) = 0.1, times (0.4 / 3)^0.3.
    const more = 0.1 * (0.4 / 3) ** 0.3;
    const found = litres({ climate: { wind_m_s: 3, rh_min_pct: 30 } });
    expect(found).toEqual(
      near([
        43.75,
        35 * (6 * (0.525 + more / 2) + 0.225),
        35 * (6 * (0.9 + more) + 0.1),
        35 * (6 * (0.75 + more) + 0.15),
      ]),
    );
  });
});

describe('days the ground lasts', () => {
  // Full stage: 0.9 × 5 = 4.5 mm a day, p 0.5 + 0.04 × 0.5 = 0.52. On the bowl 0.52 × 60 × 1 m² = 31.2 litres, 27.5 a day.
  test('the bowl alone, for soils that hold little, middling and much', () =>
    expect(needsOf()[2]?.needs[1]?.bowl_days).toEqual({
      low: expect.closeTo(20.8 / 27.5, 10),
      middle: expect.closeTo(31.2 / 27.5, 10),
      high: expect.closeTo(41.6 / 27.5, 10),
    }));
  test('all the ground of its roots holds four times as much', () =>
    expect(needsOf()[2]?.needs[1]?.ground_days?.middle).toBeCloseTo((4 * 31.2) / 27.5, 10));
  test('are not known without the soil’s figures', () => {
    const found = needsOf({ ground: { ...GROUND, available_mm: null } });
    expect(found[2]?.needs[1]).toMatchObject({ bowl_days: null, ground_days: null });
    expect(found[2]?.needs[1]?.l_per_week).toBeCloseTo(192.5, 9);
  });
  test('nor where nothing is drunk', () => {
    const traits = { ...GROWING.traits, kc_initial: 0, kcb_initial: 0 };
    expect(needsOf({ traits })[0]?.needs[1]).toMatchObject({ l_per_week: 0, bowl_days: null });
  });
});

describe('stages', () => {
  test('follow each other from the day of planting, without a day between', () =>
    expect(needsOf().map(({ first, last }) => `${first} ${last}`)).toEqual([
      '2026-05-01 2026-05-14',
      '2026-05-15 2026-06-04',
      '2026-06-05 2026-07-02',
      '2026-07-03 2026-07-16',
    ]));
  test('one of no days is passed over', () => {
    const lengths = { initial_days: 0, development_days: 21, middle_days: 28, late_days: 0 };
    expect(needsOf({ lengths }).map(({ stage, first }) => `${stage} ${first}`)).toEqual([
      'development 2026-05-01',
      'middle 2026-05-22',
    ]);
  });
  test('one whose weeks were read in four years only is left out, and the others stand', () => {
    const days = THIRST.days.filter(({ date }) => !(date >= '2023-06-05' && date <= '2023-07-02'));
    expect(weekNeeds(GROWING, { ...THIRST, days }).map(({ stage }) => stage)).toEqual([
      'initial',
      'development',
      'late',
    ]);
    const [first] = weekNeeds(GROWING, { ...THIRST, days: days.filter(({ date }) => date >= '2022-01-01') });
    expect(first).toBeUndefined();
  });
  test('a hotter week asks for more, and its ground lasts less long', () => {
    const days = THIRST.days.map((day) => ({ ...day, eto_mm: Number(day.date.slice(3, 4)) + 2 }));
    const needs = told(weekNeeds(GROWING, { ...THIRST, days })[2]).needs;
    // 3 to 7 mm a day: nearest ranks 3, 5 and 7.
    expect(needs.map(({ l_per_week }) => l_per_week)).toEqual(near([3, 5, 7].map((mm) => (192.5 * mm) / 5)));
    expect(told(needs[2]?.bowl_days).middle).toBeLessThan(told(needs[0]?.bowl_days).middle);
  });
});
