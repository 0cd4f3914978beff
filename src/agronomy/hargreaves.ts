/** The thirst of the air from its temperature alone. */
import type { DayExtremes } from './degree-days.ts';

/**
 * Reference evapotranspiration, mm a day: 0.0023 (Tmean + 17.8) (Tmax - Tmin)^0.5 Ra, with Ra in mm a day. Hargreaves
 * & Samani 1985, as Eq. 52 of FAO Irrigation and Drainage Paper 56 (Allen et al. 1998). Temperatures in °C; Tmean is the
 * mean of the extremes. For want of sun, wind and damp it is rough: FAO-56 asks that it be compared with a station that
 * measures them, and says it runs low in wind above 3 m/s and high in damp air. Zero where the mean is below -17.8 °C.
 * A day with an extreme missing has no value: the caller leaves it out and says so.
 * Throws RangeError for a number that is not finite, tmin above tmax, or a negative Ra.
 */
export function hargreaves({ tmax, tmin }: DayExtremes, ra_mm: number): number {
  check('tmax', tmax, true);
  check('tmin', tmin, tmin <= tmax);
  check('ra_mm', ra_mm, ra_mm >= 0);
  return Math.max(0.0023 * ((tmax + tmin) / 2 + 17.8) * Math.sqrt(tmax - tmin) * ra_mm, 0);
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
