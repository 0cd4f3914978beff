import { describe, expect, it } from 'vitest';
import {
  type DualCoefficient,
  type RootZone,
  stepAlong,
  stepRootZone,
  type WaterDay,
  type WaterState,
  type WaterStep,
} from '../../src/agronomy/root-zone.ts';
import { readilyAvailable, totalAvailable } from '../../src/agronomy/soil-water.ts';
import type { WettingOrder } from '../../src/agronomy/wetting-order.ts';
import { EXAMPLE_31, EXAMPLE_35 } from '../published/fao-56/bare-soil.ts';
import { EXAMPLE_37, EXAMPLE_38 } from '../published/fao-56/soil-water.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const ORDERS: readonly WettingOrder[] = ['early', 'late'];
const expectWithin = (actual: number, printed: number, off: number): void =>
  expect(Math.abs(actual - printed), `${actual} against ${printed}`).toBeLessThanOrEqual(off + 1e-9);

const ZONE: RootZone = { taw_mm: 100, depletion_share: 0.4, adjust_p: false };
const DAY: WaterDay = {
  eto_mm: 5,
  rain_mm: 0,
  watering_mm: 0,
  canopy_ratio: 1,
  coefficient: { kind: 'single', kc: 1 },
};
const FULL: WaterState = { root_mm: 0, top: null };

/** The ten days of examples 35 and 38; the second adds its watering of day 10. */
const tenDays = (last_watering_mm: number): WaterDay[] => {
  const { kcb, open, kc_max, soil, wetted_share, eto_mm, rain_mm, watering_mm } = EXAMPLE_35;
  const along = ([from, to]: readonly [number, number], index: number): number => from + ((to - from) * index) / 9;
  return eto_mm.map((eto, index) => ({
    eto_mm: eto,
    rain_mm: rain_mm[index] ?? 0,
    watering_mm: index === 9 ? last_watering_mm : (watering_mm[index] ?? 0),
    canopy_ratio: 1,
    coefficient: {
      kind: 'dual',
      kcb: along(kcb, index),
      kc_max: kc_max.exact,
      cover: 1 - along(open, index),
      soil,
      evaporation_kept: 1,
      wetted_share,
      drip: false,
    },
  }));
};
const TOP = { depletion_mm: EXAMPLE_35.depletion_mm, wetted_share: EXAMPLE_35.wetted_share, drip: false };

