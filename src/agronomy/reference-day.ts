/**
 * The thirst of the air on one day from whatever a station read of it. What was not read is estimated as FAO Irrigation and
 * Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998) has it for missing data, Eq. 47-50, and is named beside the result.
 */
import { airPressure, psychrometricConstant } from './air-pressure.ts';
import { daylightHours, extraterrestrialRadiation, radiationAsWater } from './extraterrestrial-radiation.ts';
import { hargreaves } from './hargreaves.ts';
import { netRadiation } from './net-radiation.ts';
import { penmanMonteith } from './penman-monteith.ts';
import { SOIL_HEAT_OF_A_DAY } from './soil-heat.ts';
import { clearSky, solarBySunshine, solarBySwing } from './solar-radiation.ts';
import {
  type AirExtremes,
  meanSaturation,
  vapourAtDew,
  vapourByHighestHumidity,
  vapourByHumidity,
  vapourByLowestHumidity,
} from './vapour-pressure.ts';
import { windAtTwoMetres } from './wind-height.ts';

/** What was read at a station on one day; null is not read. */
export interface DayReadings {
  readonly tmax_c: number | null;
  readonly tmin_c: number | null;
  readonly dew_c: number | null;
  readonly rh_max_pct: number | null;
  readonly rh_min_pct: number | null;
  /** The mean of the day, at the height the site names. */
  readonly wind_m_s: number | null;
  readonly sun_h: number | null;
  readonly solar_mj_m2: number | null;
}

export interface Site {
  /** North positive. */
  readonly latitude_deg: number;
  readonly elevation_m: number;
  readonly wind_height_m: number;
  /** On or near the coast of a large land. */
  readonly coast: boolean;
  /** Where the air is dry for want of rain, so that nights end without dew. */
  readonly dry_air: boolean;
}

export type ReferenceMethod = 'penman-monteith' | 'hargreaves';
const ESTIMATES = ['damp', 'sun', 'wind'] as const;
type Estimate = (typeof ESTIMATES)[number];

export interface ReferenceDay {
  /** Reference evapotranspiration, mm, never below zero. */
  readonly eto_mm: number;
  readonly method: ReferenceMethod;
  /** What was not read, in this order. */
  readonly estimated: readonly Estimate[];
}

/** Light wind, the mean of the paper's 2000 stations: for want of a reading. */
const USUAL_WIND_M_S = 2;
/** Air moves a little even where a cup stands still: the paper's floor for Eq. 6. */
const LEAST_WIND_M_S = 0.5;
/** How far the dew point stays below the lowest temperature in dry air: footnote on page 124. */
const DRY_AIR_C = 2;

/**
 * Reference evapotranspiration of a day. By Eq. 6 as soon as damp, sun or wind was read beside both temperatures, with no
 * heat going into the ground; by Hargreaves (Eq. 52) where the temperatures stand alone. Of several readings of damp the
 * dew point comes first, then both humidities, then the highest alone, then the lowest alone; of sun, the radiation before the
 * hours. Null where a temperature is missing, where the lowest is above the highest (they may be filed a day apart), or where
 * the two humidities that would be used are crossed in the same way.
 * Throws RangeError for a reading or a site that cannot be, and a day that is not whole from 1 to 366.
 */
export function referenceDay(readings: DayReadings, site: Site, day_of_year: number): ReferenceDay | null {
  const { tmax_c, tmin_c } = readings;
  if (tmax_c === null || tmin_c === null || tmin_c > tmax_c || isCrossed(readings)) return null;
  const air = { tmax_c, tmin_c };
  const ra_mj_m2 = extraterrestrialRadiation(site.latitude_deg, day_of_year);
  const estimated = ESTIMATES.filter((what) => !wasRead(readings, what));
  if (estimated.length === ESTIMATES.length) {
    const eto_mm = hargreaves({ tmax: tmax_c, tmin: tmin_c }, radiationAsWater(ra_mj_m2));
    return { eto_mm, method: 'hargreaves', estimated };
  }
  const saturation_kpa = meanSaturation(air);
  // A dew point read once may lie above the day's mean: the air is then full, and no fuller.
  const vapour_kpa = Math.min(vapour(readings, air, site), saturation_kpa);
  const clear_mj_m2 = clearSky(ra_mj_m2, site.elevation_m);
  const solar_mj_m2 = solar(readings, air, site, ra_mj_m2, day_of_year);
  const eto_mm = penmanMonteith({
    mean_c: (tmax_c + tmin_c) / 2,
    net_radiation_mj_m2: netRadiation(air, vapour_kpa, { solar_mj_m2, clear_mj_m2 }),
    soil_heat_mj_m2: SOIL_HEAT_OF_A_DAY,
    wind_m_s: wind(readings, site),
    saturation_kpa,
    vapour_kpa,
    psychrometric_kpa_c: psychrometricConstant(airPressure(site.elevation_m)),
  });
  return { eto_mm: withoutDewfall(eto_mm), method: 'penman-monteith', estimated };
}

/** Eq. 6 falls below zero where dew settles; what the air gives is no thirst. */
const withoutDewfall = (eto_mm: number): number => Math.max(eto_mm, 0);

function isCrossed({ dew_c, rh_max_pct, rh_min_pct }: DayReadings): boolean {
  return dew_c === null && rh_max_pct !== null && rh_min_pct !== null && rh_min_pct > rh_max_pct;
}

function wasRead(readings: DayReadings, what: Estimate): boolean {
  if (what === 'damp') return (readings.dew_c ?? readings.rh_max_pct ?? readings.rh_min_pct) !== null;
  return (what === 'sun' ? (readings.solar_mj_m2 ?? readings.sun_h) : readings.wind_m_s) !== null;
}

/** kPa. */
function vapour({ dew_c, rh_max_pct, rh_min_pct }: DayReadings, air: AirExtremes, { dry_air }: Site): number {
  if (dew_c !== null) return vapourAtDew(dew_c);
  if (rh_max_pct !== null && rh_min_pct !== null) return vapourByHumidity(air, { rh_max_pct, rh_min_pct });
  if (rh_max_pct !== null) return vapourByHighestHumidity(air.tmin_c, rh_max_pct);
  if (rh_min_pct !== null) return vapourByLowestHumidity(air, rh_min_pct);
  return vapourAtDew(air.tmin_c - (dry_air ? DRY_AIR_C : 0));
}

/** MJ a m². */
function solar(readings: DayReadings, air: AirExtremes, site: Site, ra_mj_m2: number, day_of_year: number): number {
  if (readings.solar_mj_m2 !== null) return readings.solar_mj_m2;
  if (readings.sun_h === null) return solarBySwing(air, ra_mj_m2, site.elevation_m, site.coast);
  return solarBySunshine(readings.sun_h, daylightHours(site.latitude_deg, day_of_year), ra_mj_m2);
}

/** m/s, 2 m above the ground. */
function wind({ wind_m_s }: DayReadings, { wind_height_m }: Site): number {
  if (wind_m_s === null) return USUAL_WIND_M_S;
  return Math.max(windAtTwoMetres(wind_m_s, wind_height_m), LEAST_WIND_M_S);
}
