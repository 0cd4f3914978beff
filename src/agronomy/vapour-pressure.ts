/**
 * How much water the air could hold and how much it holds, as pressure in kPa; temperatures in °C.
 * Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Eq. 11-19.
 */

/** The highest and the lowest temperature of a day. */
export interface AirExtremes {
  readonly tmax_c: number;
  readonly tmin_c: number;
}

/** The highest and the lowest relative humidity of a day, out of 100. */
export interface HumidityExtremes {
  readonly rh_max_pct: number;
  readonly rh_min_pct: number;
}

/**
 * The coefficient of a psychrometer by how air passes its wet bulb, kPa a °C and kPa of air: Eq. 16. Blown at about 5 m/s,
 * in natural air at about 1 m/s, or still indoors. The first is read in the paper, the other two are from memory.
 */
const PSYCHROMETER = { blown: 0.000662, natural: 0.0008, indoors: 0.0012 } as const;
export type Ventilation = keyof typeof PSYCHROMETER;

/** What the air holds at most at a temperature, e°(T): Eq. 11. Throws RangeError at -237.3 °C and below. */
export function saturationPressure(temperature_c: number): number {
  check('temperature_c', temperature_c, temperature_c > -237.3);
  return 0.6108 * Math.exp((17.27 * temperature_c) / (temperature_c + 237.3));
}

/** The mean of e° at the extremes, es: Eq. 12. More than e° at their mean, for the curve bends. Throws as above. */
export const meanSaturation = ({ tmax_c, tmin_c }: AirExtremes): number =>
  (saturationPressure(tmax_c) + saturationPressure(tmin_c)) / 2;

/** How steeply e° rises with the temperature, Δ, kPa a °C: Eq. 13. Throws as above. */
export const saturationSlope = (temperature_c: number): number =>
  (4098 * saturationPressure(temperature_c)) / (temperature_c + 237.3) ** 2;

/** What the air holds, ea, by its dew point: Eq. 14. Throws as above. */
export const vapourAtDew = (dew_c: number): number => saturationPressure(dew_c);

/**
 * What the air holds by a dry and a wet bulb and the air pressure in kPa: Eq. 15 and 16.
 * Throws RangeError for a wet bulb above the dry one, or so far below it that no vapour would be left.
 */
export function vapourByWetBulb(dry_c: number, wet_c: number, pressure_kpa: number, ventilation: Ventilation): number {
  check('dry_c', dry_c, true);
  check('wet_c', wet_c, wet_c <= dry_c);
  check('pressure_kpa', pressure_kpa, pressure_kpa > 0);
  const vapour = saturationPressure(wet_c) - PSYCHROMETER[ventilation] * pressure_kpa * (dry_c - wet_c);
  check('wet_c', wet_c, vapour >= 0);
  return vapour;
}

/**
 * What the air holds by both extremes of humidity: Eq. 17. Throws RangeError for a humidity outside 0 to 100, or a lowest
 * above the highest.
 */
export function vapourByHumidity(
  { tmax_c, tmin_c }: AirExtremes,
  { rh_max_pct, rh_min_pct }: HumidityExtremes,
): number {
  check('rh_max_pct', rh_max_pct, isHumidity(rh_max_pct));
  check('rh_min_pct', rh_min_pct, isHumidity(rh_min_pct) && rh_min_pct <= rh_max_pct);
  return (saturationPressure(tmin_c) * rh_max_pct + saturationPressure(tmax_c) * rh_min_pct) / 200;
}

/** By the highest humidity alone, met at the lowest temperature: Eq. 18. Throws RangeError for a humidity outside 0 to 100. */
export function vapourByHighestHumidity(tmin_c: number, rh_max_pct: number): number {
  check('rh_max_pct', rh_max_pct, isHumidity(rh_max_pct));
  return (saturationPressure(tmin_c) * rh_max_pct) / 100;
}

/** By the mean humidity, for want of the extremes: Eq. 19, which gives more than Eq. 17. Throws as above. */
export function vapourByMeanHumidity(air: AirExtremes, rh_mean_pct: number): number {
  check('rh_mean_pct', rh_mean_pct, isHumidity(rh_mean_pct));
  return (meanSaturation(air) * rh_mean_pct) / 100;
}

/**
 * By the lowest humidity alone, for which the paper has no equation: the half of Eq. 17 that belongs to the afternoon, but
 * no more than the air could hold at its coldest, for what is above that had fallen as dew by dawn. A decision of the makers.
 * Read while the afternoon is hotter, the same humidity is more water. Throws as above.
 */
export function vapourByLowestHumidity({ tmax_c, tmin_c }: AirExtremes, rh_min_pct: number): number {
  check('rh_min_pct', rh_min_pct, isHumidity(rh_min_pct));
  return Math.min((saturationPressure(tmax_c) * rh_min_pct) / 100, saturationPressure(tmin_c));
}

const isHumidity = (value: number): boolean => value >= 0 && value <= 100;

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