describe('FAO-56', () => {
  it('example 31, as days of a root zone', () => {
    const { eto_mm, kcb, kc_max, soil, off_mm, off_etc_mm, days } = EXAMPLE_31;
    const coefficient: DualCoefficient = {
      kind: 'dual',
      kcb,
      kc_max,
      cover: 0,
      soil,
      evaporation_kept: 1,
      wetted_share: 1,
      drip: false,
    };
    const start: WaterState = { root_mm: 0, top: { depletion_mm: 0, wetted_share: 1, drip: false } };
    const steps = stepAlong(
      ZONE,
      start,
      days.map(() => ({ ...DAY, eto_mm, coefficient })),
      'early',
    );
    for (const [index, [, , kr, ke, evaporation_mm, end_mm, etc_mm]] of days.entries()) {
      expectPrinted(steps[index]?.top?.drying, kr);
      expectPrinted(steps[index]?.top?.ke, ke);
      expectWithin(steps[index]?.evaporation_mm ?? Number.NaN, evaporation_mm, off_mm);
      expectWithin(steps[index]?.end.top?.depletion_mm ?? Number.NaN, end_mm, off_mm);
      expectWithin(steps[index]?.etc_mm ?? Number.NaN, etc_mm, off_etc_mm);
    }
  });
  it('example 35: against the equations, and against print but for day 3', () => {
    const zone: RootZone = { ...ZONE, taw_mm: 1000 };
    const steps = stepAlong(zone, { root_mm: 0, top: TOP }, tenDays(0), 'early');
    expect(steps).toHaveLength(10);
    for (const [index, { etc_mm }] of steps.entries()) {
      const exact = EXAMPLE_35.etc_exact_mm[index] ?? Number.NaN;
      expect(Math.abs(etc_mm / exact - 1)).toBeLessThanOrEqual(1e-6);
      const printed = EXAMPLE_35.etc_printed_mm[index] ?? null;
      if (printed !== null) expectWithin(etc_mm, printed, EXAMPLE_35.off_mm);
    }
  });
  it.each(ORDERS)('example 37: ten days without water, %s', (order) => {
    const { hold, root_m, share, depletion_mm, eto_mm, kc, off_mm, days } = EXAMPLE_37;
    const zone: RootZone = { taw_mm: totalAvailable(hold, root_m), depletion_share: share, adjust_p: false };
    const dry = days.map((): WaterDay => ({ ...DAY, eto_mm, coefficient: { kind: 'single', kc } }));
    const steps = stepAlong(zone, { root_mm: depletion_mm, top: null }, dry, order);
    for (const [index, [, , ks, etc_mm, end_mm]] of days.entries()) {
      expectPrinted(steps[index]?.ks, ks);
      expectWithin(steps[index]?.etc_mm ?? Number.NaN, etc_mm, off_mm);
      expectWithin(steps[index]?.end.root_mm ?? Number.NaN, end_mm, off_mm);
    }
  });
  it('example 38: watered on the tenth day, early in the day', () => {
    const { hold, share, depletion_mm, off_mm, days } = EXAMPLE_38;
    let state: WaterState = { root_mm: depletion_mm, top: TOP };
    for (const [index, day] of tenDays(27).entries()) {
      const [number, root_m, rain_mm, watering_mm, etc_mm, through_mm, end_mm] = days[index] ?? [];
      const zone: RootZone = { taw_mm: totalAvailable(hold, root_m ?? 0), depletion_share: share, adjust_p: false };
      if (watering_mm && number !== 1) expect(state.root_mm).toBeGreaterThan(readilyAvailable(zone.taw_mm, share) - 1);
      expect([day.rain_mm, day.watering_mm]).toEqual([rain_mm, watering_mm]);
      const step = stepRootZone(zone, state, day, 'early');
      expect(step.ks).toBe(1);
      // Example 35's slip of day 3 is in this table too.
      if (number !== 3) expectWithin(step.etc_mm, etc_mm ?? Number.NaN, EXAMPLE_35.off_mm);
      expectWithin(step.percolation_mm, through_mm ?? Number.NaN, off_mm);
      expectWithin(step.end.root_mm, end_mm ?? Number.NaN, off_mm);
      state = step.end;
    }
  });
  it('example 38, day 1 by Eq. 88 as it is written: less runs through, nothing is missing', () => {
    const { depletion_mm, share, days, late_first_day } = EXAMPLE_38;
    const [, , rain_mm, watering_mm, etc_mm] = days[0];
    const zone: RootZone = { ...ZONE, depletion_share: share };
    const day: WaterDay = { ...DAY, eto_mm: etc_mm, rain_mm, watering_mm };
    const late = stepRootZone(zone, { root_mm: depletion_mm, top: null }, day, 'late');
    expectPrinted(late.percolation_mm, late_first_day.through);
    expectPrinted(late.end.root_mm, late_first_day.end);
    const early = stepRootZone(zone, { root_mm: depletion_mm, top: null }, day, 'early');
    expect(early.percolation_mm).toBe(17);
    expect(early.end.root_mm).toBe(etc_mm);
  });
});

