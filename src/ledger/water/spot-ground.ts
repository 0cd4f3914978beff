import type { Planting, Spot } from '../../garden/garden.ts';
import type { SoilRecord } from '../../records/soil.ts';

/** The least, the most and the middle of what sources give. */
export interface Spread {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** The ground of one planted spot: where its roots drink, how far its leaves reach, and what a can wets. */
export interface SpotGround {
  /** Ground under leaves when full grown. */
  readonly canopy_m2: number;
  readonly canopy_from: 'told' | 'bed' | 'room' | 'spot';
  /** Ground that holds the roots: the spot's share. */
  readonly root_m2: number;
  readonly root_depth_m: number;
  /** Ground that a watering wets: its bowl; null where nobody measured it. */
  readonly bowl_m2: number | null;
  /** Water its roots can draw when full, mm; null where the soil's figures are not known. */
  readonly available_mm: Spread | null;
  readonly soil: SoilRecord | null;
}

const MM_PER_M = 1000;
const CM_PER_M = 100;

/**
 * Null where nobody told how much ground the spot has, or its crop has no water traits. Of the depths that FAO-56, table
 * 22, gives for roots the low one is for watering by, the high one for what a crop left to itself could still reach.
 */
export function spotGround(
  spot: Spot,
  planting: Planting,
  soils: readonly SoilRecord[],
  reach: 'low' | 'high',
): SpotGround | null {
  const water = planting.variety?.crop.water ?? null;
  const root_m2 = spot.share_m2;
  if (!water || root_m2 === null) return null;
  const depth_m = spot.soil_depth_cm === null ? Number.POSITIVE_INFINITY : spot.soil_depth_cm / CM_PER_M;
  const root_depth_m = Math.min(reach === 'low' ? water.root_low_m : water.root_high_m, depth_m);
  const soil = soils.find(({ id }) => id === (spot.texture ?? 'unknown')) ?? null;
  return {
    ...canopyOf(spot, planting, root_m2),
    root_m2,
    root_depth_m,
    bowl_m2: spot.bowl_m2,
    available_mm: soil && storeOf(soil, root_depth_m),
    soil,
  };
}

/** Water that roots so deep can draw from a full soil of its texture, mm. */
export const storeOf = ({ available_low_m3_m3, available_high_m3_m3 }: SoilRecord, depth_m: number): Spread =>
  spread(MM_PER_M * depth_m * available_low_m3_m3, MM_PER_M * depth_m * available_high_m3_m3);

export const spread = (low: number, high: number): Spread => ({ low, middle: (low + high) / 2, high });

/** As told; in a bed the spot's share, for its neighbours want the rest; else the room its plants take, or the spot itself where that is more. */
function canopyOf(
  { canopy_m2, area_m2, bed }: Spot,
  { plants_set, variety }: Planting,
  share_m2: number,
): Pick<SpotGround, 'canopy_m2' | 'canopy_from'> {
  if (canopy_m2 !== null) return { canopy_m2, canopy_from: 'told' };
  if (bed !== null && area_m2 === null) return { canopy_m2: share_m2, canopy_from: 'bed' };
  const room_m2 = (variety?.crop.room?.plant_area_low_m2 ?? 0) * plants_set;
  return room_m2 > share_m2
    ? { canopy_m2: room_m2, canopy_from: 'room' }
    : { canopy_m2: share_m2, canopy_from: 'spot' };
}
