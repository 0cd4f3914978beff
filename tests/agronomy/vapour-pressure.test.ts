import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airPressure, psychrometricConstant } from '../../src/agronomy/air-pressure.ts';
import {
  meanSaturation,
  saturationPressure,
  saturationSlope,
  vapourAtDew,
  vapourByHighestHumidity,
  vapourByHumidity,
  vapourByLowestHumidity,
  vapourByMeanHumidity,
  vapourByWetBulb,
} from '../../src/agronomy/vapour-pressure.ts';
import { AT_1800_M, HUMIDITY, SATURATION, WET_BULB } from '../published/fao-56/reference-evapotranspiration.ts';
import { OVER_WATER } from '../published/steam-tables/iapws.ts';
import { expectPrinted } from '../statistics/agreement.ts';
import { expectValue } from './worked-example.ts';

const SEEDED = { seed: 20250812, numRuns: 500 };
const celsius = fc.double({ min: -20, max: 50, noNaN: true });
const humidity = fc.double({ min: 0, max: 100, noNaN: true });
const air = fc
  .tuple(celsius, celsius)
  .map(([one, other]) => ({ tmax_c: Math.max(one, other), tmin_c: Math.min(one, other) }));

describe('FAO-56', () => {
  it('example 2, pressure and the psychrometric constant at a height', () => {
    expectValue(airPressure(AT_1800_M.elevation_m), AT_1800_M.pressure);
    expectValue(psychrometricConstant(airPressure(AT_1800_M.elevation_m)), AT_1800_M.psychrometric);
  });
  it('example 3, what the air could hold', () => {
    expectValue(saturationPressure(SATURATION.air.tmax_c), SATURATION.at_tmax);
    expectValue(saturationPressure(SATURATION.air.tmin_c), SATURATION.at_tmin);
    expectValue(meanSaturation(SATURATION.air), SATURATION.mean);
    expectValue(saturationPressure((SATURATION.air.tmax_c + SATURATION.air.tmin_c) / 2), SATURATION.at_mean);
  });
  it('example 4, a wet bulb', () => {
    const pressure = airPressure(WET_BULB.elevation_m);
    expectValue(pressure, WET_BULB.pressure);
    expectValue(saturationPressure(WET_BULB.wet_c), WET_BULB.at_wet);
    expectValue(vapourByWetBulb(WET_BULB.dry_c, WET_BULB.wet_c, pressure, 'blown'), WET_BULB.vapour);
  });
  it('examples 5 and 6, humidities and what is wanting', () => {
    expectValue(saturationPressure(HUMIDITY.air.tmin_c), HUMIDITY.at_tmin);
    expectValue(saturationPressure(HUMIDITY.air.tmax_c), HUMIDITY.at_tmax);
    const held = vapourByHumidity(HUMIDITY.air, HUMIDITY.humidity);
    expectValue(held, HUMIDITY.vapour);
    expectValue(vapourByMeanHumidity(HUMIDITY.air, (82 + 54) / 2), HUMIDITY.vapour_by_mean);
    expectValue(meanSaturation(HUMIDITY.air) - held, HUMIDITY.deficit);
  });
  it('by one humidity, example 5 comes near its own 1.70', () => {
    // Eq. 18: 2.064 · 0.82. The lowest: 3.168 · 0.54, which the air could hold at 18 °C.
    expectPrinted(vapourByHighestHumidity(18, 82), '1.69');
    expectPrinted(vapourByLowestHumidity(HUMIDITY.air, 54), '1.71');
  });
});

describe('against other measures', () => {
  // The curve of Eq. 11 is a fit; between 0 and 40 °C it keeps within 1 part in 500 of the tables.
  it.each(OVER_WATER)('steam tables at $temperature_c °C', ({ temperature_c, pressure_kpa }) => {
    expect(Math.abs(saturationPressure(temperature_c) / pressure_kpa - 1)).toBeLessThan(0.002);
  });
  it('the slope is that of the curve', () => {
    fc.assert(
      fc.property(celsius, (temperature) => {
        const step = 1e-3;
        const rise = saturationPressure(temperature + step) - saturationPressure(temperature - step);
        // 4098 is 17.27 · 237.3 rounded to a whole number, 4098.17: 1 part in 24,000.
        expect(Math.abs(saturationSlope(temperature) / (rise / (2 * step)) - 1)).toBeLessThan(5e-5);
      }),
      SEEDED,
    );
  });
  it('101.3 kPa at the sea, and γ a 665th part of a thousandth of it', () => {
    expect(airPressure(0)).toBe(101.3);
    expect(psychrometricConstant(100)).toBeCloseTo(0.0665, 12);
  });
});

