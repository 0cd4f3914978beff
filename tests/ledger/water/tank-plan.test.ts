import { describe, expect, test } from 'vitest';
import { type Day, daysBetween } from '../../../src/day.ts';
import type { PlannedCrop } from '../../../src/ledger/water/plan-wants.ts';
import type { TankFacts } from '../../../src/ledger/water/tank-facts.ts';
import { type PlanStart, type TankPlan, tankPlan } from '../../../src/ledger/water/tank-plan.ts';
import type { ThirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import { PLANNED } from './planned-crop.ts';
import { dayRows, stationOf, steadyThirst, told, wateredGarden } from './watered-garden.ts';

/** Ten litres a millimetre of rain. */
const FACTS: TankFacts = {
  tank: { holds_l: 1000, dead_l: 0 },
  shape: null,
  count: 1,
  roof: { footprint_m2: 10, runoff_share: 1, first_flush_l: 0 },
  roof_facts: null,
  flow_l_min: null,
};
const START: PlanStart = {
  first: '2026-06-01' as Day,
  last: '2026-06-20' as Day,
  start_l: 300,
  start_from: 'full',
};
const FIVE = [2021, 2022, 2023, 2024, 2025];

interface Asked {
  /** Rain of each day of June, by year. */
  readonly rain?: (year: number, day: number) => number | '';
  readonly years?: readonly number[];
  readonly facts?: TankFacts;
  readonly crops?: readonly PlannedCrop[];
  readonly start?: Partial<PlanStart>;
  readonly thirst?: ThirstRecord;
}

function planOf({
  rain = () => 0,
  years = FIVE,
  facts = FACTS,
  crops = [PLANNED],
  start = {},
  thirst = steadyThirst(5),
}: Asked = {}): TankPlan | null {
  const weather = years
    .map((year) => dayRows(`${year}-06-01`, 30, (index) => `${rain(year, index + 1)},25,12`))
    .join('');
  const garden = wateredGarden({ weather });
  return tankPlan(facts, stationOf(garden), thirst, 20, crops, { ...START, ...start });
}
const dryDays = (plan: TankPlan | null): (number | null)[] => told(plan).replay.years.map(({ dry_day }) => dry_day);

describe('weather that never changes', () => {
  const plan = told(planOf());
  test('300 litres last from the sixth day to the eleventh, and the twelfth goes short', () => {
    expect(plan.replay).toEqual({
      years: FIVE.map((year) => ({ label: `${year}`, dry_day: 11 })),
      dry: 5,
      of: 5,
    });
  });
  test('with a fifth more wanted, 60 a day, they last a day less', () =>
    expect(plan.thirstier.years.map(({ dry_day }) => dry_day)).toEqual([10, 10, 10, 10, 10]));
  test('330 litres are six days of 50 and five of 60: a tenth more would not show', () => {
    const more = told(planOf({ start: { start_l: 330 } }));
    expect(dryDays(more)).toEqual([11, 11, 11, 11, 11]);
    expect(more.thirstier.years.map(({ dry_day }) => dry_day)).toEqual([10, 10, 10, 10, 10]);
  });
  test('twenty days want fifteen times 50, which is 262.5 a week', () =>
    expect(plan.wanted_l_week).toBeCloseTo(262.5, 9));
  test('the level stands until the sixth day, and falls by 50', () => {
    const levels = [300, 300, 300, 300, 300, 250, 200, 150, 100, 50, 0];
    expect(plan.band).toHaveLength(20);
    for (const [index, litres] of levels.entries()) {
      const same = expect.closeTo(litres, 9);
      expect(plan.band[index]).toEqual({ lowest_l: same, middle_l: same, highest_l: same });
    }
  });
  // Its weeks want 100, 350 and, in six days, 300; there are 300. With 190 a week less the first wants nothing, the
  // second 160 and the last 300 − 6/7 × 190: 297 in all. With 185 less it would be 306.
  test('giving up 190 litres a week would see it through', () =>
    expect(plan.afford).toMatchObject({ less_l_week: 190, dry: 0, of: 5, wanted_l_week: expect.closeTo(262.5, 9) }));
  test('it carries its days and its start', () =>
    expect(plan).toMatchObject({ first: '2026-06-01', last: '2026-06-20', start_l: 300, start_from: 'full' }));
});

describe('past years', () => {
  test('rain fills the tank and is drunk first, each year its own', () => {
    // 2022: 20 mm on the 9th are 200 litres and fill the ground: 5 down that evening, wanted again from the 14th. By
    // then 300 − 4 × 50 + 200 = 300 are there, six days of it, to the 19th.
    const plan = planOf({ rain: (year, day) => (year === 2022 && day === 9 ? 20 : 0) });
    expect(dryDays(plan)).toEqual([11, 19, 11, 11, 11]);
    expect(told(plan).band[8]?.highest_l).toBeCloseTo(300, 9);
    expect(told(plan).band[8]?.lowest_l).toBeCloseTo(100, 9);
  });
  test('four are too few, and one read on fewer than nineteen days of twenty does not count', () => {
    expect(planOf({ years: FIVE.slice(1) })).toBeNull();
    const holed = (count: number) => (year: number, day: number) => (year === 2023 && day <= count ? '' : 0);
    expect(planOf({ rain: holed(1) })?.replay.of).toBe(5);
    expect(planOf({ rain: holed(2) })).toBeNull();
    expect(planOf({ rain: holed(2), years: [2020, ...FIVE] })?.replay.years.map(({ label }) => label)).toEqual([
      '2020',
      '2021',
      '2022',
      '2024',
      '2025',
    ]);
  });
  test('a year with a day whose thirst nobody can tell is left out', () => {
    const on: ThirstRecord['on'] = (day) => (day === '2023-06-10' ? null : steadyThirst(5).on(day));
    expect(planOf({ thirst: { ...steadyThirst(5), on } })).toBeNull();
    expect(planOf({ thirst: { ...steadyThirst(5), on }, years: [2020, ...FIVE] })?.replay.of).toBe(5);
  });
  test('a year asks by its own thirst', () => {
    const on: ThirstRecord['on'] = (day) => ({ eto_mm: day < '2022-01-01' ? 2.5 : 5, how: 'measured' });
    // 2.5 mm a day: p is 0.5 + 0.1, but the line stays at 20 mm: from the tenth day 25 litres, twelve days of them.
    expect(dryDays(planOf({ thirst: { ...steadyThirst(5), on } }))).toEqual([null, 11, 11, 11, 11]);
  });
});

describe('crops', () => {
  test('their wants add up, by spots, each from its own day', () => {
    const other = { ...PLANNED, spots: 2, starts_at: -4 };
    const plan = told(planOf({ crops: [PLANNED, other], start: { start_l: 1000 } }));
    // 15 days of 50, and of the two planted on the sixth day 10 of 100: 1750 in 20 days.
    expect(plan.wanted_l_week).toBeCloseTo((1750 * 7) / 20, 9);
    // 5 × 50 to the tenth day, 150 a day after: 750 more are 5 days, to the fifteenth.
    expect(dryDays(plan)).toEqual([15, 15, 15, 15, 15]);
  });
  test('water below the tap is no water', () =>
    expect(dryDays(planOf({ facts: { ...FACTS, tank: { holds_l: 1000, dead_l: 100 } } }))).toEqual([9, 9, 9, 9, 9]));
});

describe('no plan', () => {
  test('without a measured roof, a crop, or a week to come', () => {
    expect(planOf({ facts: { ...FACTS, roof: null } })).toBeNull();
    expect(planOf({ crops: [] })).toBeNull();
    expect(planOf({ start: { last: '2026-06-07' as Day } })).toBeNull();
    expect(planOf({ start: { last: '2026-06-08' as Day } })).not.toBeNull();
    expect(daysBetween(START.first, '2026-06-08' as Day)).toBe(7);
  });
  test('with one crop on a soil nobody knows', () => {
    const ground = { ...PLANNED.water.ground, available_mm: null };
    const blank = { ...PLANNED, water: { ...PLANNED.water, ground } };
    expect(planOf({ crops: [PLANNED, blank] })).toBeNull();
  });
});
