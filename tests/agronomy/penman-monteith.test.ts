import { describe, expect, it } from 'vitest';
import { airPressure, psychrometricConstant } from '../../src/agronomy/air-pressure.ts';
import {
  daylightHours,
  extraterrestrialRadiation,
  radiationAsWater,
} from '../../src/agronomy/extraterrestrial-radiation.ts';
import { netLongwave, netRadiation, netShortwave } from '../../src/agronomy/net-radiation.ts';
import { type GrassWeather, penmanMonteith } from '../../src/agronomy/penman-monteith.ts';
import { SOIL_HEAT_OF_A_DAY, soilHeatOfMonth, soilHeatSinceMonth } from '../../src/agronomy/soil-heat.ts';
import { clearSky, solarBySunshine, solarBySwing } from '../../src/agronomy/solar-radiation.ts';
import {
  meanSaturation,
  saturationPressure,
  saturationSlope,
  vapourAtDew,
  vapourByHumidity,
} from '../../src/agronomy/vapour-pressure.ts';
import { windAtTwoMetres } from '../../src/agronomy/wind-height.ts';
import inR from '../published/fao-56/reference-days.json' with { type: 'json' };
import {
  BANGKOK_MONTH,
  LYON_WITHOUT,
  SOIL_HEAT,
  UCCLE_DAY,
  WIND,
} from '../published/fao-56/reference-evapotranspiration.ts';
import { expectDigits, expectPrinted } from '../statistics/agreement.ts';
import { expectValue } from './worked-example.ts';

/** Example 17 with the vapour given. */
function bangkok(vapour_kpa: number) {
  const { latitude_deg, day_of_year, elevation_m, air, sun_h, before_c, month_c } = BANGKOK_MONTH;
  const ra = extraterrestrialRadiation(latitude_deg, day_of_year);
  const solar_mj_m2 = solarBySunshine(sun_h, daylightHours(latitude_deg, day_of_year), ra);
  const sun = { solar_mj_m2, clear_mj_m2: clearSky(ra, elevation_m) };
  const weather: GrassWeather = {
    mean_c: month_c,
    net_radiation_mj_m2: netRadiation(air, vapour_kpa, sun),
    soil_heat_mj_m2: soilHeatSinceMonth(before_c, month_c),
    wind_m_s: BANGKOK_MONTH.wind_m_s,
    saturation_kpa: meanSaturation(air),
    vapour_kpa,
    psychrometric_kpa_c: psychrometricConstant(airPressure(elevation_m)),
  };
  return { sun, weather, longwave: netLongwave(air, vapour_kpa, sun) };
}

