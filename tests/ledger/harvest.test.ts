import { expect, test } from 'vitest';
import { type Harvest, harvestOf } from '../../src/ledger/harvest.ts';
import { picked, planting, smallGarden } from './small-garden.ts';

/** The harvest of the one planting, P1. */
function harvest(fruits: string, pickings = '', more = ''): Harvest | null {
  const garden = smallGarden({ plantings: planting('P1', 'S1', more), fruits, pickings });
  const [only] = garden.seasons[0]?.plantings ?? [];
  if (!only) throw new Error('the planting is missing');
  return harvestOf(only);
}

test('a planting nobody wrote of has no harvest, not a harvest of nothing', () => {
  expect(harvest('')).toBeNull();
  expect(harvest('', '- {planting: P1, picked_on: 2025-08-12, count: 0}\n')).toMatchObject({
    fruits: 0,
    mass_kg: { sum: 0, told: 0, of: 0 },
  });
  expect(harvest('', '', ', plants_alive: 0')).toMatchObject({ fruits: 0, from: 'all-plants-died' });
});

test('the register counts picked fruits only; lost, thinned and growing ones stay out', () => {
  const fruits = [
    picked('F1', 'P1', 'mass_kg: 4, condition: whole'),
    '- {id: F2, planting: P1, fate: lost, end: {ended_on: 2025-08-01, lost_to: animal}}\n',
    '- {id: F3, planting: P1, fate: thinned, end: {ended_on: 2025-07-10}}\n',
    '- {id: F4, planting: P1, fate: growing}\n',
  ].join('');
  expect(harvest(fruits)).toMatchObject({ from: 'register', fruits: 1, growing: 1, sound: { sum: 1, told: 1, of: 1 } });
});

test('a fruit not weighed or not looked over is told as missing, not as zero', () => {
  const fruits =
    picked('F1', 'P1', 'mass_kg: 4, condition: whole') +
    picked('F2', 'P1', 'condition: split') +
    picked('F3', 'P1', 'mass_kg: 2');
  expect(harvest(fruits)).toMatchObject({
    fruits: 3,
    sound: { sum: 1, told: 2, of: 3 },
    mass_kg: { sum: 6, told: 2, of: 3 },
    // The split fruit has no sound mass, weighed or not; the third could be sound or not.
    sound_mass_kg: { sum: 4, told: 2, of: 3 },
  });
});

test('register and pickings are never added: the larger count holds', () => {
  const two = picked('F1', 'P1', 'mass_kg: 4') + picked('F2', 'P1', 'mass_kg: 5');
  expect(harvest(two, '- {planting: P1, picked_on: 2025-08-12, count: 3, mass_kg: 13}\n')).toMatchObject({
    from: 'pickings',
    fruits: 3,
    mass_kg: { sum: 13, told: 3, of: 3 },
  });
  expect(harvest(two, '- {planting: P1, picked_on: 2025-08-12, count: 1, mass_kg: 9}\n')).toMatchObject({
    from: 'register',
    fruits: 2,
    mass_kg: { sum: 9 },
  });
});

test('at equal counts the register holds, unless only the pickings were weighed', () => {
  const pickings = '- {planting: P1, picked_on: 2025-08-12, count: 1, mass_kg: 9}\n';
  expect(harvest(picked('F1', 'P1', 'mass_kg: 4'), pickings)).toMatchObject({ from: 'register', mass_kg: { sum: 4 } });
  expect(harvest(picked('F1', 'P1', 'reason: ripe'), pickings)).toMatchObject({
    from: 'pickings',
    mass_kg: { sum: 9 },
  });
});

test('pounds are told in kilograms, and an about is kept', () => {
  const counted = harvest('', '- {planting: P1, picked_on: 2025-08, count: about 4, mass_lb: 10, sound_count: 4}\n');
  expect(counted).toMatchObject({ fruits: 4, about: true, sound: { sum: 4, told: 4, of: 4 } });
  // International pound of 1959, 0.45359237 kg exactly: NIST Special Publication 811, from memory.
  expect(counted?.mass_kg.sum).toBeCloseTo(4.5359237, 12);
  expect(counted?.sound_mass_kg).toEqual(counted?.mass_kg);
});
