/**
 * The sun's energy that reaches the ground, MJ a m² a day, from what reaches the top of the air (Ra, same unit).
 * Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Eq. 35-37 and 50.
 */
import type { AirExtremes } from './vapour-pressure.ts';

/** The share of Ra under full cloud, and what a day of full sun adds: Eq. 35, for want of local ones. */
const CLOUDED = 0.25;
const SUNNY = 0.5;
/** Eq. 50, a °C to the power of one half: where land rules the weather, and on or near the coast of a large land. */
const SWING_INLAND = 0.16;
const SWING_COAST = 0.19;

/**
 * Solar radiation Rs by the hours of bright sun: Eq. 35. A recorder may show more than the day is long: that counts as the
 * whole day. Where the sun does not rise there is none.
 * Throws RangeError for hours outside 0 to 24, or a negative Ra.
 */
export function solarBySunshine(sun_h: number, daylight_h: number, ra_mj_m2: number): number {
  check('sun_h', sun_h, sun_h >= 0 && sun_h <= 24);
  check('daylight_h', daylight_h, daylight_h >= 0 && daylight_h <= 24);
  check('ra_mj_m2', ra_mj_m2, ra_mj_m2 >= 0);
  const share = daylight_h === 0 ? 0 : Math.min(sun_h / daylight_h, 1);
  return (CLOUDED + SUNNY * share) * ra_mj_m2;
}

/** Rs of a day without a cloud, Rso, at a height above the sea: Eq. 37, at the sea Eq. 36. Throws RangeError for a negative Ra. */
export function clearSky(ra_mj_m2: number, elevation_m: number): number {
  check('ra_mj_m2', ra_mj_m2, ra_mj_m2 >= 0);
  check('elevation_m', elevation_m, true);
  return (CLOUDED + SUNNY + 2e-5 * elevation_m) * ra_mj_m2;
}

/**
 * Rs by the day's swing of temperature, for clear days swing more: kRs √(Tmax - Tmin) Ra, never above a clear sky's: Eq. 50.
 * Temperatures in °C. Not for islands, where the sea holds the temperature under any sky.
 * Throws RangeError for tmin above tmax or a negative Ra.
 */
export function solarBySwing(
  { tmax_c, tmin_c }: AirExtremes,
  ra_mj_m2: number,
  elevation_m: number,
  coast: boolean,
): number {
  check('tmax_c', tmax_c, true);
  check('tmin_c', tmin_c, tmin_c <= tmax_c);
  const swing = (coast ? SWING_COAST : SWING_INLAND) * Math.sqrt(tmax_c - tmin_c) * ra_mj_m2;
  return Math.min(swing, clearSky(ra_mj_m2, elevation_m));
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
