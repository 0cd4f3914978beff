/** The wind near the ground from the wind higher up. */

/** The height the equations ask for. */
const STANDARD_HEIGHT_M = 2;
/** The grass of the reference stands so high: below its tips the profile has no meaning. */
const GRASS_M = 0.12;

/**
 * Wind 2 m above short grass, m/s, from a reading at another height: u2 = uz 4.87 / ln(67.8 z - 5.42), Eq. 47 of FAO
 * Irrigation and Drainage Paper 56 (Allen et al. 1998). A reading at 2 m is left as it is: the rounded figures of the
 * equation would change it by 2 parts in 10,000. Throws RangeError for a wind below 0 or a height not above the grass.
 */
export function windAtTwoMetres(wind_m_s: number, height_m: number): number {
  check('wind_m_s', wind_m_s, wind_m_s >= 0);
  check('height_m', height_m, height_m > GRASS_M);
  return height_m === STANDARD_HEIGHT_M ? wind_m_s : (wind_m_s * 4.87) / Math.log(67.8 * height_m - 5.42);
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
