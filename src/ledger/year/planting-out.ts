import { isOneDay } from '../../dated.ts';
import { addDays, type Day, yearOf } from '../../day.ts';
import type { Crop, Garden } from '../../garden/garden.ts';
import { isSouthern } from '../../garden/hemisphere.ts';
import { ownStation } from '../../garden/own-station.ts';
import { FEWEST_YEARS } from '../weather/long-record.ts';
import { inYears, type PlanSeason } from './plan-season.ts';
import { thawStart, warmUps } from './warm-up.ts';

/** When a crop goes out, as dates of the season that is planned, and how that is known. */
export interface PlantingOut {
  /** The usual day: the middle one. */
  readonly day: Day;
  readonly first: Day;
  readonly last: Day;
  /** `planted`: this season's own plantings; `seasons`: earlier ones; `warm-up`: the station's record. */
  readonly from: 'planted' | 'seasons' | 'warm-up';
  /** Plantings, seasons or years under it. */
  readonly count: number;
}

/** This season's plantings where there are some, else those of earlier seasons, else the warm-up of the record; null without any. */
export function plantingOutOf(garden: Garden, plan: PlanSeason | null, crop: Crop): PlantingOut | null {
  if (plan === null) return null;
  return ownPlantings(garden, plan, crop) ?? warmUp(garden, plan, crop);
}

function ownPlantings({ seasons }: Garden, plan: PlanSeason, crop: Crop): PlantingOut | null {
  const bySeason = seasons.map((season) => {
    const years = yearOf(plan.starts_on) - yearOf(season.starts_on);
    return season.plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap(({ planted_on }) => (isOneDay(planted_on) ? [inYears(planted_on.first, years)] : []));
  });
  const own = plan.running ? (bySeason.at(-1) ?? []) : [];
  if (own.length > 0) return spread(own, 'planted', own.length);
  const told = bySeason.filter((days) => days.length > 0);
  return told.length === 0 ? null : spread(told.flat(), 'seasons', told.length);
}

function warmUp(garden: Garden, plan: PlanSeason, { sowing }: Crop): PlantingOut | null {
  const station = ownStation(garden);
  if (!station || !sowing) return null;
  const start = thawStart(plan.starts_on, isSouthern(garden));
  const offsets = warmUps(station, start, sowing.plant_out_soil_c);
  if (offsets.length < FEWEST_YEARS) return null;
  const days = offsets.map((days) => addDays(start, days));
  return spread(days, 'warm-up', days.length);
}

function spread(days: readonly Day[], from: PlantingOut['from'], count: number): PlantingOut | null {
  const sorted = [...days].sort();
  const [first, last] = [sorted[0], sorted.at(-1)];
  const middle = sorted[Math.floor((sorted.length - 1) / 2)];
  return first && last && middle ? { day: middle, first, last, from, count } : null;
}
