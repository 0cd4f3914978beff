import type { Day } from '../day.ts';
import type { CropRecord } from '../records/crop.ts';
import type { FruitRecord } from '../records/fruit.ts';
import type { GardenRecord, SpotRecord } from '../records/garden.ts';
import type { LotRecord } from '../records/lot.ts';
import type { PersonRecord } from '../records/person.ts';
import type { PickingRecord } from '../records/picking.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { VarietyRecord } from '../records/variety.ts';
import type { VisitRecord } from '../records/visit.ts';
import type { WeatherDayRecord } from '../records/weather-day.ts';
import type { Events } from './event.ts';
import type { Keyed } from './keyed.ts';

export type Crop = CropRecord;
export type Person = PersonRecord;
export type Fruit = Keyed<FruitRecord>;
export type Picking = Keyed<PickingRecord>;
export type Visit = Keyed<VisitRecord>;
export type WeatherDay = Keyed<WeatherDayRecord>;
export type Lot = Keyed<LotRecord>;
export type Variety = Omit<VarietyRecord, 'crop'> & { readonly crop: Crop };

export type Spot = SpotRecord & {
  /** Its own area, else its bed's area divided among the bed's spots; null when neither is known. */
  readonly share_m2: number | null;
  /** Its own soil, else its bed's; null when neither is told. */
  readonly texture: SpotRecord['soil'];
};

export type Planting = Keyed<Omit<PlantingRecord, 'spot' | 'variety'>> & {
  readonly spot: Spot;
  /** Null when the variety is unknown. */
  readonly variety: Variety | null;
  readonly fruits: readonly Fruit[];
  readonly pickings: readonly Picking[];
};

export interface Season {
  readonly slug: string;
  readonly label: string;
  readonly starts_on: Day;
  readonly ends_on: Day;
  /** By id. */
  readonly plantings: readonly Planting[];
  /** By day, then id. */
  readonly visits: readonly Visit[];
  readonly events: Events;
}

export interface Station {
  readonly id: string;
  /** By day, each day once. */
  readonly days: readonly WeatherDay[];
}

/** All records of one garden, linked. Lists are in a fixed order whatever the order of files and rows. */
export interface Garden {
  readonly about: GardenRecord;
  /** By code. What of them may be printed is for `consent` to say. */
  readonly people: readonly Person[];
  readonly crops: ReadonlyMap<string, Crop>;
  /** In the alphabet's order of their names. */
  readonly varieties: readonly Variety[];
  /** Seed lots, by id. */
  readonly lots: readonly Lot[];
  readonly spots: readonly Spot[];
  /** By their first day. */
  readonly seasons: readonly Season[];
  readonly stations: readonly Station[];
}
