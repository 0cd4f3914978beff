import { expect, test } from 'vitest';
import type { LastSeason } from '../../../content/next/last-season.ts';
import type { MissingRecord } from '../../../content/next/missing-record.ts';
import type { SameGround } from '../../../content/next/same-ground.ts';
import type { VarietyPlan } from '../../../content/next/variety-plan.ts';
import type { WhenLine } from '../../../src/book/when-line.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { parseDay } from '../../../src/day.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

interface Model {
  readonly last: LastSeason | null;
  readonly best: MissingRecord | null;
  readonly others: readonly MissingRecord[];
  readonly plan: VarietyPlan;
  readonly ground: SameGround | null;
  readonly again_crops: readonly string[];
  readonly sow: readonly WhenLine[];
}

const reference = loadReference('data/reference');
const SOWING =
  'sowing: {soil_best_low_c: 20, soil_best_high_c: 30, pot_days_low: 21, pot_days_high: 28, plant_out_soil_c: 16, sources: [trade-practice]}\n';
const crop = (id: string, traits = ''): string =>
  `id: ${id}\nnames: {en: ${id}}\nplurals: {en: ${id}s}\nslip: none\nfruit_on_ground: yes\n${traits}`;
const season = (year: number) => ({
  [`seasons/${year}/season.yaml`]: `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`,
});
const planting = (id: string, spot: string, variety: string, year: number): string =>
  `- {id: ${id}, spot: ${spot}, variety: ${variety}, planted_on: ${year}-05-20, plants_set: 2}\n`;

const BARE = {
  'garden.yaml':
    'name: T\nedition: community\nunits: metric\npaper: A4\nlocale: en-GB\nweather: {station: post, read: evening}\nspots: [{id: S10, kind: mound}, {id: S2, kind: mound}, {id: S1, kind: mound}]\n',
  'weather/post.csv': 'date,tmin_c\n2019-01-01,3\n',
  'crops/globe.yaml': crop('globe', SOWING),
  'crops/bell.yaml': crop('bell'),
  'varieties.yaml':
    '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown, yardstick: yes}\n- {id: cloud, name: Cloud, crop: bell, seed: unknown}\n- {id: dew, name: Dew, crop: globe, seed: unknown}\n',
};
const TWO_SEASONS = {
  ...BARE,
  ...season(2024),
  ...season(2025),
  'seasons/2024/plantings.yaml':
    planting('A1', 'S1', 'amber', 2024) + planting('A2', 'S2', 'cloud', 2024) + planting('A3', 'S10', 'birch', 2024),
  'seasons/2025/plantings.yaml':
    planting('B1', 'S1', 'birch', 2025) + planting('B2', 'S2', 'amber', 2025) + planting('B3', 'S10', 'cloud', 2025),
};

function modelOf(files: Readonly<Record<string, string>>, today: string | null = null): Model {
  const { garden, problems } = linkTexts(files);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  const { pages } = bookOf({ reference }, garden, today === null ? null : parseDay(today));
  const page = pages.find(({ path }) => path === 'next/');
  if (!page) throw new Error('there is no page of next year');
  return page.model as Model;
}

const recordsOf = ({ best, others }: Model) => [...(best ? [best] : []), ...others].map(({ record }) => record);

test('before the first season every record is missing, a harvest first', () => {
  const model = modelOf(BARE);
  expect(recordsOf(model)).toEqual([
    'harvest',
    'set-days',
    'rain',
    'looked-cuts',
    'tagged-flowers',
    'germination',
    'feeding',
    'waterings',
    'scouting',
  ]);
  expect(model.last).toBeNull();
  expect(model.ground).toBeNull();
  expect(model.plan.untried).toEqual(['Amber', 'Birch', 'Cloud', 'Dew']);
});

test('each record, once kept in the last season, is missing no more', () => {
  const kept: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    harvest: { 'seasons/2025/pickings.yaml': '- {planting: B1, picked_on: 2025-08-12, count: 2}\n' },
    'set-days': {
      'seasons/2025/fruits.yaml': '- {id: F1, planting: B1, fate: growing, set: {set_on: 2025-07-01}}\n',
    },
    rain: { 'weather/post.csv': 'date,rain_mm\n2025-05-10,2\n' },
    'tagged-flowers': {
      'seasons/2025/flowering.yaml': '- {seen_on: 2025-07-01, planting: B1, what: tagged, flowers: 3}\n',
    },
    germination: {
      'lots.yaml':
        '- {id: L, variety: amber, from: bought, tests: [{tested_on: 2025-03-01, seeds: 10, sprouted: 8}]}\n',
    },
    feeding: { 'seasons/2025/feeding.yaml': '- {given_on: 2025-05-01, material: compost, barrows: 2}\n' },
    waterings: { 'seasons/2025/waterings.yaml': '- {watered_on: 2025-07-01, cans_each: 2}\n' },
    scouting: { 'seasons/2025/scouting.yaml': '- {looked_on: 2025-07-01, found: none}\n' },
    'looked-cuts': {
      'seasons/2025/fruits.yaml':
        '- {id: F1, planting: B1, fate: picked, pick: {picked_on: 2025-08-12}, cut: {cut_on: 2025-08-12, state: prime}}\n',
      'seasons/2025/visits.yaml': '- {id: V1, visited_on: 2025-08-11, fruits: [{fruit: F1, call: ripe}]}\n',
    },
  };
  const before = recordsOf(modelOf(TWO_SEASONS));
  expect(before).toHaveLength(9);
  for (const [record, files] of Object.entries(kept)) {
    const after = recordsOf(modelOf({ ...TWO_SEASONS, ...files }));
    const gone = before.filter((one) => !after.includes(one));
    // A picked fruit is a harvest too.
    expect(gone, record).toEqual(record === 'looked-cuts' ? ['harvest', 'looked-cuts'] : [record]);
  }
});

