/**
 * The weight of the air at a height above the sea, and the constant that follows from it for drying.
 * Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Eq. 7 and 8.
 */

/**
 * Atmospheric pressure P, kPa, of a place by its elevation, m above the sea, at 20 °C: Eq. 7.
 * Throws RangeError outside -500 to 9000 m, beyond which nobody gardens.
 */
export function airPressure(elevation_m: number): number {
  check('elevation_m', elevation_m, elevation_m >= -500 && elevation_m <= 9000);
  return 101.3 * ((293 - 0.0065 * elevation_m) / 293) ** 5.26;
}

/** The psychrometric constant γ, kPa a °C, from the pressure in kPa: Eq. 8. Throws RangeError for a pressure not above 0. */
export function psychrometricConstant(pressure_kpa: number): number {
  check('pressure_kpa', pressure_kpa, pressure_kpa > 0);
  return 0.665e-3 * pressure_kpa;
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