describe('what the air holds', () => {
  it('is never more than it could hold, by whatever humidity it was read', () => {
    fc.assert(
      fc.property(air, humidity, humidity, (day, one, other) => {
        const read = { rh_max_pct: Math.max(one, other), rh_min_pct: Math.min(one, other) };
        const full = meanSaturation(day) * (1 + 1e-12);
        expect(vapourByHumidity(day, read)).toBeLessThanOrEqual(full);
        expect(vapourByHighestHumidity(day.tmin_c, read.rh_max_pct)).toBeLessThanOrEqual(full);
        expect(vapourByMeanHumidity(day, read.rh_min_pct)).toBeLessThanOrEqual(full);
        expect(vapourByLowestHumidity(day, read.rh_min_pct)).toBeLessThanOrEqual(saturationPressure(day.tmin_c));
      }),
      SEEDED,
    );
  });
  it('is the same by every way in full air of one temperature, and nothing in air without any', () => {
    const still = { tmax_c: 20, tmin_c: 20 };
    const full = saturationPressure(20);
    expect(vapourAtDew(20)).toBe(full);
    expect(vapourByHumidity(still, { rh_max_pct: 100, rh_min_pct: 100 })).toBeCloseTo(full, 12);
    expect(vapourByHighestHumidity(20, 100)).toBeCloseTo(full, 12);
    expect(vapourByLowestHumidity(still, 100)).toBeCloseTo(full, 12);
    expect(vapourByMeanHumidity(still, 100)).toBeCloseTo(full, 12);
    expect(vapourByWetBulb(20, 20, 100, 'natural')).toBe(full);
    expect(vapourByHumidity(still, { rh_max_pct: 0, rh_min_pct: 0 })).toBe(0);
  });
  it('by the lowest humidity stops at what the coldest hour could hold', () => {
    // 80 of 100 at 25 °C would be 2.53 kPa; at 10 °C the air holds 1.228.
    expectPrinted(vapourByLowestHumidity({ tmax_c: 25, tmin_c: 10 }, 80), '1.228');
  });
  it('the less air passes the wet bulb, the drier the same reading', () => {
    // 5 °C apart at 100 kPa: 0.331, 0.4 and 0.6 kPa below e° at the wet bulb, 1.705.
    const held = (['blown', 'natural', 'indoors'] as const).map((air) => vapourByWetBulb(20, 15, 100, air));
    for (const [index, taken] of [0.331, 0.4, 0.6].entries()) {
      expect(saturationPressure(15) - (held[index] ?? Number.NaN)).toBeCloseTo(taken, 12);
    }
  });
});

describe('mistakes of the caller throw', () => {
  const day = { tmax_c: 25, tmin_c: 18 };
  it.each([
    ['elevation_m', () => airPressure(9001)],
    ['elevation_m', () => airPressure(-501)],
    ['elevation_m', () => airPressure(Number.NaN)],
    ['pressure_kpa', () => psychrometricConstant(0)],
    ['temperature_c', () => saturationPressure(-237.3)],
    ['temperature_c', () => saturationPressure(Number.POSITIVE_INFINITY)],
    ['temperature_c', () => meanSaturation({ tmax_c: Number.NaN, tmin_c: 1 })],
    ['wet_c', () => vapourByWetBulb(20, 20.1, 100, 'blown')],
    ['wet_c', () => vapourByWetBulb(40, 5, 100, 'blown')],
    ['dry_c', () => vapourByWetBulb(Number.POSITIVE_INFINITY, 5, 100, 'blown')],
    ['pressure_kpa', () => vapourByWetBulb(20, 15, 0, 'blown')],
    ['rh_max_pct', () => vapourByHumidity(day, { rh_max_pct: 101, rh_min_pct: 50 })],
    ['rh_min_pct', () => vapourByHumidity(day, { rh_max_pct: 80, rh_min_pct: 81 })],
    ['rh_min_pct', () => vapourByHumidity(day, { rh_max_pct: 80, rh_min_pct: -1 })],
    ['rh_max_pct', () => vapourByHighestHumidity(18, Number.NaN)],
    ['rh_mean_pct', () => vapourByMeanHumidity(day, 101)],
    ['rh_min_pct', () => vapourByLowestHumidity(day, -1)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
