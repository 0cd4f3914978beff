import type { Crop, Garden } from '../../garden/garden.ts';
import { lastPlanted } from '../../garden/last-planted.ts';
import type { SoilRecord } from '../../records/soil.ts';
import { type SpotGround, spotGround, storeOf } from './spot-ground.ts';

/** The average spot of a crop in the season last planted, or the room of one plant. */
export interface UsualGround extends SpotGround {
  /** Spots under the average; 0 for the room of one plant. */
  readonly spots: number;
}

/** Null where neither spots nor the crop's file tell any ground. */
export function usualGround(garden: Garden, crop: Crop, soils: readonly SoilRecord[]): UsualGround | null {
  const plantings = (lastPlanted(garden)?.plantings ?? []).filter(({ variety }) => variety?.crop.id === crop.id);
  const grounds = plantings.flatMap((planting) => spotGround(planting.spot, planting, soils, 'low') ?? []);
  return grounds.length > 0 ? averageOf(grounds) : roomOf(crop, soils);
}

function averageOf(grounds: readonly SpotGround[]): UsualGround {
  const mean = (of: (ground: SpotGround) => number): number =>
    grounds.reduce((sum, ground) => sum + of(ground), 0) / grounds.length;
  const bowls = grounds.flatMap(({ bowl_m2 }) => bowl_m2 ?? []);
  const stores = grounds.flatMap(({ available_mm }) => available_mm ?? []);
  return {
    spots: grounds.length,
    canopy_m2: mean(({ canopy_m2 }) => canopy_m2),
    canopy_from: grounds[0]?.canopy_from ?? 'spot',
    root_m2: mean(({ root_m2 }) => root_m2),
    root_depth_m: mean(({ root_depth_m }) => root_depth_m),
    bowl_m2: bowls.length === 0 ? null : bowls.reduce((sum, bowl) => sum + bowl, 0) / bowls.length,
    available_mm:
      stores.length === 0
        ? null
        : {
            low: Math.min(...stores.map(({ low }) => low)),
            middle: stores.reduce((sum, { middle }) => sum + middle, 0) / stores.length,
            high: Math.max(...stores.map(({ high }) => high)),
          },
    soil: grounds.find(({ soil }) => soil !== null)?.soil ?? null,
  };
}

function roomOf({ room, water }: Crop, soils: readonly SoilRecord[]): UsualGround | null {
  const soil = soils.find(({ id }) => id === 'unknown') ?? null;
  if (!room || !water) return null;
  const area_m2 = (room.plant_area_low_m2 + room.plant_area_high_m2) / 2;
  return {
    spots: 0,
    canopy_m2: area_m2,
    canopy_from: 'room',
    root_m2: area_m2,
    root_depth_m: water.root_low_m,
    bowl_m2: null,
    available_mm: soil && storeOf(soil, water.root_low_m),
    soil,
  };
}
