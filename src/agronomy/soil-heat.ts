/**
 * Heat that the ground takes up, G, MJ a m² a day, below zero when it gives; mean temperatures of the air by month, °C.
 * Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Eq. 42-44.
 * Throws RangeError for a temperature that is not finite.
 */

/** Of a day or ten days: so small beside the sun that it is left out, Eq. 42. */
export const SOIL_HEAT_OF_A_DAY = 0;

/** Of a month from the one before and the one after: Eq. 43. */
export function soilHeatOfMonth(before_c: number, after_c: number): number {
  check('before_c', before_c);
  check('after_c', after_c);
  return 0.07 * (after_c - before_c);
}

/** Of a month whose next one is not yet known, from the one before: Eq. 44. */
export function soilHeatSinceMonth(before_c: number, month_c: number): number {
  check('before_c', before_c);
  check('month_c', month_c);
  return 0.14 * (month_c - before_c);
}

function check(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
