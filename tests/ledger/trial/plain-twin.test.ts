import { expect, test } from 'vitest';
import { plainTwin } from '../../../src/ledger/trial/plain-twin.ts';
import { TRAITS, type TraitId } from '../../../src/ledger/trial/trait.ts';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { value } from './trial-garden.ts';

const traitOf = (id: TraitId) => TRAITS.find((one) => one.id === id) ?? TRAITS[0];

function twin(id: TraitId, values: readonly TraitValue[]) {
  const trait = traitOf(id);
  if (!trait) throw new Error(`no trait ${id}`);
  return plainTwin(trait, values, 'amber');
}

/** Birch less amber: 2024 13 - 10 = 3, 2025 15 - 13 = 2. Copper stood in 2025 alone, dusk never beside amber. */
const SUGARS = [
  value('brix', 'amber', '2024', 'S1', 10),
  value('brix', 'birch', '2024', 'S2', 12),
  value('brix', 'birch', '2024', 'S3', 13),
  value('brix', 'birch', '2024', 'S3', 15),
  value('brix', 'amber', '2025', 'S1', 12),
  value('brix', 'amber', '2025', 'S2', 14),
  value('brix', 'birch', '2025', 'S3', 15),
  value('brix', 'copper', '2025', 'S4', 9),
  value('brix', 'dusk', '2023', 'S4', 9),
];

test('with a pencil: mounds averaged, then varieties of a season, then seasons, each weighing the same', () => {
  const { differences } = twin('brix', SUGARS);
  expect(differences.map(({ variety }) => variety)).toEqual(['birch', 'copper']);
  const [birch, copper] = differences;
  expect(birch?.seasons).toEqual([
    { season: '2024', difference: 3 },
    { season: '2025', difference: 2 },
  ]);
  expect(birch?.value).toBe(2.5);
  expect(copper?.value).toBe(-4);
  // Mounds about their variety's mean of a season: 12, 14 about 13 and 12, 14 about 13, so 4 on 2 degrees of freedom.
  // Parts 1/2 + 1 and 1 + 1/2: √2 × √3 / 2.
  expect(birch?.sed).toBeCloseTo(Math.sqrt(2) * (Math.sqrt(3) / 2), 12);
  expect(birch?.sed_df).toBe(2);
  // Seasons 3 and 2: standard deviation √½, over √2.
  expect(birch?.over_seasons_se).toBeCloseTo(0.5, 12);
  expect(copper?.over_seasons_se).toBeNull();
  // Left out: a birch mound of 2024 (14 or 12: 4 or 2, halves 3 or 2), an amber one of 2025 (14 or 12: 1 or 3), a
  // whole season by ending the only amber of 2024 (2) or the only birch of 2025 (3).
  expect(birch?.without_mound).toEqual({ low: 2, high: 3 });
  expect(birch?.without_season).toEqual({ low: 2, high: 3 });
  expect(copper?.without_season).toBeNull();
});

test('masses are compared by ratios: the geometric mean of both seasons’ times', () => {
  const { differences, cv_of_100 } = twin('mass_kg', [
    value('mass_kg', 'amber', '2024', 'S1', 2),
    value('mass_kg', 'birch', '2024', 'S2', 8),
    value('mass_kg', 'amber', '2025', 'S1', 3),
    value('mass_kg', 'birch', '2025', 'S2', 3),
  ]);
  expect(differences[0]?.seasons.map(({ difference }) => difference)).toEqual([
    expect.closeTo(4, 12),
    expect.closeTo(1, 12),
  ]);
  expect(differences[0]?.value).toBeCloseTo(2, 12);
  expect(differences[0]?.without_season).toEqual({ low: expect.closeTo(1, 12), high: expect.closeTo(4, 12) });
  // No variety has two mounds in a season.
  expect(cv_of_100).toBeNull();
});

test('the coefficient of variation is of mounds in the trait’s own unit, and ladders have none', () => {
  // SD √2 on 2 degrees of freedom; the mean of the eight mounds is (10+12+14+12+14+15+9+9)/8 = 95/8.
  expect(twin('brix', SUGARS).cv_of_100).toBeCloseTo((100 * Math.SQRT2) / (95 / 8), 10);
  const ladder = SUGARS.map((one): TraitValue => ({ ...one, trait: 'liked' }));
  expect(twin('liked', ladder).cv_of_100).toBeNull();
  const masses = [2, 4].map((kg, at) => value('mass_kg', 'amber', '2025', `S${at}`, kg));
  expect(twin('mass_kg', masses).cv_of_100).toBeCloseTo((100 * Math.SQRT2) / 3, 10);
});

test('without the yardstick there is nothing to set beside it', () => {
  expect(
    twin(
      'brix',
      SUGARS.filter(({ variety }) => variety !== 'amber'),
    ).differences,
  ).toEqual([]);
});
