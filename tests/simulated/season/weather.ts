import type { Chance } from '../chance.ts';
import { gamma } from '../gamma.ts';
import { normal } from '../normal.ts';
import { dayOf } from './calendar.ts';
import { type Climate, usualC, wetShare } from './climate.ts';

/** A day as it was, before anybody read a gauge. */
export interface WeatherDay {
  readonly day: number;
  readonly rain_mm: number;
  readonly tmax_c: number;
  readonly tmin_c: number;
}

/** The gauge stands from 1 March to 30 November. */
export const WEATHER_DAYS = 275;
const LEAST_HALF_RANGE_C = 1;

/** The weather of a year: temperatures remember the day before, wet days come in spells, rain is gamma. */
export function weatherOf(year: number, climate: Climate, chance: Chance): WeatherDay[] {
  const newYear = dayOf(year, 1, 1);
  const first = dayOf(year, 3, 1);
  const warmer = climate.year_sd_c * normal(chance);
  let anomaly = normal(chance);
  let wet = chance() < wetShare(climate);
  return Array.from({ length: WEATHER_DAYS }, (_, index) => {
    const day = first + index;
    if (index > 0) {
      const { persistence } = climate;
      anomaly = persistence * anomaly + Math.sqrt(1 - persistence ** 2) * normal(chance);
      wet = chance() < (wet ? climate.wet_after_wet : climate.wet_after_dry);
    }
    const mean = usualC(climate, day - newYear + 1) + warmer + climate.day_sd_c * anomaly;
    return { day, ...between(mean, halfRange(wet, climate, chance)), rain_mm: wet ? rain(climate, chance) : 0 };
  });
}

const between = (mean: number, half: number) => ({ tmax_c: mean + half, tmin_c: mean - half });

function halfRange(wet: boolean, { half_range_c: { dry, wet: narrow, sd } }: Climate, chance: Chance): number {
  return Math.max(LEAST_HALF_RANGE_C, (wet ? narrow : dry) + sd * normal(chance));
}

const rain = ({ rain: { shape, mean_mm } }: Climate, chance: Chance): number =>
  (gamma(chance, shape) * mean_mm) / shape;
