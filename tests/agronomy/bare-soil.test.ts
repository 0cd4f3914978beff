import { describe, expect, it } from 'vitest';
import {
  coverFrom,
  dryingFactor,
  evaporationCoefficient,
  exposedShare,
  largestCoefficient,
  totalEvaporable,
} from '../../src/agronomy/bare-soil.ts';
import { EXAMPLE_31, EXAMPLE_35, EXAMPLES_32_TO_34, TABLE_19 } from '../published/fao-56/bare-soil.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const expectExact = (actual: number, exact: number): void =>
  expect(Math.abs(actual / exact - 1), `${actual} against ${exact}`).toBeLessThanOrEqual(1e-6);
const expectWithin = (actual: number, printed: number, off: number): void =>
  expect(Math.abs(actual - printed), `${actual} against ${printed}`).toBeLessThanOrEqual(off + 1e-9);

describe('FAO-56', () => {
  it('example 31: bare loam dries for ten days', () => {
    const { eto_mm, kcb, kc_max, soil, off_mm, off_etc_mm, days } = EXAMPLE_31;
    let depletion_mm = 0;
    for (const [, start_mm, kr, ke, evaporation_mm, end_mm, etc_mm] of days) {
      expectWithin(depletion_mm, start_mm, off_mm);
      const drying = dryingFactor(soil, depletion_mm);
      const coefficient = evaporationCoefficient(drying, kc_max, kcb, 1);
      expectPrinted(drying, kr);
      expectPrinted(coefficient, ke);
      expectWithin(coefficient * eto_mm, evaporation_mm, off_mm);
      expectWithin((kcb + coefficient) * eto_mm, etc_mm, off_etc_mm);
      depletion_mm += coefficient * eto_mm;
      expectWithin(depletion_mm, end_mm, off_mm);
    }
  });
  it('example 32: the largest coefficient and the cover', () => {
    const { kcb, kc_min, climate, height_m, kc_max, cover } = EXAMPLES_32_TO_34;
    const largest = largestCoefficient(kcb, climate, height_m);
    expectPrinted(largest, kc_max.printed);
    expectExact(largest, kc_max.exact);
    expectPrinted(coverFrom(kcb, kc_min, largest, height_m), cover.printed);
    expectExact(coverFrom(kcb, kc_min, largest, height_m), cover.exact);
  });
  it.each(EXAMPLES_32_TO_34.ways)('examples 32 to 34: just wetted by $way', (way) => {
    const { kcb, kc_max, cover } = EXAMPLES_32_TO_34;
    const few = exposedShare(cover.exact, way.wetted_share, way.drip);
    const ke = evaporationCoefficient(1, kc_max.exact, kcb, few);
    expectPrinted(few, way.few);
    expectPrinted(ke, way.ke);
    expectPrinted(kcb + ke, way.kc);
    expectExact(kcb + ke, way.exact);
  });
  it('example 35: the top layer', () => {
    const { hold, layer_m, tew, climate, height_m, kc_max } = EXAMPLE_35;
    expectPrinted(totalEvaporable(hold, layer_m), tew);
    expectPrinted(largestCoefficient(0.3, climate, height_m), kc_max.printed);
    expectExact(largestCoefficient(0.3, climate, height_m), kc_max.exact);
  });
  it.each(TABLE_19)('table 19: $soil', ({ field, wilting, tew_mm }) => {
    // The table pairs no field capacity with a wilting point, so its span must meet what the equation can give.
    const least = totalEvaporable(
      { field_capacity: field[0], wilting_point: Math.min(wilting[1], field[0] - 0.001) },
      0.1,
    );
    const most = totalEvaporable({ field_capacity: field[1], wilting_point: wilting[0] }, 0.1);
    expect(tew_mm[0]).toBeGreaterThanOrEqual(least - 0.5);
    expect(tew_mm[1]).toBeLessThanOrEqual(most + 0.5);
    const middle = totalEvaporable(
      { field_capacity: (field[0] + field[1]) / 2, wilting_point: (wilting[0] + wilting[1]) / 2 },
      0.1,
    );
    expect(middle).toBeGreaterThan(tew_mm[0]);
    expect(middle).toBeLessThan(tew_mm[1]);
  });
});

describe('by hand', () => {
  const still = { wind_m_s: 2, rh_min_pct: 45 };
  it('the largest coefficient leaves room above a thirsty crop', () => {
    expect(largestCoefficient(0.9, still, 1)).toBe(1.2);
    expect(largestCoefficient(1.19, still, 1)).toBeCloseTo(1.24, 12);
  });
  it('the cover: half grown and 2 m high is a quarter, none below bare ground, never whole', () => {
    // ((0.65 - 0.15) / (1.15 - 0.15)) to the power 1 + 0.5 · 2.
    expect(coverFrom(0.65, 0.15, 1.15, 2)).toBeCloseTo(0.25, 12);
    expect(coverFrom(0.1, 0.15, 1.15, 2)).toBe(0);
    expect(coverFrom(1.15, 0.15, 1.15, 0)).toBe(0.99);
  });
  it('rain on all of the ground is as exposed by drip lines as without them', () => {
    for (const cover of [0, 0.3, 0.99]) expect(exposedShare(cover, 1, true)).toBe(exposedShare(cover, 1, false));
    expect(exposedShare(0.6, 0.5, true)).toBeCloseTo(0.3, 12);
    expect(exposedShare(0.6, 0.5, false)).toBeCloseTo(0.4, 12);
  });
  it('drying: full to REW, half midway, none at TEW and beyond', () => {
    const soil = { tew_mm: 20, rew_mm: 8 };
    expect([0, 8, 14, 20, 25].map((depletion) => dryingFactor(soil, depletion))).toEqual([1, 1, 0.5, 0, 0]);
  });
  it('a crop that takes all the energy leaves the soil none', () => {
    expect(evaporationCoefficient(1, 1.1, 1.15, 0.5)).toBe(0);
  });
});

describe('mistakes of the caller throw', () => {
  const hold = { field_capacity: 0.3, wilting_point: 0.1 };
  it.each([
    ['kcb', () => largestCoefficient(-1, { wind_m_s: 2, rh_min_pct: 45 }, 1)],
    ['kc_min', () => coverFrom(0.5, 1.2, 1.2, 1)],
    ['height_m', () => coverFrom(0.5, 0.15, 1.2, Number.NaN)],
    ['cover', () => exposedShare(1, 0.5, false)],
    ['wetted_share', () => exposedShare(0.5, 0, false)],
    ['field_capacity', () => totalEvaporable({ ...hold, field_capacity: 0.1 }, 0.1)],
    ['wilting_point', () => totalEvaporable({ ...hold, wilting_point: -0.1 }, 0.1)],
    ['rew_mm', () => dryingFactor({ tew_mm: 8, rew_mm: 8 }, 0)],
    ['depletion_mm', () => dryingFactor({ tew_mm: 20, rew_mm: 8 }, -1)],
    ['drying', () => evaporationCoefficient(1.1, 1.2, 0.5, 1)],
    ['exposed', () => evaporationCoefficient(1, 1.2, 0.5, Number.NaN)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