describe('by hand, single', () => {
  it('leaves over four times the root ground drink four times as much from it', () => {
    expect(stepRootZone(ZONE, FULL, { ...DAY, canopy_ratio: 4 }, 'early')).toEqual({
      end: { root_mm: 20, top: null },
      depletion_share: 0.4,
      ks: 1,
      demand_mm: 20,
      etc_mm: 20,
      transpiration_mm: null,
      evaporation_mm: null,
      percolation_mm: 0,
      ignored_rain_mm: 0,
      unmet_mm: 0,
      below_wilting_mm: 0,
      top: null,
    } satisfies WaterStep);
  });
  it('a shower below a fifth of the thirst does not count, one of a fifth does', () => {
    const start = { root_mm: 30, top: null };
    for (const order of ORDERS) {
      const little = stepRootZone(ZONE, start, { ...DAY, rain_mm: 0.99 }, order);
      expect([little.ignored_rain_mm, little.end.root_mm]).toEqual([0.99, 35]);
      const enough = stepRootZone(ZONE, start, { ...DAY, rain_mm: 1 }, order);
      expect([enough.ignored_rain_mm, enough.end.root_mm]).toEqual([0, 34]);
    }
  });
  it('water in the morning stills a plant on that day, water in the evening on the next', () => {
    const start = { root_mm: 70, top: null };
    const day = { ...DAY, watering_mm: 40 };
    expect(stepRootZone(ZONE, start, day, 'early').ks).toBe(1);
    // (100 - 70) / 60.
    expect(stepRootZone(ZONE, start, day, 'late').ks).toBeCloseTo(0.5, 12);
    expect(stepRootZone(ZONE, start, day, 'late').end.root_mm).toBeCloseTo(32.5, 12);
  });
  it('an empty root zone gives no more, and says what it could not give', () => {
    // Ks (100 - 55) / 60 = 0.75 of 80 mm is 60, of which 45 are there.
    const step = stepRootZone(ZONE, { root_mm: 55, top: null }, { ...DAY, canopy_ratio: 16 }, 'early');
    expect(step.ks).toBeCloseTo(0.75, 12);
    expect([step.end.root_mm, step.etc_mm, step.demand_mm]).toEqual([100, 45, 80]);
    expect(step.unmet_mm).toBeCloseTo(15, 12);
  });
  it('the share follows the thirst of a square metre of crop, however far the leaves spread', () => {
    const zone = { ...ZONE, adjust_p: true };
    for (const canopy_ratio of [0.5, 1, 6])
      expect(stepRootZone(zone, FULL, { ...DAY, eto_mm: 8, canopy_ratio }, 'early').depletion_share).toBeCloseTo(
        0.28,
        12,
      );
    expect(stepRootZone(zone, FULL, { ...DAY, eto_mm: 0 }, 'early').depletion_share).toBeCloseTo(0.6, 12);
  });
});

