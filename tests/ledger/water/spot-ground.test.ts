import { describe, expect, test } from 'vitest';
import type { Garden } from '../../../src/garden/garden.ts';
import { type SpotGround, spotGround, spread } from '../../../src/ledger/water/spot-ground.ts';
import { TABLE_19 } from '../../published/fao-56/bare-soil.ts';
import { cropText, planted, plantingOf, SOILS, soilsWith, spotOf, told, wateredGarden } from './watered-garden.ts';

const ROOM = 'room: {plant_area_low_m2: 2, plant_area_high_m2: 4, sources: [trade-practice]}\n';

function gardenWith(spot: string, room = ROOM, variety = 'amber'): Garden {
  return wateredGarden({
    settings: 'beds: [{id: E, area_m2: 12, soil: loam}, {id: F}]\n',
    spots: `  - {id: S1, kind: mound, ${spot}}\n  - {id: S2, kind: mound, bed: E}\n  - {id: S3, kind: mound, bed: E}\n`,
    crop: cropText({}, { more: room }),
    plantings: planted('P1', 'S1').replace('amber', variety),
  });
}
function groundOf(spot: string, reach: 'low' | 'high' = 'high', room = ROOM, soils = SOILS): SpotGround | null {
  const garden = gardenWith(spot, room);
  return spotGround(spotOf(garden, 'S1'), plantingOf(garden, 'P1'), soils, reach);
}

describe('ground of roots and leaves', () => {
  test('a spot in a bed has its share, and leaves no more, for its neighbours want the rest', () =>
    expect(groundOf('bed: E')).toMatchObject({ root_m2: 4, canopy_m2: 4, canopy_from: 'bed' }));
  test('a told canopy is taken, larger or smaller', () => {
    expect(groundOf('bed: E, canopy_m2: 7')).toMatchObject({ root_m2: 4, canopy_m2: 7, canopy_from: 'told' });
    expect(groundOf('area_m2: 5, canopy_m2: 1')).toMatchObject({ root_m2: 5, canopy_m2: 1, canopy_from: 'told' });
  });
  test('a spot by itself shades the room of its plants, at the least that sources give, where that is more', () => {
    expect(groundOf('area_m2: 1.5')).toMatchObject({ root_m2: 1.5, canopy_m2: 4, canopy_from: 'room' });
    expect(groundOf('area_m2: 5')).toMatchObject({ root_m2: 5, canopy_m2: 5, canopy_from: 'spot' });
    expect(groundOf('area_m2: 1.5', 'high', '')).toMatchObject({ canopy_m2: 1.5, canopy_from: 'spot' });
  });
  test('in a bed with its own measure it is by itself', () =>
    expect(groundOf('bed: E, area_m2: 1.5')).toMatchObject({ root_m2: 1.5, canopy_m2: 4, canopy_from: 'room' }));
  test('the bowl is its own, or nobody measured it', () => {
    expect(groundOf('bed: E, bowl_m2: 0.8')?.bowl_m2).toBe(0.8);
    expect(groundOf('bed: E')?.bowl_m2).toBeNull();
  });
  test('without any measure of ground there is nothing to say, nor for a crop without figures of water', () => {
    expect(groundOf('bed: F')).toBeNull();
    expect(groundOf('canopy_m2: 4')).toBeNull();
    const garden = wateredGarden({
      crop: 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
    });
    expect(spotGround(spotOf(garden, 'S1'), plantingOf(garden, 'P1'), SOILS, 'low')).toBeNull();
    const unnamed = gardenWith('bed: E', ROOM, 'unknown');
    expect(spotGround(spotOf(unnamed, 'S1'), plantingOf(unnamed, 'P1'), SOILS, 'low')).toBeNull();
  });
});

describe('what its roots can draw', () => {
  // Eq. 82 of FAO-56: 1000 (θFC − θWP) Zr, here 1000 × 0.1 × 0.5 and × 1.
  test('the low depth is for watering by, the high for a crop left to itself', () => {
    expect(groundOf('bed: E', 'low')).toMatchObject({
      root_depth_m: 0.5,
      available_mm: { low: 50, middle: 50, high: 50 },
    });
    expect(groundOf('bed: E', 'high')).toMatchObject({ root_depth_m: 1, available_mm: { low: 100, high: 100 } });
  });
  test('roots end where good soil does', () => {
    expect(groundOf('bed: E, soil_depth_cm: 30', 'high')).toMatchObject({
      root_depth_m: 0.3,
      available_mm: { low: 30, middle: 30, high: 30 },
    });
    expect(groundOf('bed: E, soil_depth_cm: 70', 'low')?.root_depth_m).toBe(0.5);
  });
  test('from the least to the most, with the middle', () => {
    const soils = soilsWith('clay', { available_low_m3_m3: 0.1, available_high_m3_m3: 0.2 });
    const found = groundOf('bed: E, soil: clay', 'high', ROOM, soils);
    expect(found?.available_mm).toEqual({ low: 100, middle: 150, high: 200 });
    expect(spread(6, 12)).toEqual({ low: 6, middle: 9, high: 12 });
  });
  // FAO-56, table 19: field capacity less wilting point runs from 0.05 in sand to 0.20 in clay.
  test('an untold soil is anything from sand to clay, and one without figures has none', () => {
    const found = groundOf('area_m2: 4', 'high');
    expect(found?.soil?.id).toBe('unknown');
    expect(told(found?.available_mm).low).toBeCloseTo(50, 10);
    expect(told(found?.available_mm).high).toBeCloseTo(200, 10);
    const tew = TABLE_19.flatMap(({ tew_mm }) => tew_mm);
    expect(found?.soil?.total_evaporated_low_mm).toBe(Math.min(...tew));
    expect(found?.soil?.total_evaporated_high_mm).toBe(Math.max(...tew));
    expect(groundOf('bed: E', 'high', ROOM, [])).toMatchObject({ soil: null, available_mm: null, root_m2: 4 });
  });
});
