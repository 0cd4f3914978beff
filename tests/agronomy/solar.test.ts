import { describe, expect, it } from 'vitest';
import {
  daylightHours,
  extraterrestrialRadiation,
  radiationAsWater,
} from '../../src/agronomy/extraterrestrial-radiation.ts';
import { netLongwave, netRadiation, netShortwave } from '../../src/agronomy/net-radiation.ts';
import { clearSky, solarBySunshine, solarBySwing } from '../../src/agronomy/solar-radiation.ts';
import { BANGKOK_SWING, LYON_SOLAR, RIO } from '../published/fao-56/reference-evapotranspiration.ts';
import { STEFAN_BOLTZMANN_W } from '../published/physical-constants/codata.ts';
import { expectPrinted } from '../statistics/agreement.ts';
import { expectValue } from './worked-example.ts';

describe('FAO-56', () => {
  it('examples 10, 11 and 12, from hours of sun to what the grass keeps', () => {
    const ra = extraterrestrialRadiation(RIO.latitude_deg, RIO.day_of_year);
    const solar_mj_m2 = solarBySunshine(RIO.sun_h, daylightHours(RIO.latitude_deg, RIO.day_of_year), ra);
    const sun = { solar_mj_m2, clear_mj_m2: clearSky(ra, 0) };
    const longwave = netLongwave(RIO.air, RIO.vapour_kpa, sun);
    expectValue(solar_mj_m2, RIO.solar);
    expectValue(solar_mj_m2 / sun.clear_mj_m2, RIO.share_of_clear);
    expectValue(longwave, RIO.longwave);
    expectValue(netShortwave(solar_mj_m2), RIO.shortwave);
    const net = netRadiation(RIO.air, RIO.vapour_kpa, sun);
    expectValue(net, RIO.net);
    expectPrinted(radiationAsWater(solar_mj_m2), RIO.solar_mm);
    expectPrinted(radiationAsWater(longwave), RIO.longwave_mm);
    expectPrinted(radiationAsWater(net), RIO.net_mm);
  });
  it('example 15, by the swing of temperature inland', () => {
    const ra = extraterrestrialRadiation(LYON_SOLAR.latitude_deg, LYON_SOLAR.day_of_year);
    const solar = solarBySwing(LYON_SOLAR.air, ra, LYON_SOLAR.elevation_m, false);
    expectValue(solar, LYON_SOLAR.solar);
    expectPrinted(radiationAsWater(solar), LYON_SOLAR.solar_mm);
  });
  it('example 16, by the swing on a coast', () => {
    const ra = extraterrestrialRadiation(BANGKOK_SWING.latitude_deg, BANGKOK_SWING.day_of_year);
    const sun = { solar_mj_m2: solarBySwing(BANGKOK_SWING.air, ra, 0, true), clear_mj_m2: clearSky(ra, 0) };
    expectValue(sun.solar_mj_m2, BANGKOK_SWING.solar);
    expectValue(sun.clear_mj_m2, BANGKOK_SWING.clear);
    expectValue(netShortwave(sun.solar_mj_m2), BANGKOK_SWING.shortwave);
    expectValue(netLongwave(BANGKOK_SWING.air, BANGKOK_SWING.vapour_kpa, sun), BANGKOK_SWING.longwave);
    const net = netRadiation(BANGKOK_SWING.air, BANGKOK_SWING.vapour_kpa, sun);
    expectValue(net, BANGKOK_SWING.net);
    expectPrinted(radiationAsWater(net), BANGKOK_SWING.net_mm);
  });
});

describe('sun at the ground', () => {
  it('full sun at the sea is a clear sky, full cloud a third of it', () => {
    expect(solarBySunshine(12, 12, 40)).toBe(30);
    expect(solarBySunshine(12, 12, 40)).toBe(clearSky(40, 0));
    expect(solarBySunshine(0, 12, 40)).toBe(10);
  });
  it('a recorder that shows more than the day is long shows a whole day', () => {
    expect(solarBySunshine(12.4, 12, 40)).toBe(30);
  });
  it('where the sun does not rise there is none', () => {
    expect(solarBySunshine(0, 0, 0)).toBe(0);
    expect(solarBySwing({ tmax_c: 0, tmin_c: -20 }, 0, 100, false)).toBe(0);
  });
  it('thinner air lets more through: 2 parts in 100,000 a metre', () => {
    expect(clearSky(40, 1000)).toBeCloseTo(30.8, 12);
  });
  it('a great swing is no more than a clear sky, no swing no sun', () => {
    expect(solarBySwing({ tmax_c: 40, tmin_c: 10 }, 40, 0, false)).toBe(30);
    expect(solarBySwing({ tmax_c: 26, tmin_c: 10 }, 40, 0, false)).toBeCloseTo(25.6, 12);
    expect(solarBySwing({ tmax_c: 20, tmin_c: 20 }, 40, 0, true)).toBe(0);
  });
});