describe('by hand, dual', () => {
  const DUAL: DualCoefficient = {
    kind: 'dual',
    kcb: 0.5,
    kc_max: 1.2,
    cover: 0.5,
    soil: { tew_mm: 20, rew_mm: 8 },
    evaporation_kept: 1,
    wetted_share: 0.25,
    drip: false,
  };
  const day = (
    changes: Partial<Omit<WaterDay, 'coefficient'>>,
    coefficient: Partial<DualCoefficient> = {},
  ): WaterDay => ({
    ...DAY,
    ...changes,
    coefficient: { ...DUAL, ...coefficient },
  });
  const wet = (depletion_mm: number, wetted_share = 1): WaterState => ({
    root_mm: 10,
    top: { depletion_mm, wetted_share, drip: false },
  });

  it('moist ground, half open: 0.6 of 1.2 is the soil’s, the plant has 0.5', () => {
    const step = stepRootZone(ZONE, wet(0), day({}), 'early');
    expect(step.top).toMatchObject({ drying: 1, exposed_share: 0.5, cut_mm: 0, through_mm: 0 });
    expect(step.top?.ke).toBeCloseTo(0.6, 12);
    expect(step.evaporation_mm).toBeCloseTo(3, 12);
    expect(step.transpiration_mm).toBeCloseTo(2.5, 12);
    expect(step.end.top?.depletion_mm).toBeCloseTo(6, 12);
    expect(step.end.root_mm).toBeCloseTo(15.5, 12);
  });
  it('the canopy multiplies what the plant drinks, not what the soil loses', () => {
    const step = stepRootZone(ZONE, wet(0), day({ canopy_ratio: 4 }), 'early');
    expect(step.evaporation_mm).toBeCloseTo(3, 12);
    expect(step.transpiration_mm).toBeCloseTo(10, 12);
  });
  it('a mulch that keeps half lets half go', () => {
    expect(stepRootZone(ZONE, wet(0), day({}, { evaporation_kept: 0.5 }), 'early').evaporation_mm).toBeCloseTo(1.5, 12);
  });
  it('the share wetted last is the watering’s, that of 3 mm of rain all of it, and else as it was', () => {
    const wettedBy = (changes: Partial<Omit<WaterDay, 'coefficient'>>): number | undefined =>
      stepRootZone(ZONE, wet(5, 0.4), day(changes), 'early').end.top?.wetted_share;
    expect(wettedBy({})).toBe(0.4);
    expect(wettedBy({ watering_mm: 4 })).toBe(0.25);
    expect(wettedBy({ rain_mm: 2.9 })).toBe(0.4);
    expect(wettedBy({ rain_mm: 3 })).toBe(1);
    // As the errata of 2006 have it (www.kimberly.uidaho.edu/water/fao56/errata.html).
    expect(wettedBy({ rain_mm: 2.9, watering_mm: 4 })).toBe(0.25);
    expect(wettedBy({ rain_mm: 3, watering_mm: 4 })).toBe(1);
  });
  it('2 mm averaged over the root ground are 8 on the quarter they wet', () => {
    const step = stepRootZone(ZONE, wet(5, 0.25), day({ eto_mm: 0, watering_mm: 2 }), 'early');
    expect(step.top?.through_mm).toBeCloseTo(3, 12);
    expect(step.end.top?.depletion_mm).toBe(0);
    expect(step.end.root_mm).toBe(8);
  });
  it('drip is remembered until rain wets all', () => {
    const dripped = stepRootZone(ZONE, wet(20), day({ watering_mm: 5 }, { drip: true }), 'early');
    expect(dripped.top?.exposed_share).toBeCloseTo(0.25 * (1 - 0.5 / 1.5), 12);
    const next = stepRootZone(ZONE, dripped.end, day({}), 'early');
    expect(next.top?.exposed_share).toBeCloseTo(0.25 * (1 - 0.5 / 1.5), 12);
    expect(stepRootZone(ZONE, next.end, day({ rain_mm: 10 }), 'early').end.top?.drip).toBe(false);
  });
  it('in the late order the ground evaporates as it lay before the water', () => {
    const start = wet(14, 0.4);
    const late = stepRootZone(ZONE, start, day({ rain_mm: 10 }), 'late');
    // Kr (20 - 14) / 12 = 0.5, Ke 0.5 · 0.7, on 0.4 of the ground: 1.75 / 0.4 deeper, then 10 mm of rain.
    expect(late.top).toMatchObject({ drying: 0.5, exposed_share: 0.4 });
    expect(late.evaporation_mm).toBeCloseTo(1.75, 12);
    expect(late.end.top?.depletion_mm).toBeCloseTo(14 + 1.75 / 0.4 - 10, 12);
    expect(late.end.top?.wetted_share).toBe(1);
    expect(stepRootZone(ZONE, start, day({ rain_mm: 10 }), 'early').top).toMatchObject({
      drying: 1,
      exposed_share: 0.5,
    });
  });
  it('a top layer gives no more than it has', () => {
    // Ke is 0.05 · 1.2: 0.3 mm, 6 on the twentieth that is open, where 8 are left; 0.54 and 10.8 in the wind.
    const step = stepRootZone(ZONE, wet(12, 0.05), day({}), 'early');
    expect(step.top?.ke).toBeCloseTo(0.06, 12);
    expect(step.top?.cut_mm).toBe(0);
    const windy = stepRootZone(ZONE, wet(12, 0.05), day({ eto_mm: 9 }), 'early');
    expect(windy.end.top?.depletion_mm).toBe(20);
    expect(windy.evaporation_mm).toBeCloseTo(8 * 0.05, 12);
    expect(windy.top?.cut_mm).toBeCloseTo(0.06 * 9 - 0.4, 12);
  });
  it('the surface dries on when the roots have nothing left', () => {
    const start: WaterState = { root_mm: 99, top: { depletion_mm: 0, wetted_share: 1, drip: false } };
    const step = stepRootZone(ZONE, start, day({}), 'early');
    expect(step.evaporation_mm).toBeCloseTo(3, 12);
    expect(step.below_wilting_mm).toBeCloseTo(2, 12);
    expect(step.transpiration_mm).toBe(0);
    expect(step.end.root_mm).toBe(100);
    // Ks is 1/60 of 2.5 mm, and nothing was left of it.
    expect(step.unmet_mm).toBeCloseTo(2.5 / 60, 12);
  });
  it('stress lessens what the plant drinks, not what the soil loses', () => {
    const start: WaterState = { root_mm: 70, top: { depletion_mm: 0, wetted_share: 1, drip: false } };
    const step = stepRootZone(ZONE, start, day({}), 'late');
    expect(step.transpiration_mm).toBeCloseTo(1.25, 12);
    expect(step.etc_mm).toBeCloseTo(4.25, 12);
    expect(step.demand_mm).toBeCloseTo(5.5, 12);
  });
  it('the share follows plant and soil together', () => {
    const step = stepRootZone({ ...ZONE, adjust_p: true }, wet(0), day({ canopy_ratio: 4 }), 'early');
    expect(step.depletion_share).toBeCloseTo(0.4 + 0.04 * (5 - 5.5), 12);
  });

  describe('mistakes of the caller throw', () => {
    it.each([
      ['taw_mm', () => stepRootZone({ ...ZONE, taw_mm: 0 }, FULL, DAY, 'early')],
      ['depletion_share', () => stepRootZone({ ...ZONE, depletion_share: 1 }, FULL, DAY, 'early')],
      ['root_mm', () => stepRootZone(ZONE, { root_mm: 101, top: null }, DAY, 'early')],
      ['rain_mm', () => stepRootZone(ZONE, FULL, { ...DAY, rain_mm: Number.NaN }, 'early')],
      ['watering_mm', () => stepRootZone(ZONE, FULL, { ...DAY, watering_mm: -1 }, 'late')],
      ['eto_mm', () => stepAlong(ZONE, FULL, [DAY, { ...DAY, eto_mm: -1 }], 'early')],
      ['canopy_ratio', () => stepRootZone(ZONE, FULL, { ...DAY, canopy_ratio: 0 }, 'early')],
      ['kc', () => stepRootZone(ZONE, FULL, { ...DAY, coefficient: { kind: 'single', kc: -1 } }, 'early')],
      ['top', () => stepRootZone(ZONE, FULL, day({}), 'early')],
      ['depletion_mm', () => stepRootZone(ZONE, wet(21), day({}), 'early')],
      ['evaporation_kept', () => stepRootZone(ZONE, wet(0), day({}, { evaporation_kept: 1.5 }), 'early')],
      ['cover', () => stepRootZone(ZONE, wet(0), day({}, { cover: 1 }), 'early')],
      ['kcb', () => stepRootZone(ZONE, wet(0), day({}, { kcb: -1 }), 'early')],
      ['wetted_share', () => stepRootZone(ZONE, wet(0), day({ watering_mm: 1 }, { wetted_share: 0 }), 'late')],
    ])('%s', (name, attempt) => {
      expect(attempt).toThrow(RangeError);
      expect(attempt).toThrow(`invalid ${name}:`);
    });
  });
});
