/**
 * What short grass keeps of the sun's energy and what it sends back to the sky, MJ a m² a day.
 * Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Eq. 38-40.
 */
import type { AirExtremes } from './vapour-pressure.ts';

/** Green grass throws this share of the light back. */
const ALBEDO = 0.23;
/** Stefan and Boltzmann, MJ a m² a day and K to the fourth. */
const STEFAN_BOLTZMANN = 4.903e-9;
/** As the paper has it in Eq. 39, though 0 °C is 273.15 K: with the other its fourth digits are lost. */
const KELVIN = 273.16;
/**
 * The darkest sky taken for the loss of heat, as a share of a clear one. The paper sets none; its own full cloud is a third at
 * the sea and stays above this below 4000 m, so only a measured dark day meets it, on which Eq. 39 would have the sky warm
 * the ground. ASCE-EWRI 2005, The ASCE standardized reference evapotranspiration equation, holds the same; from memory.
 */
const DARKEST = 0.3;

/** Solar radiation at the ground and what a clear sky would let through, MJ a m² a day. */
export interface Sunlight {
  readonly solar_mj_m2: number;
  readonly clear_mj_m2: number;
}

/** What the grass keeps of the light, Rns: Eq. 38. Throws RangeError for a radiation below 0. */
export function netShortwave(solar_mj_m2: number): number {
  check('solar_mj_m2', solar_mj_m2, solar_mj_m2 >= 0);
  return (1 - ALBEDO) * solar_mj_m2;
}

/**
 * Heat lost to the sky, Rnl: Eq. 39, with Rs/Rso no more than 1. Temperatures in °C, vapour in kPa. Where the sun does not
 * rise nothing tells of clouds, and a clear sky is taken. Throws RangeError for a temperature at or below -273.16 °C or another
 * number below 0.
 */
export function netLongwave({ tmax_c, tmin_c }: AirExtremes, vapour_kpa: number, sun: Sunlight): number {
  check('tmax_c', tmax_c, tmax_c > -KELVIN);
  check('tmin_c', tmin_c, tmin_c > -KELVIN);
  check('vapour_kpa', vapour_kpa, vapour_kpa >= 0);
  check('solar_mj_m2', sun.solar_mj_m2, sun.solar_mj_m2 >= 0);
  check('clear_mj_m2', sun.clear_mj_m2, sun.clear_mj_m2 >= 0);
  const share = sun.clear_mj_m2 === 0 ? 1 : Math.min(Math.max(sun.solar_mj_m2 / sun.clear_mj_m2, DARKEST), 1);
  const glow = (STEFAN_BOLTZMANN * ((tmax_c + KELVIN) ** 4 + (tmin_c + KELVIN) ** 4)) / 2;
  return glow * (0.34 - 0.14 * Math.sqrt(vapour_kpa)) * (1.35 * share - 0.35);
}

/** What is left to warm and to dry, Rn: Eq. 40. Below zero on a short clear winter's day. Throws as both. */
export const netRadiation = (air: AirExtremes, vapour_kpa: number, sun: Sunlight): number =>
  netShortwave(sun.solar_mj_m2) - netLongwave(air, vapour_kpa, sun);

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
