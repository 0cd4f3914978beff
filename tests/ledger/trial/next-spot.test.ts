import { expect, test } from 'vitest';
import { type NextSpot, nextSpots } from '../../../src/ledger/trial/next-spot.ts';
import { scoreParts } from '../../../src/ledger/trial/score.ts';
import { traitNumbers } from '../../../src/ledger/trial/trait-numbers.ts';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import type { Weights } from '../../../src/ledger/trial/weight.ts';
import { value } from './trial-garden.ts';

const BITS = [0.3, -0.2, 0.1, -0.4, 0.2, 0.0];

/** Mounds of a variety in three seasons, scattered a little. */
const mounds = (variety: string, level: number, count: number, years = ['2023', '2024', '2025']): TraitValue[] =>
  years.flatMap((year) =>
    Array.from({ length: count }, (_, at) => {
      const summer = Number(year) - 2023;
      return value(
        'sound_kg_per_plant',
        variety,
        year,
        `${variety}-${at}`,
        level + summer + (BITS[(at + 2 * summer) % 6] ?? 0),
      );
    }),
  );

function next(
  values: readonly TraitValue[],
  varieties: readonly string[],
  weights: Weights = { plenty: 1 },
): readonly NextSpot[] {
  const found = [traitNumbers('sound_kg_per_plant', values, varieties, 'amber', { draws: 2000, pull: 1 })];
  return nextSpots(scoreParts(found, values), found, values, weights, varieties);
}

test('one never grown teaches more than any of those known as well as the yardstick', () => {
  const values = [...mounds('amber', 5, 4), ...mounds('birch', 5.2, 4), ...mounds('copper', 4.9, 4)];
  const spots = next(values, ['amber', 'birch', 'copper', 'dusk']);
  expect(spots.map(({ variety }) => variety)[0]).toBe('dusk');
  expect(spots.filter(({ grown }) => !grown).map(({ variety }) => variety)).toEqual(['dusk']);
  expect(spots.map(({ gain }) => gain)).toEqual(spots.map(({ gain }) => gain).toSorted((a, b) => b - a));
  expect(spots).toHaveLength(4);
});

test('of two as good as each other the one with fewer mounds teaches more', () => {
  const values = [...mounds('amber', 5, 4), ...mounds('birch', 5, 4), ...mounds('copper', 5, 1)];
  const gains = new Map(next(values, ['amber', 'birch', 'copper']).map(({ variety, gain }) => [variety, gain]));
  expect(gains.get('copper')).toBeGreaterThan(gains.get('birch') ?? 0);
});

test('one known to be far behind teaches next to nothing', () => {
  const values = [...mounds('amber', 9, 4), ...mounds('birch', 8.9, 4), ...mounds('copper', 1, 4)];
  const spots = next(values, ['amber', 'birch', 'copper']);
  expect(spots.at(-1)?.variety).toBe('copper');
  expect(spots.at(-1)?.gain).toBeLessThan(0.2 * (spots[0]?.gain ?? 0));
});

test('without a wish that weighs there is nothing to teach', () => {
  const values = [...mounds('amber', 5, 4), ...mounds('birch', 5.2, 4)];
  expect(next(values, ['amber', 'birch'], { sweet: 1, plenty: 0 })).toEqual([]);
});
