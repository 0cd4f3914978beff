/**
 * The sun's energy above the air on a level place, and the length of the day: functions of latitude and season alone.
 * Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Eq. 21-25 and 34.
 */

/** MJ a m² a minute. */
const SOLAR_CONSTANT = 0.082;
const MINUTES_A_DAY = 24 * 60;
/** One over the latent heat of water, 2.45 MJ a kg: FAO-56, Eq. 20. */
const MM_PER_MJ_M2 = 0.408;

interface Sun {
  /** Relative nearness of the sun, about 1. */
  readonly nearness: number;
  /** Latitude, declination and the hour angle of sunset, rad. */
  readonly latitude: number;
  readonly declination: number;
  readonly sunset: number;
}

/**
 * Extraterrestrial radiation Ra, MJ a m² a day. Latitude in degrees, north positive; day of the year 1 to 366.
 * Beyond the polar circles the hour angle of sunset is held between 0 (the sun does not rise, Ra = 0) and π (it does not
 * set). FAO-56 warns that beyond 55° the winter values, right in themselves, are of little use for what is built on them.
 * Throws RangeError for a latitude beyond 90°, or a day that is not whole from 1 to 366.
 */
export function extraterrestrialRadiation(latitude_deg: number, day_of_year: number): number {
  const { nearness, latitude, declination, sunset } = sunAt(latitude_deg, day_of_year);
  const height =
    sunset * Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return (MINUTES_A_DAY / Math.PI) * SOLAR_CONSTANT * nearness * height;
}

/** The same as water it could evaporate, mm a day: Eq. 20. */
export const radiationAsWater = (ra_mj_m2: number): number => MM_PER_MJ_M2 * ra_mj_m2;

/** Hours from sunrise to sunset, N: Eq. 34. 0 and 24 where the sun does not rise or set. Throws as above. */
export function daylightHours(latitude_deg: number, day_of_year: number): number {
  return (24 / Math.PI) * sunAt(latitude_deg, day_of_year).sunset;
}

function sunAt(latitude_deg: number, day_of_year: number): Sun {
  check('latitude_deg', latitude_deg, Math.abs(latitude_deg) <= 90);
  check('day_of_year', day_of_year, Number.isInteger(day_of_year) && day_of_year >= 1 && day_of_year <= 366);
  const angle = (2 * Math.PI * day_of_year) / 365;
  const latitude = (Math.PI / 180) * latitude_deg;
  const declination = 0.409 * Math.sin(angle - 1.39);
  const cosine = -Math.tan(latitude) * Math.tan(declination);
  return {
    nearness: 1 + 0.033 * Math.cos(angle),
    latitude,
    declination,
    sunset: Math.acos(Math.min(Math.max(cosine, -1), 1)),
  };
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