describe('heat lost to the sky', () => {
  const air = { tmax_c: 20, tmin_c: 20 };
  // A black body at 293.16 K: σ T⁴ = 4.903e-9 · 293.16⁴ = 36.21 MJ a m² a day, here by its square.
  const glow = 4.903e-9 * 85942.7856 ** 2;
  it('by hand under a clear sky without vapour: 0.34 of a black body', () => {
    expect(netLongwave(air, 0, { solar_mj_m2: 30, clear_mj_m2: 30 })).toBeCloseTo(0.34 * glow, 9);
  });
  it('the constant is Stefan and Boltzmann’s over 86,400 seconds, in MJ', () => {
    const found = netLongwave(air, 0, { solar_mj_m2: 30, clear_mj_m2: 30 }) / 0.34 / 293.16 ** 4;
    expect(Math.abs(found / (STEFAN_BOLTZMANN_W * 0.0864) - 1)).toBeLessThan(1e-3);
  });
  it('a reading above a clear sky loses no more than a clear sky', () => {
    const [bright, clear] = [33, 30].map((solar_mj_m2) => netLongwave(air, 1.5, { solar_mj_m2, clear_mj_m2: 30 }));
    expect(bright).toBe(clear);
  });
  it('a very dark day loses little, and the sky never warms the ground', () => {
    const [none, dark] = [0, 9].map((solar_mj_m2) => netLongwave(air, 0, { solar_mj_m2, clear_mj_m2: 30 }));
    expect(none).toBe(dark);
    // 1.35 · 0.3 - 0.35 is 0.055.
    expect(none).toBeCloseTo(0.055 * 0.34 * glow, 9);
  });
  it('in the dark of the far north is that of a clear sky', () => {
    expect(netLongwave(air, 0, { solar_mj_m2: 0, clear_mj_m2: 0 })).toBeCloseTo(0.34 * glow, 9);
    expect(netRadiation(air, 0, { solar_mj_m2: 0, clear_mj_m2: 0 })).toBeCloseTo(-0.34 * glow, 9);
  });
});

describe('mistakes of the caller throw', () => {
  const air = { tmax_c: 20, tmin_c: 10 };
  const sun = { solar_mj_m2: 20, clear_mj_m2: 30 };
  it.each([
    ['sun_h', () => solarBySunshine(-1, 12, 40)],
    ['sun_h', () => solarBySunshine(25, 12, 40)],
    ['daylight_h', () => solarBySunshine(5, 25, 40)],
    ['ra_mj_m2', () => solarBySunshine(5, 12, -1)],
    ['ra_mj_m2', () => clearSky(Number.NaN, 0)],
    ['elevation_m', () => clearSky(30, Number.NaN)],
    ['tmin_c', () => solarBySwing({ tmax_c: 10, tmin_c: 11 }, 30, 0, false)],
    ['tmax_c', () => solarBySwing({ tmax_c: Number.NaN, tmin_c: 11 }, 30, 0, false)],
    ['solar_mj_m2', () => netShortwave(-0.1)],
    ['tmax_c', () => netLongwave({ tmax_c: -273.16, tmin_c: 10 }, 1, sun)],
    ['tmin_c', () => netLongwave({ tmax_c: 10, tmin_c: Number.NaN }, 1, sun)],
    ['vapour_kpa', () => netLongwave(air, -0.1, sun)],
    ['solar_mj_m2', () => netLongwave(air, 1, { ...sun, solar_mj_m2: -1 })],
    ['clear_mj_m2', () => netLongwave(air, 1, { ...sun, clear_mj_m2: -1 })],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
