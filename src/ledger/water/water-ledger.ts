import { type Day, daysBetween } from '../../day.ts';
import type { Garden, Station } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { thresholdsOf } from '../../garden/weather-settings.ts';
import type { RoofRecord } from '../../records/roof.ts';
import type { SoilRecord } from '../../records/soil.ts';
import type { CropYear } from '../year/crop-year.ts';
import { type CropPlan, cropPlan } from './crop-plan.ts';
import { rootZoneOf } from './crop-water.ts';
import { coming, planStart } from './plan-start.ts';
import { type SeasonWater, seasonWater } from './season-water.ts';
import { type TankFacts, tankFacts } from './tank-facts.ts';
import { type TankPlan, tankPlan } from './tank-plan.ts';
import { tankSpots } from './tank-spots.ts';
import { type ThirstRecord, thirstRecord } from './thirst-record.ts';

/** Figures of soils and roofs that come with the program. */
export interface GroundFacts {
  readonly soils: readonly SoilRecord[];
  readonly roofs: readonly RoofRecord[];
}

export const NO_GROUND_FACTS: GroundFacts = { soils: [], roofs: [] };

/** Everything the book knows of water: looked back on, and ahead. */
export interface WaterLedger {
  /** Null without a station, a place or a thermometer. */
  readonly thirst: ThirstRecord | null;
  /** Every season, the first first. */
  readonly seasons: readonly SeasonWater[];
  /** Crops whose need can be reckoned ahead. */
  readonly crops: readonly CropPlan[];
  readonly tank: TankFacts | null;
  readonly tank_plan: TankPlan | null;
}

export function waterLedger(
  garden: Garden,
  today: Day,
  years: readonly CropYear[],
  { soils, roofs }: GroundFacts,
): WaterLedger {
  const means = { station: ownStation(garden), thirst: thirstRecord(garden), tank: tankFacts(garden, roofs), soils };
  const { station, thirst, tank } = means;
  const seasons = garden.seasons.map((season) => seasonWater(garden, season, today, means));
  const past = seasons.flatMap(({ season, spots }) => spots.map(({ water }) => ({ season, water })));
  const ofCrop = (id: string) => past.filter(({ water }) => water.crop.id === id);
  const crops = thirst
    ? years.flatMap((year) => cropPlan(garden, year, ofCrop(year.crop.id), thirst, soils) ?? [])
    : [];
  const tank_plan =
    station && thirst && tank ? planOf(garden, today, seasons, coming(crops, today), tank, station, thirst) : null;
  return { thirst, seasons, crops, tank, tank_plan };
}

function planOf(
  garden: Garden,
  today: Day,
  seasons: readonly SeasonWater[],
  crops: readonly CropPlan[],
  tank: TankFacts,
  station: Station,
  thirst: ThirstRecord,
): TankPlan | null {
  const { soaking_day_mm } = thresholdsOf(garden.about);
  const start = planStart(garden, today, seasons, crops, tank, station);
  if (!start) return null;
  const planned = crops.flatMap(({ crop, growing }) => {
    const spots = tankSpots(garden, seasons, crop.id);
    const starts_at = daysBetween(growing.planted, start.first) + 1;
    if (spots.length === 0) return [];
    const used_share = starts_at > 1 ? usedShare(seasons.at(-1)?.spots ?? [], spots) : 0;
    return [{ water: growing, mulch: growing.mulch, spots: spots.length, starts_at, used_share }];
  });
  return tankPlan(tank, station, thirst, soaking_day_mm, planned, start);
}

/** Of the roots’ water in some spots, the mean share that was gone at the end of the last day reckoned; 0 where none was. */
function usedShare(waters: SeasonWater['spots'], ids: readonly string[]): number {
  const shares = waters.flatMap(({ water }) => {
    const zone = rootZoneOf(water.water);
    const last = water.days.at(-1)?.step ?? null;
    return zone && last && ids.includes(water.spot.id) ? [last.end.root_mm / zone.taw_mm] : [];
  });
  return shares.length === 0 ? 0 : shares.reduce((sum, share) => sum + share, 0) / shares.length;
}