describe('FAO-56', () => {
  it('example 13, heat into the ground by the month', () => {
    const heat = soilHeatOfMonth(SOIL_HEAT.before_c, SOIL_HEAT.after_c);
    expectValue(heat, SOIL_HEAT.heat);
    expectPrinted(radiationAsWater(heat), SOIL_HEAT.heat_mm);
  });
  it('example 14, wind at 2 m', () => {
    expectValue(windAtTwoMetres(1, WIND.height_m), WIND.factor);
    expectValue(windAtTwoMetres(WIND.wind_m_s, WIND.height_m), WIND.at_2_m);
  });
  it('example 17, a month', () => {
    const { sun, weather, longwave } = bangkok(BANGKOK_MONTH.vapour_kpa);
    expectPrinted(saturationSlope(weather.mean_c), BANGKOK_MONTH.slope);
    expectPrinted(airPressure(BANGKOK_MONTH.elevation_m), BANGKOK_MONTH.pressure);
    expectPrinted(psychrometricConstant(Number(BANGKOK_MONTH.pressure)), BANGKOK_MONTH.psychrometric);
    expectPrinted(weather.saturation_kpa, BANGKOK_MONTH.saturation);
    expectPrinted(weather.saturation_kpa - weather.vapour_kpa, BANGKOK_MONTH.deficit);
    expectValue(sun.solar_mj_m2, BANGKOK_MONTH.solar);
    expectValue(sun.clear_mj_m2, BANGKOK_MONTH.clear);
    expectPrinted(netShortwave(sun.solar_mj_m2), BANGKOK_MONTH.shortwave);
    expectValue(longwave, BANGKOK_MONTH.longwave);
    expectValue(weather.net_radiation_mj_m2, BANGKOK_MONTH.net);
    expectPrinted(weather.soil_heat_mj_m2, BANGKOK_MONTH.soil_heat);
    expectValue(penmanMonteith(weather), BANGKOK_MONTH.eto);
  });
  it('example 18, a day', () => {
    const { latitude_deg, day_of_year, elevation_m, air, sun_h } = UCCLE_DAY;
    const ra = extraterrestrialRadiation(latitude_deg, day_of_year);
    const solar_mj_m2 = solarBySunshine(sun_h, daylightHours(latitude_deg, day_of_year), ra);
    const sun = { solar_mj_m2, clear_mj_m2: clearSky(ra, elevation_m) };
    const vapour_kpa = vapourByHumidity(air, UCCLE_DAY.humidity);
    const saturation_kpa = meanSaturation(air);
    const mean_c = (air.tmax_c + air.tmin_c) / 2;
    const pressure = airPressure(elevation_m);
    const wind_m_s = windAtTwoMetres(UCCLE_DAY.wind_m_s, UCCLE_DAY.wind_height_m);
    const net_radiation_mj_m2 = netRadiation(air, vapour_kpa, sun);
    const psychrometric_kpa_c = psychrometricConstant(pressure);
    expectPrinted(pressure, UCCLE_DAY.pressure);
    expectPrinted(saturationSlope(mean_c), UCCLE_DAY.slope);
    expectPrinted(psychrometric_kpa_c, UCCLE_DAY.psychrometric);
    expectValue(wind_m_s, UCCLE_DAY.wind_at_2_m);
    expectValue(saturation_kpa, UCCLE_DAY.saturation);
    expectValue(vapour_kpa, UCCLE_DAY.vapour);
    expectPrinted(saturation_kpa - vapour_kpa, UCCLE_DAY.deficit);
    expectValue(solar_mj_m2, UCCLE_DAY.solar);
    expectValue(sun.clear_mj_m2, UCCLE_DAY.clear);
    expectPrinted(netShortwave(solar_mj_m2), UCCLE_DAY.shortwave);
    expectValue(netLongwave(air, vapour_kpa, sun), UCCLE_DAY.longwave);
    expectValue(net_radiation_mj_m2, UCCLE_DAY.net);
    const weather = { mean_c, net_radiation_mj_m2, wind_m_s, saturation_kpa, vapour_kpa, psychrometric_kpa_c };
    expectValue(penmanMonteith({ ...weather, soil_heat_mj_m2: SOIL_HEAT_OF_A_DAY }), UCCLE_DAY.eto);
  });
  it('example 20, with temperatures alone', () => {
    const { latitude_deg, day_of_year, elevation_m, air } = LYON_WITHOUT;
    const ra = extraterrestrialRadiation(latitude_deg, day_of_year);
    const sun = { solar_mj_m2: solarBySwing(air, ra, elevation_m, false), clear_mj_m2: clearSky(ra, elevation_m) };
    const vapour_kpa = vapourAtDew(air.tmin_c);
    const saturation_kpa = meanSaturation(air);
    const net_radiation_mj_m2 = netRadiation(air, vapour_kpa, sun);
    expectValue(vapour_kpa, LYON_WITHOUT.vapour);
    expectValue(saturation_kpa, LYON_WITHOUT.saturation);
    expectValue(sun.clear_mj_m2, LYON_WITHOUT.clear);
    expectValue(netLongwave(air, vapour_kpa, sun), LYON_WITHOUT.longwave);
    expectValue(net_radiation_mj_m2, LYON_WITHOUT.net);
    const weather = {
      mean_c: (air.tmax_c + air.tmin_c) / 2,
      net_radiation_mj_m2,
      soil_heat_mj_m2: SOIL_HEAT_OF_A_DAY,
      saturation_kpa,
      vapour_kpa,
      psychrometric_kpa_c: psychrometricConstant(airPressure(elevation_m)),
    };
    expectValue(penmanMonteith({ ...weather, wind_m_s: 2 }), LYON_WITHOUT.eto);
    for (const { wind_m_s, eto } of LYON_WITHOUT.eto_at_wind) {
      expectValue(penmanMonteith({ ...weather, wind_m_s }), eto);
    }
  });
});

