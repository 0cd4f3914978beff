import { describe, expect, test } from 'vitest';
import { addDays, type Day, daysBetween } from '../../../src/day.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { type CropPlan, cropPlan } from '../../../src/ledger/water/crop-plan.ts';
import { spotWater } from '../../../src/ledger/water/spot-water.ts';
import type { ThirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import { cropYear } from '../../../src/ledger/year/crop-year.ts';
import {
  cropText,
  type Parts,
  planted,
  plantingOf,
  SOILS,
  seasonOf,
  stationOf,
  steadyThirst,
  told,
  wateredGarden,
} from './watered-garden.ts';

/** Five years in which every day asks for 5 mm. */
const STEADY = steadyThirst(
  5,
  [2021, 2022, 2023, 2024, 2025].flatMap((year) =>
    Array.from({ length: 365 }, (_, index) => ({
      date: addDays(`${year}-01-01` as Day, index),
      eto_mm: 5,
      how: 'measured' as const,
    })),
  ),
);
const SPOTS = ['S1', 'S2', 'S3']
  .map((id) => `  - {id: ${id}, kind: mound, area_m2: 10, soil: loam, bowl_m2: 2, canopy_m2: 10}\n`)
  .join('');
const PLANTINGS = `${planted('P1', 'S1')}${planted('P2', 'S2')}${planted('P3', 'S3')}`;
const female = (of: string, on: string): string => `- {seen_on: ${on}, planting: ${of}, what: first-female}\n`;

function pastOf(garden: Garden, slug: string) {
  const season = seasonOf(garden, slug);
  return season.plantings.flatMap((planting) => {
    const place = { station: stationOf(garden), thirst: STEADY, soils: SOILS, soaking_mm: 20 };
    const water = spotWater(place, season, season.ends_on, [planting], []);
    return water ? [{ season, water }] : [];
  });
}

function planOf(parts: Parts, today: string | null = '2025-10-31', thirst: ThirstRecord = STEADY): CropPlan | null {
  const garden = wateredGarden({ spots: SPOTS, plantings: PLANTINGS, weather: '2025-05-20,0,25,12\n', ...parts });
  const { crop } = told(plantingOf(garden, 'P1').variety);
  const past = garden.seasons.flatMap(({ slug }) => pastOf(garden, slug));
  return cropPlan(garden, cropYear(garden, today as Day | null, crop), past, thirst, SOILS);
}
const lengthsOf = (plan: CropPlan | null): number[] => Object.values(told(plan).growing.lengths).slice(0, 4);

describe('how long its stages last', () => {
  // 31, 36 and 41 days to the first female flower: 20 to 30 in each of them, the middle one is P1's.
  const flowering = female('P1', '2025-06-25') + female('P2', '2025-06-20') + female('P3', '2025-06-30');
  test('is taken from the middle one of the spots of the season that was planted last', () => {
    const plan = planOf({ season: { flowering } });
    expect(plan?.stages_from).toBe('records');
    // 36 days, of which 20 in 50 are the first stage: 14.4.
    expect(lengthsOf(plan)).toEqual([14, 22, 30, 30]);
  });
  test('of two the shorter, so that nothing is made up between them', () => {
    const plantings = `${planted('P1', 'S1')}${planted('P2', 'S2')}`;
    const two = female('P1', '2025-06-25') + female('P2', '2025-06-20');
    expect(lengthsOf(planOf({ plantings, season: { flowering: two } })).slice(0, 2)).toEqual([12, 19]);
  });
  test('seasons before that one do not count', () => {
    const files = {
      'seasons/2024/season.yaml': 'label: 2024\nstarts_on: 2024-04-01\nends_on: 2024-10-31\n',
      'seasons/2024/plantings.yaml': ['S1', 'S2', 'S3'].map((spot) => planted(`Q${spot}`, spot, '2024-05-20')).join(''),
      'seasons/2024/flowering.yaml': '- {seen_on: 2024-07-20, planting: QS1, what: first-female}\n',
      'seasons/2024/mulching.yaml': '- {laid_on: 2024-06-20, material: straw}\n',
    };
    const plan = planOf({ season: { flowering }, files });
    expect(lengthsOf(plan)).toEqual([14, 22, 30, 30]);
    expect(plan?.growing.mulch).toEqual({ kind: 'none' });
    expect(planOf({ files })?.stages_from).toBe('sources');
  });
  test('else the row nearest to its usual last picking, or to the end of the season', () => {
    expect(planOf({})).toMatchObject({ stages_from: 'sources' });
    expect(lengthsOf(planOf({}))).toEqual([20, 30, 30, 30]);
    const more =
      'ripe_days: {set_days_low: 30, set_days_high: 40, planted_days_low: 70, sources: [trade-practice]}\nseason: {days_low: 70, days_high: 85, sources: [trade-practice]}\n';
    expect(lengthsOf(planOf({ crop: cropText({}, { more }) }))).toEqual([10, 20, 20, 30]);
  });
});

describe('what lies on its ground', () => {
  const straw = (spots: string, on: string, cover = 6): string =>
    `- {laid_on: ${on}, spots: [${spots}], material: straw, cover_of_ten: ${cover}}\n`;
  const mulchOf = (mulching: string) => planOf({ season: { mulching } })?.growing.mulch;
  test('is what most of its spots had when their leaves were full', () => {
    expect(mulchOf(straw('S1, S3', '2025-06-10'))).toEqual({ kind: 'organic', cover: 0.6 });
    expect(mulchOf(straw('S3', '2025-06-10'))).toEqual({ kind: 'none' });
    expect(mulchOf(straw('S1', '2025-06-10', 3) + straw('S2', '2025-06-10', 5) + straw('S3', '2025-06-10', 9))).toEqual(
      {
        kind: 'organic',
        cover: 0.5,
      },
    );
  });
  // Leaves are full 50 days after 20 May, on 9 July.
  test('and not what came later', () => {
    expect(mulchOf(straw('S1, S2, S3', '2025-07-09'))).toMatchObject({ kind: 'organic' });
    expect(mulchOf(straw('S1, S2, S3', '2025-07-10'))).toEqual({ kind: 'none' });
  });
});

describe('the season that is planned', () => {
  test('is the next one once the last is over, planted on its usual day', () =>
    expect(planOf({})?.growing.planted).toBe('2026-05-20'));
  test('is the one that runs until then', () => expect(planOf({}, '2025-06-30')?.growing.planted).toBe('2025-05-20'));
  test('has the climate of its own months', () => {
    const seen: string[] = [];
    const climate: ThirstRecord['climate'] = (first, last) => {
      seen.push(`${first} ${last}`);
      return STEADY.climate(first, last);
    };
    planOf({}, '2025-10-31', { ...STEADY, climate });
    expect(seen).toEqual(['2026-05-20 2026-10-31']);
  });
  test('wants by its stages what its traits, ground and bowl ask for', () => {
    const plan = told(planOf({}));
    expect(plan.growing.ground).toMatchObject({ spots: 3, root_m2: 10, canopy_m2: 10, bowl_m2: 2, root_depth_m: 0.5 });
    expect(plan.stages.map(({ stage, first }) => `${stage} ${first}`)).toEqual([
      'initial 2026-05-20',
      'development 2026-06-09',
      'middle 2026-07-09',
      'late 2026-08-08',
    ]);
    // 35 mm a week: 35 (0.9 × 10 + 0.1 × 2).
    expect(plan.stages[2]?.needs[1]?.l_per_week).toBeCloseTo(322, 9);
    expect(daysBetween(plan.growing.planted, told(plan.stages.at(-1)).last)).toBe(109);
  });
});

describe('no plan', () => {
  test('without figures of water, a day of planting, or ground', () => {
    const bare = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
    expect(planOf({ crop: bare })).toBeNull();
    expect(planOf({ plantings: PLANTINGS.replaceAll('2025-05-20', '2025-05') })).toBeNull();
    expect(planOf({ spots: SPOTS.replaceAll('area_m2: 10, ', '') })).toBeNull();
    expect(planOf({}, null)).toBeNull();
  });
  test('with four years of weather it stands, but has no stages to print', () => {
    const days = STEADY.days.filter(({ date }) => date >= '2022-01-01');
    const plan = planOf({}, '2025-10-31', { ...STEADY, days });
    expect(plan?.stages).toEqual([]);
    expect(lengthsOf(plan)).toEqual([20, 30, 30, 30]);
  });
});
