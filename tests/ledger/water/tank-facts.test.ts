import { describe, expect, test } from 'vitest';
import { dippedLitres, type TankFacts, tankFacts } from '../../../src/ledger/water/tank-facts.ts';
import { PRINTED_SHARES } from '../../published/water/roof-runoff.ts';
import { CIRCLE_BELOW } from '../../published/water/tanks.ts';
import { ROOFS, told, wateredGarden } from './watered-garden.ts';

const factsOf = (tank: string | null, roofs = ROOFS): TankFacts | null =>
  tankFacts(wateredGarden({ settings: tank === null ? '' : `tank: {${tank}}\n` }), roofs);
const BOX = 'shape: box, length_cm: 100, width_cm: 80, height_cm: 125';
const dip = (of: TankFacts | null, volume_l: number | null, depth_cm: number | null = null): number | null =>
  dippedLitres(told(of), { volume_l, depth_cm });

describe('what it holds', () => {
  test('by its measures: a box of 100 × 80 × 125 cm is 1000 litres', () => {
    expect(factsOf(BOX)).toMatchObject({ tank: { holds_l: 1000, dead_l: 0 }, count: 1, roof: null, flow_l_min: null });
    expect(factsOf(`${BOX}, holds_l: 900`)?.tank.holds_l).toBe(1000);
  });
  test('an upright drum by π/4 d² h', () =>
    expect(factsOf('shape: upright, diameter_cm: 120, height_cm: 140')?.tank.holds_l).toBeCloseTo(
      (Math.PI / 4) * 1.2 ** 2 * 1400,
      9,
    ));
  test('as told where it was not measured, or not wholly', () => {
    expect(factsOf('holds_l: 1000')).toMatchObject({ tank: { holds_l: 1000 }, shape: null });
    expect(factsOf('holds_gal: 100')?.tank.holds_l).toBeCloseTo(378.5411784, 9);
    expect(factsOf('shape: box, length_cm: 100, holds_l: 700')).toMatchObject({ tank: { holds_l: 700 }, shape: null });
  });
  test('joined tanks hold together what they hold, and have the dead water of each', () => {
    expect(factsOf(`${BOX}, count: 3, tap_cm: 10`)).toMatchObject({ tank: { holds_l: 3000, dead_l: 240 }, count: 3 });
    expect(factsOf('holds_l: 200, count: 2')?.tank.holds_l).toBe(400);
  });
  // Chow’s table: below a depth of 0.1 diameters lie 0.040875 of its square.
  test('below the tap of a drum on its side lies what the table of the circle prints', () => {
    const [, area] = told(CIRCLE_BELOW.find(([depth]) => depth === 0.1));
    const found = told(factsOf('shape: lying, diameter_cm: 100, length_cm: 150, tap_cm: 10'));
    expect(found.tank.dead_l / 1500).toBeCloseTo(Number(area), 6);
  });
  test('a tap of unknown depth, or in a tank of unknown shape, leaves no dead water', () =>
    expect(factsOf('holds_l: 500, tap_cm: 10')?.tank.dead_l).toBe(0));
  test('no tank, and one of unknown size, tell nothing', () => {
    expect(factsOf(null)).toBeNull();
    expect(factsOf('roof_m2: 20')).toBeNull();
    expect(factsOf('shape: upright, diameter_cm: 60')).toBeNull();
  });
});

describe('its roof', () => {
  test('has the middle of the shares that sources give for its kind', () => {
    const found = told(factsOf(`${BOX}, roof_m2: 20, roof_of: metal, first_flush_l: 15, flow_l_min: 7`));
    const [low, high] = PRINTED_SHARES.metal;
    expect(found.roof?.runoff_share).toBeCloseTo((low + high) / 2, 12);
    expect(found).toMatchObject({
      roof: { footprint_m2: 20, first_flush_l: 15 },
      roof_facts: { id: 'metal' },
      flow_l_min: 7,
    });
  });
  test('of nobody knows what is the least to the most of all kinds', () => {
    const found = told(factsOf(`${BOX}, roof_m2: 20`));
    const all = Object.values(PRINTED_SHARES).flat();
    expect(found.roof?.runoff_share).toBeCloseTo((Math.min(...all) + Math.max(...all)) / 2, 12);
    expect(found.roof?.first_flush_l).toBe(0);
  });
  test('is none where nobody measured it, or its kind has no figures', () => {
    expect(factsOf(`${BOX}, roof_of: metal`)?.roof).toBeNull();
    expect(factsOf(`${BOX}, roof_m2: 20, roof_of: metal`, [])).toMatchObject({ roof: null, roof_facts: null });
  });
});

describe('what a dip says', () => {
  test('litres as read, and no more than it holds', () => {
    expect(dip(factsOf(BOX), 400)).toBe(400);
    expect(dip(factsOf(BOX), 0)).toBe(0);
    expect(dip(factsOf(BOX), 1200)).toBe(1000);
    expect(dip(factsOf(`${BOX}, count: 2`), 1200)).toBe(1200);
  });
  test('a depth by its shape, in each of the joined tanks', () => {
    expect(dip(factsOf(BOX), null, 50)).toBe(400);
    expect(dip(factsOf(`${BOX}, count: 3`), null, 50)).toBe(1200);
    expect(dip(factsOf(BOX), null, 130)).toBe(1000);
    expect(dip(factsOf(BOX), 400, 100)).toBe(400);
  });
  test('nothing, where a depth meets a tank of unknown shape or nothing was read', () => {
    expect(dip(factsOf('holds_l: 500'), null, 40)).toBeNull();
    expect(dip(factsOf(BOX), null, null)).toBeNull();
  });
});
