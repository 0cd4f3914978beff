/** The demo garden's report on its watermelons, against its records read with a pencil. */
import { expect, test } from 'vitest';
import { trialModel } from '../../../content/variety/trial-model.ts';
import { bookOfFolder } from '../../site/built.ts';
import { trialOf } from './tried-garden.ts';

const { facts } = bookOfFolder('data/garden');
const model = trialModel(facts, trialOf(facts, 'watermelon'), null);
if (!model) throw new Error('no report');

const sugarOf = (name: string) =>
  model.against.find(({ trait }) => trait === 'brix')?.rows.find((row) => row.name === name)?.plain;

test('Saltpan Early was new in 2025: five plants in three mounds, two of them counted, all alive', () => {
  expect(model.entries.find(({ name }) => name === 'Saltpan Early')).toMatchObject({
    seasons: ['2025'],
    plants_set: 5,
    plants_alive: 3,
    plants_counted: 3,
    note: 'New in 2025.',
  });
});

test('Cartwheel Grey stood in 2022 alone: three plants, of two that were counted both alive', () => {
  expect(model.entries.find(({ name }) => name === 'Cartwheel Grey')).toMatchObject({
    seasons: ['2022'],
    plants_set: 3,
    plants_alive: 2,
    plants_counted: 2,
  });
});

test('sugar of Saltpan Early: 8.3, 7.4 and 10.3 in its mounds; of Tollgate Amber in 2025 one mound with 9.7 and 9.6', () => {
  const plain = sugarOf('Saltpan Early');
  expect(plain?.seasons.map(({ season }) => season)).toEqual(['2025']);
  expect(plain?.value).toBeCloseTo((8.3 + 7.4 + 10.3) / 3 - 9.65, 9);
  // Without 10.3, and without 7.4; without the yardstick's only mound nothing is left.
  expect(plain?.without_mound?.low).toBeCloseTo((8.3 + 7.4) / 2 - 9.65, 9);
  expect(plain?.without_mound?.high).toBeCloseTo((8.3 + 10.3) / 2 - 9.65, 9);
  expect(plain).toMatchObject({ over_seasons_se: null, without_season: null });
});

test('sugar of Cartwheel Grey: one ripe fruit of 8.0 beside one of 11.1; the unripe, the over-ripe and the unsaid are left out', () => {
  const plain = sugarOf('Cartwheel Grey');
  expect(plain?.value).toBeCloseTo(8 - 11.1, 9);
  expect(plain).toMatchObject({ without_mound: null, without_season: null });
});

test('the wishes are the garden’s own, and all are told', () => {
  expect(model.own_weights).toBe(true);
  expect(model.wishes).toEqual([
    { key: 'sweet', weight: 3, trait: 'brix' },
    { key: 'plenty', weight: 2, trait: 'sound_kg_per_plant' },
    { key: 'early', weight: 1, trait: 'first_ripe_days' },
    { key: 'liked', weight: 2, trait: 'liked' },
  ]);
  expect(model.yardstick).toEqual({ name: 'Tollgate Amber', by: 'marked' });
  // Of wishes that weigh alike the first: plenty before liked.
  expect(model.against.filter(({ plainly }) => plainly).map(({ trait }) => trait)).toEqual([
    'brix',
    'sound_kg_per_plant',
  ]);
});
