import { type Stage, stageOn } from '../../agronomy/crop-coefficient.ts';
import { stepRootZone, type WaterState, type WaterStep } from '../../agronomy/root-zone.ts';
import { isOneDay } from '../../dated.ts';
import { addDays, type Day, daysBetween, earlierOf, laterOf } from '../../day.ts';
import type { Crop, Planting, Season, Spot, Station } from '../../garden/garden.ts';
import type { SoilRecord } from '../../records/soil.ts';
import { windowsOf } from '../weather/window.ts';
import { type CropStages, cropStages } from './crop-stages.ts';
import { type CropWater, leavesDrink, rootZoneOf, waterDay } from './crop-water.ts';
import type { Giving } from './given.ts';
import { mulchOn } from './mulch-on.ts';
import { type RainDay, rainDay } from './rain-day.ts';
import { spotGround } from './spot-ground.ts';
import type { ThirstDay, ThirstRecord } from './thirst-record.ts';

/** One day of a spot: what came, what was wanted, and what is left for its roots. */
export interface SpotDay {
  readonly day: Day;
  readonly stage: Stage;
  readonly thirst: ThirstDay;
  readonly rain: RainDay;
  readonly given_l: number;
  /** What its leaves and soil would have used with water enough, less what a mulch saves. */
  readonly wanted_l: number;
  /** Null where the soil's figures are not known, and with them no balance. */
  readonly step: WaterStep | null;
}

/** One planted spot through a season. */
export interface SpotWater {
  readonly spot: Spot;
  readonly crop: Crop;
  readonly plantings: readonly Planting[];
  readonly water: CropWater;
  readonly stages: CropStages;
  /** From the day of planting on. */
  readonly days: readonly SpotDay[];
  readonly givings: readonly Giving[];
}

/** What all spots of a garden share. */
export interface WaterPlace {
  readonly station: Station;
  readonly thirst: ThirstRecord;
  readonly soils: readonly SoilRecord[];
  /** A soaking day, mm. */
  readonly soaking_mm: number;
}

/** Roots were watered in when they were planted. */
export const FULL: WaterState = { root_mm: 0, top: { depletion_mm: 0, wetted_share: 1, drip: false } };

/**
 * A spot's water from its first planting to its last picking, or as long as its stages last, or the day of the book. Cans
 * come in the morning, before the plants drink. Null where ground, crop traits, stages or the thirst of some day are
 * unknown; a spot planted twice is reckoned by what was planted first.
 */
export function spotWater(
  place: WaterPlace,
  season: Season,
  last: Day,
  plantings: readonly Planting[],
  givings: readonly Giving[],
): SpotWater | null {
  const started = startOf(place, season, plantings);
  if (!started || started.planted > last) return null;
  const { main, crop, planted, water, stages } = started;
  const ends = earlierOf(last, laterOf(addDays(planted, stages.days - 1), stages.last_pick ?? planted));
  const zone = rootZoneOf(water);
  const mulch = mulchOn(season, main.spot, crop);
  const weather = windowsOf(place.station)(planted, ends).days;
  const days: SpotDay[] = [];
  let state = FULL;
  for (let index = 0; index <= daysBetween(planted, ends); index++) {
    const day = addDays(planted, index);
    const thirst = place.thirst.on(day);
    if (!thirst) return null;
    const rain = rainDay(weather[index] ?? null, place.soaking_mm);
    const given = givings.filter((giving) => giving.day === day);
    const came = {
      eto_mm: thirst.eto_mm,
      rain_mm: rain.rain_mm,
      given_l: given.reduce((sum, { litres }) => sum + litres, 0),
      drip: given.some(({ drip }) => drip),
      mulch: mulch(day),
    };
    const asked = waterDay(water, index + 1, came);
    const step = zone && asked && stepRootZone(zone, state, asked, 'early');
    if (step) state = step.end;
    days.push({
      day,
      stage: stageOn(index + 1, stages.lengths),
      thirst,
      rain,
      given_l: came.given_l,
      wanted_l: step ? step.demand_mm * water.ground.root_m2 : leavesDrink(water, index + 1, came),
      step,
    });
  }
  return { spot: main.spot, crop, plantings, water, stages, days, givings };
}

function startOf({ thirst, soils }: WaterPlace, season: Season, plantings: readonly Planting[]) {
  const dated = plantings.filter(({ planted_on }) => isOneDay(planted_on));
  const planted = dated.flatMap(({ planted_on }) => planted_on.first ?? []).sort()[0];
  const main = dated.find(({ planted_on }) => planted_on.first === planted);
  const crop = main?.variety?.crop;
  if (!planted || !main || !crop?.water) return null;
  const ground = spotGround(main.spot, main, soils, 'high');
  const stages = cropStages(crop, season, plantings);
  if (!ground || !stages) return null;
  const climate = thirst.climate(planted, season.ends_on);
  const water: CropWater = { traits: crop.water, lengths: stages.lengths, climate, ground };
  return { main, crop, planted, water, stages };
}
