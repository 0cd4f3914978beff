/** The thirst of the air from sun, warmth, damp and wind. */
import { radiationAsWater } from './extraterrestrial-radiation.ts';
import { saturationSlope } from './vapour-pressure.ts';

/** What Eq. 6 asks of a day, ten days or a month, as the mean of a day. */
export interface GrassWeather {
  /** The mean of the highest and the lowest temperature, °C. */
  readonly mean_c: number;
  /** Rn and G, MJ a m² a day. */
  readonly net_radiation_mj_m2: number;
  readonly soil_heat_mj_m2: number;
  /** u2, 2 m above the ground, m/s. */
  readonly wind_m_s: number;
  /** es and ea, kPa. */
  readonly saturation_kpa: number;
  readonly vapour_kpa: number;
  /** γ, kPa a °C. */
  readonly psychrometric_kpa_c: number;
}

/**
 * Reference evapotranspiration of well-watered short grass, mm a day: Eq. 6 of FAO Irrigation and Drainage Paper 56 (Allen,
 * Pereira, Raes & Smith 1998), with Δ of Eq. 13 at the mean temperature and, as there, 273 between °C and K. As it stands it may
 * fall a little below zero, in cold damp air under a clear sky: dew or rime settles, and nothing dries.
 * Throws RangeError for a number that is not finite, a mean at or below -237.3 °C, a wind or a vapour below 0, or a γ not above 0.
 */
export function penmanMonteith(weather: GrassWeather): number {
  const { mean_c, net_radiation_mj_m2, soil_heat_mj_m2, wind_m_s, saturation_kpa, vapour_kpa, psychrometric_kpa_c } =
    weather;
  check('net_radiation_mj_m2', net_radiation_mj_m2, true);
  check('soil_heat_mj_m2', soil_heat_mj_m2, true);
  check('wind_m_s', wind_m_s, wind_m_s >= 0);
  check('saturation_kpa', saturation_kpa, saturation_kpa >= 0);
  check('vapour_kpa', vapour_kpa, vapour_kpa >= 0);
  check('psychrometric_kpa_c', psychrometric_kpa_c, psychrometric_kpa_c > 0);
  const slope = saturationSlope(mean_c);
  const by_sun = slope * radiationAsWater(net_radiation_mj_m2 - soil_heat_mj_m2);
  const by_wind = psychrometric_kpa_c * (900 / (mean_c + 273)) * wind_m_s * (saturation_kpa - vapour_kpa);
  return (by_sun + by_wind) / (slope + psychrometric_kpa_c * (1 + 0.34 * wind_m_s));
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