it('example 17 with the lowest temperature for the dew point reads 0.34 mm a day low, of 5.72', () => {
  const { read, by_tmin } = inR.less_damp.example_17;
  const [full, rough] = [BANGKOK_MONTH.vapour_kpa, saturationPressure(BANGKOK_MONTH.air.tmin_c)].map((vapour_kpa) =>
    penmanMonteith(bangkok(vapour_kpa).weather),
  );
  expectDigits(full, read, 9);
  expectDigits(rough, by_tmin, 9);
  expectPrinted((rough ?? Number.NaN) - (full ?? Number.NaN), '-0.34');
});

describe('Eq. 6 by hand', () => {
  const weather: GrassWeather = {
    mean_c: 27,
    net_radiation_mj_m2: 0,
    soil_heat_mj_m2: 0,
    wind_m_s: 0,
    saturation_kpa: 3,
    vapour_kpa: 3,
    psychrometric_kpa_c: 0.0665,
  };
  it('without sun, or with all of it going into the ground, full air dries nothing', () => {
    expect(penmanMonteith(weather)).toBe(0);
    expect(penmanMonteith({ ...weather, net_radiation_mj_m2: 9, soil_heat_mj_m2: 9, wind_m_s: 3 })).toBe(0);
  });
  it('without sun, by wind alone: 900 / 300 · γ · u2 · 1 kPa over Δ + γ (1 + 0.34 u2)', () => {
    const slope = saturationSlope(27);
    const wind = penmanMonteith({ ...weather, wind_m_s: 2, vapour_kpa: 2 });
    expect(wind).toBeCloseTo((3 * 0.0665 * 2) / (slope + 0.0665 * 1.68), 12);
  });
  it('falls below zero where the sky takes more than the air gives', () => {
    expect(penmanMonteith({ ...weather, net_radiation_mj_m2: -2 })).toBeLessThan(-0.1);
  });
});

describe('wind and ground', () => {
  it('a reading at 2 m stays as it is; higher up blows more', () => {
    expect(windAtTwoMetres(3, 2)).toBe(3);
    expect(windAtTwoMetres(3, 10)).toBeLessThan(3);
    expect(windAtTwoMetres(3, 1)).toBeGreaterThan(3);
    expect(windAtTwoMetres(0, 10)).toBe(0);
    // Eq. 47 itself, a hair from 2 m.
    expect(Math.abs(windAtTwoMetres(3, 2 + 1e-9) / 3 - 1)).toBeLessThan(3e-4);
  });
  it('takes up heat in spring and gives it in autumn, none by the day', () => {
    expect(soilHeatOfMonth(10, 20)).toBeCloseTo(0.7, 12);
    expect(soilHeatOfMonth(20, 10)).toBeCloseTo(-0.7, 12);
    expect(soilHeatSinceMonth(10, 15)).toBeCloseTo(0.7, 12);
    expect(SOIL_HEAT_OF_A_DAY).toBe(0);
  });
});

describe('mistakes of the caller throw', () => {
  const weather: GrassWeather = {
    mean_c: 20,
    net_radiation_mj_m2: 10,
    soil_heat_mj_m2: 0,
    wind_m_s: 2,
    saturation_kpa: 2,
    vapour_kpa: 1,
    psychrometric_kpa_c: 0.066,
  };
  it.each([
    ['wind_m_s', () => windAtTwoMetres(-1, 2)],
    ['height_m', () => windAtTwoMetres(1, 0.12)],
    ['height_m', () => windAtTwoMetres(1, Number.POSITIVE_INFINITY)],
    ['before_c', () => soilHeatOfMonth(Number.NaN, 1)],
    ['after_c', () => soilHeatOfMonth(1, Number.NaN)],
    ['before_c', () => soilHeatSinceMonth(Number.NaN, 1)],
    ['month_c', () => soilHeatSinceMonth(1, Number.NaN)],
    ['temperature_c', () => penmanMonteith({ ...weather, mean_c: Number.NaN })],
    ['net_radiation_mj_m2', () => penmanMonteith({ ...weather, net_radiation_mj_m2: Number.NaN })],
    ['soil_heat_mj_m2', () => penmanMonteith({ ...weather, soil_heat_mj_m2: Number.NaN })],
    ['wind_m_s', () => penmanMonteith({ ...weather, wind_m_s: -1 })],
    ['saturation_kpa', () => penmanMonteith({ ...weather, saturation_kpa: -1 })],
    ['vapour_kpa', () => penmanMonteith({ ...weather, vapour_kpa: -1 })],
    ['psychrometric_kpa_c', () => penmanMonteith({ ...weather, psychrometric_kpa_c: 0 })],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
