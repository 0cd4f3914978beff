import { expect, test } from 'vitest';
import { type UsualGround, usualGround } from '../../../src/ledger/water/usual-ground.ts';
import { cropText, planted, plantingOf, SOILS, soilsWith, told, wateredGarden } from './watered-garden.ts';

const SPOTS =
  '  - {id: S1, kind: mound, area_m2: 4, soil: loam, canopy_m2: 6, bowl_m2: 1}\n  - {id: S2, kind: mound, area_m2: 8, soil: sand, soil_depth_cm: 40, bowl_m2: 2}\n  - {id: S3, kind: mound, area_m2: 3, soil: loam}\n  - {id: S4, kind: mound}\n';
const ROOM = 'room: {plant_area_low_m2: 2, plant_area_high_m2: 4, sources: [trade-practice]}\n';
const SAND = soilsWith('sand', { available_low_m3_m3: 0.05, available_high_m3_m3: 0.11 }).map((soil) =>
  soil.id === 'loam' ? told(SOILS.find(({ id }) => id === 'loam')) : soil,
);

function usualOf(plantings: string, soils = SAND, more = ROOM): UsualGround | null {
  const garden = wateredGarden({ spots: SPOTS, plantings, crop: cropText({}, { more }) });
  return usualGround(garden, told(garden.crops.get('globe')), soils);
}
const two = `${planted('P1', 'S1')}${planted('P2', 'S2')}`;

test('is the mean of the crop’s spots, roots at the depth for watering', () => {
  const found = told(usualOf(two));
  expect(found).toMatchObject({ spots: 2, canopy_m2: 7, canopy_from: 'told', root_m2: 6, bowl_m2: 1.5 });
  expect(found.root_depth_m).toBeCloseTo(0.45, 12);
  // Loam 1000 × 0.1 × 0.5 = 50 mm; sand 0.4 m of 0.05 to 0.11, that is 20 to 44, in the middle 32.
  expect(told(found.available_mm).low).toBeCloseTo(20, 10);
  expect(told(found.available_mm).middle).toBeCloseTo(41, 10);
  expect(told(found.available_mm).high).toBeCloseTo(50, 10);
});

test('spots without a measure of ground, or of bowl, are left out of what they do not tell', () => {
  const found = told(usualOf(`${two}${planted('P3', 'S3')}${planted('P4', 'S4')}`));
  expect(found).toMatchObject({ spots: 3, root_m2: 5, bowl_m2: 1.5 });
  expect(usualOf(planted('P3', 'S3'))).toMatchObject({ spots: 1, bowl_m2: null, soil: { id: 'loam' } });
});

test('plantings of another crop do not count', () => {
  const garden = wateredGarden({
    spots: SPOTS,
    plantings: `${planted('P1', 'S1')}${planted('P2', 'S2').replace('amber', 'cedar')}`,
    files: {
      'crops/bell.yaml': cropText({}, { id: 'bell' }),
      'varieties.yaml':
        '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: cedar, name: Cedar, crop: bell, seed: unknown}\n',
    },
  });
  expect(usualGround(garden, told(plantingOf(garden, 'P1').variety).crop, SAND)).toMatchObject({
    spots: 1,
    root_m2: 4,
  });
});

test('the season last planted counts, not the mean of all', () => {
  const garden = wateredGarden({
    spots: SPOTS,
    plantings: planted('P1', 'S1'),
    files: {
      'seasons/2024/season.yaml': 'label: 2024\nstarts_on: 2024-04-01\nends_on: 2024-10-31\n',
      'seasons/2024/plantings.yaml': planted('P9', 'S2', '2024-05-20'),
      'seasons/2026/season.yaml': 'label: 2026\nstarts_on: 2026-04-01\nends_on: 2026-10-31\n',
      'seasons/2026/plantings.yaml': '[]\n',
    },
  });
  expect(usualGround(garden, told(garden.crops.get('globe')), SAND)).toMatchObject({ spots: 1, root_m2: 4 });
});

test('for want of spots it is the room of one plant, in the middle, on a soil nobody knows', () => {
  const found = told(usualOf(planted('P4', 'S4')));
  expect(found).toMatchObject({
    spots: 0,
    canopy_m2: 3,
    canopy_from: 'room',
    root_m2: 3,
    root_depth_m: 0.5,
    bowl_m2: null,
    soil: { id: 'unknown' },
  });
  // FAO-56, table 19: 0.05 to 0.20, over half a metre.
  expect(told(found.available_mm).low).toBeCloseTo(25, 10);
  expect(told(found.available_mm).high).toBeCloseTo(100, 10);
  expect(usualOf(planted('P4', 'S4'), SAND, '')).toBeNull();
  expect(usualOf(planted('P4', 'S4'), [])).toMatchObject({ available_mm: null, soil: null, root_m2: 3 });
});
