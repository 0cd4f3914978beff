import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { givings } from '../../../src/ledger/water/given.ts';
import { type SpotAccount, spotAccount } from '../../../src/ledger/water/spot-account.ts';
import { type SpotWater, spotWater } from '../../../src/ledger/water/spot-water.ts';
import type { ThirstDay, ThirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import {
  cropText,
  dayRows,
  type Parts,
  SOILS,
  seasonOf,
  stationOf,
  steadyThirst,
  told,
  wateredGarden,
} from './watered-garden.ts';

/** Roots of 40 cm hold 40 mm over 10 m²; plastic stops all evaporation, and leaves take 5 mm a day: see spot-water.test.ts. */
const TIGHT: Parts = {
  spots: '  - {id: S1, kind: mound, area_m2: 10, soil: loam, soil_depth_cm: 40, canopy_m2: 10}\n',
  crop: cropText(
    { kcb_initial: 1, kcb_middle: 1, kcb_end: 1 },
    {
      rows: [{ initial: 3, development: 4, middle: 5, late: 6 }],
      plastic:
        '  plastic: {evaporation_cut_low: 1, evaporation_cut_high: 1, transpiration_cut_low: 0, transpiration_cut_high: 0}\n',
    },
  ),
};
const PLASTIC = '- {laid_on: 2025-05-01, material: plastic, cover_of_ten: 10}\n';

interface Told {
  readonly rain?: readonly (number | '')[];
  readonly waterings?: string;
  readonly settings?: string;
  readonly last?: string;
  readonly thirst?: ThirstRecord;
  readonly soils?: typeof SOILS;
}

function accountOf({
  rain = [],
  waterings = '',
  settings = '',
  last = '2025-05-27',
  thirst = steadyThirst(5),
  soils = SOILS,
}: Told): { account: SpotAccount; water: SpotWater } {
  const garden = wateredGarden({
    ...TIGHT,
    settings,
    season: { waterings, mulching: PLASTIC },
    weather: dayRows('2025-05-20', Math.max(rain.length, 1), (index) => `${rain[index] ?? 0},25,12`),
  });
  const season = seasonOf(garden);
  const water = told(
    spotWater(
      { station: stationOf(garden), thirst, soils, soaking_mm: 20 },
      season,
      last as Day,
      season.plantings,
      givings(garden, season),
    ),
  );
  return { account: spotAccount(garden, water), water };
}
const watered = (on: string, litres: number): string => `- {watered_on: ${on}, spots: [S1], volume_l: ${litres}}\n`;

describe('sums', () => {
  const { account } = accountOf({
    rain: [0, 0, 12, 0, 0, 0, 0, 3],
    waterings: `${watered('2025-05-22', 40)}${watered('2025-05-26', 60)}${watered('2025-05-26', 10)}${watered('2025-05-19', 500)}${watered('2025-05-28', 500)}`,
  });
  test('days, litres and days with water, from the planting to the last day', () =>
    expect(account).toMatchObject({
      spot: 'S1',
      crop: 'globe',
      days: 8,
      waterings: 2,
      given_l: 110,
      wanted_l: expect.closeTo(400, 9),
      // 15 mm on 10 m².
      rain_l: 150,
    }));
  test('stage by stage, as far as they began, and in all the whole', () => {
    expect(account.stages.map(({ stage, days, given_l, rain_l }) => [stage, days, given_l, rain_l])).toEqual([
      ['initial', 3, 40, 120],
      ['development', 4, 70, 0],
      ['middle', 1, 0, 30],
    ]);
    const sum = (of: (stage: (typeof account.stages)[number]) => number): number =>
      account.stages.reduce((total, stage) => total + of(stage), 0);
    expect(sum(({ days }) => days)).toBe(account.days);
    expect(sum(({ given_l }) => given_l)).toBe(account.given_l);
    expect(sum(({ wanted_l }) => wanted_l)).toBeCloseTo(account.wanted_l, 9);
    expect(sum(({ rain_l }) => rain_l)).toBe(account.rain_l);
  });
  test('the records under it, each once, and none from outside its days', () => {
    const { account: spread } = accountOf({ waterings: '- {watered_on: 2025-05-21..2025-05-24, volume_l: 40}\n' });
    expect(spread.keys).toHaveLength(2);
    expect(account.keys).toHaveLength(4);
    expect(account.keys.some((key) => key.includes('2025-05-19') || key.includes('2025-05-28'))).toBe(false);
  });
});

describe('short days', () => {
  // Without water the roots are 25 mm down after the fifth day, and Ks falls under 1 from the sixth on.
  test('are those on which the plants could not drink their fill', () => {
    expect(accountOf({}).account.short_days).toBe(3);
    expect(accountOf({ last: '2025-05-24' }).account.short_days).toBe(0);
    expect(accountOf({ waterings: watered('2025-05-25', 250) }).account.short_days).toBe(0);
  });
  // Four millimetres on the fourth day: 5, 10, 15, 16, 21, and Ks is (40 - 21) / 20 = 0.95.
  test('however little they lacked', () =>
    expect(accountOf({ rain: [0, 0, 0, 4], last: '2025-05-25' }).account.short_days).toBe(1));
  test('a day of rain too little to count leaves it short', () =>
    expect(accountOf({ rain: [0, 0, 0, 0, 0, 0.9] }).account.short_days).toBe(3));
  test('are not known without a balance, nor is the swing', () =>
    expect(accountOf({ soils: [] }).account).toMatchObject({ short_days: null, swing_l: null, days: 8 }));
});

describe('the longest gap', () => {
  test('runs from one watering or soaking to the next', () => {
    expect(accountOf({}).account.longest_gap_days).toBe(8);
    expect(accountOf({ waterings: watered('2025-05-23', 10) }).account.longest_gap_days).toBe(4);
    expect(accountOf({ rain: [0, 20] }).account.longest_gap_days).toBe(6);
    expect(accountOf({ rain: [0, 19.9] }).account.longest_gap_days).toBe(8);
    expect(accountOf({ waterings: watered('2025-05-20..2025-05-27', 80) }).account.longest_gap_days).toBe(0);
  });
  test('a soaking is what the garden calls one', () =>
    expect(accountOf({ rain: [0, 15], settings: 'thresholds: {soaking_day_mm: 15}\n' }).account.longest_gap_days).toBe(
      6,
    ));
  test('a watering of nothing is none', () =>
    expect(accountOf({ waterings: watered('2025-05-23', 0) }).account).toMatchObject({
      longest_gap_days: 8,
      waterings: 0,
    }));
});

describe('the swing', () => {
  // Ends of the days: 5, 10, 15, 20, 25, 28.75 …; over three days at most 15 mm, on 10 m² 150 litres.
  test('is the largest change within three days, in litres', () =>
    expect(accountOf({}).account.swing_l).toBeCloseTo(150, 9));
  // 5, 10, 15, 20, then 200 litres: 20 − 20 + 5 = 5. Largest: 20 to 5.
  test('counts what came back as well as what went', () =>
    expect(accountOf({ waterings: watered('2025-05-24', 400) }).account.swing_l).toBeCloseTo(150, 9));
  test('a soaking of dry ground makes it large', () => {
    // 33.67 mm down, after which 38 mm leave 5.
    const { account } = accountOf({ rain: [0, 0, 0, 0, 0, 0, 0, 0, 38], last: '2025-05-28' });
    expect(account.swing_l).toBeCloseTo((33.671875 - 5) * 10, 9);
  });
  test('four days apart is too far', () => {
    const { account } = accountOf({ last: '2025-05-24' });
    expect(account.swing_l).toBeCloseTo(150, 9);
  });
});

describe('how sure', () => {
  test('waterings in words and days without a word on the rain are counted', () => {
    const waterings = `- {watered_on: 2025-05-21, spots: [S1], roughly: some}\n- {watered_on: 2025-05-22..2025-05-24, spots: [S1], roughly: little}\n${watered('2025-05-25', 10)}`;
    const { account } = accountOf({ waterings, rain: [0, '', 0, 0, 2] });
    expect(account.in_words).toBe(2);
    expect(account.rain_untold_days).toBe(4);
  });
  test('days of the air’s thirst by how they were told', () => {
    const how = (day: Day): ThirstDay['how'] =>
      day < '2025-05-22' ? 'measured' : day < '2025-05-25' ? 'estimated' : 'filled';
    const thirst = { ...steadyThirst(5), on: (day: Day) => ({ eto_mm: 5, how: how(day) }) };
    expect(accountOf({ thirst }).account.thirst).toEqual({ measured: 2, estimated: 3, filled: 3 });
  });
  test('a spot’s plantings are among its records', () =>
    expect(accountOf({}).account.keys).toEqual([expect.stringContaining('P1')]));
});