test('rain of an earlier season, words for it, and a cut that nobody looked over are no record of the last', () => {
  const weather = 'date,rain_mm,rain\n2024-06-01,2,\n2025-05-10,,some\n';
  expect(recordsOf(modelOf({ ...TWO_SEASONS, 'weather/post.csv': weather }))).toContain('rain');
  const fruits =
    '- {id: F1, planting: B1, fate: picked, pick: {picked_on: 2025-08-12}, cut: {cut_on: 2025-08-12, state: prime}}\n- {id: F2, planting: B1, fate: growing}\n';
  const visits = '- {id: V1, visited_on: 2025-08-11, fruits: [{fruit: F2, call: ripe}]}\n';
  expect(
    recordsOf(modelOf({ ...TWO_SEASONS, 'seasons/2025/fruits.yaml': fruits, 'seasons/2025/visits.yaml': visits })),
  ).toContain('looked-cuts');
});

test('the same crop in a spot two seasons running, whatever its variety; a spot of another crop is not', () => {
  const { ground, again_crops } = modelOf(TWO_SEASONS);
  // S1: Amber, then Birch, both globes. S2: a bell, then a globe. S10: a globe, then a bell.
  expect(ground?.spots).toEqual([
    { spot: 'S1', last: ['Birch'], before: ['Amber'], again: 'globes' },
    { spot: 'S2', last: ['Amber'], before: ['Cloud'], again: null },
    { spot: 'S10', last: ['Cloud'], before: ['Birch'], again: null },
  ]);
  expect(ground?.count).toMatchObject({ id: 'next.2025.spots_again', value: 1, unit: 'spots' });
  expect(again_crops).toEqual(['globes']);
});

test('once grown, known, never tried; the yardstick by itself', () => {
  const other = { ...TWO_SEASONS, 'seasons/2024/plantings.yaml': planting('A1', 'S1', 'amber', 2024) };
  expect(modelOf(other).plan).toEqual({
    known: ['Amber'],
    once: ['Cloud'],
    untried: ['Dew'],
    yardsticks: ['Birch'],
  });
});

test('what was learned is what the records tell, and no more', () => {
  const fruits =
    '- {id: F1, planting: B1, fate: picked, pick: {picked_on: 2025-08-12, mass_kg: 3}, cut: {cut_on: 2025-08-12, state: prime, brix_centre: 10.2}}\n- {id: F2, planting: B2, fate: picked, pick: {picked_on: 2025-08-20, mass_kg: 2.5}, cut: {cut_on: 2025-08-20, state: just-ripe, brix_centre: 11.4}}\n';
  const { last } = modelOf({ ...TWO_SEASONS, 'seasons/2025/fruits.yaml': fruits });
  // 20 May to 12 August: 11 + 30 + 31 + 12 days.
  expect(last).toMatchObject({
    fruits: { value: 2 },
    mass: { value: 5.5 },
    first_days: { id: 'next.2025.first_pick_days', value: 84, reason: null },
    sugar: { id: 'next.2025.most_brix', value: 11.4 },
    signs: [],
  });
  const nothing = modelOf(TWO_SEASONS).last;
  expect(nothing).toMatchObject({
    first_days: { value: null, reason: { code: 'no-ripe-pick' } },
    sugar: { value: null, reason: { code: 'none-metered' } },
  });
});

test('dates of sowing are those of the next season, and left out while this one runs', () => {
  expect(modelOf(TWO_SEASONS, '2025-07-01').sow[0]).toMatchObject({
    first: null,
    weeks: { low: 3, high: 4, side: 'before' },
  });
  // 20 May 2026 less 28 days is 22 April.
  expect(modelOf(TWO_SEASONS, '2025-12-01').sow[0]).toMatchObject({ first: '2026-04-22', last: '2026-04-29' });
});
