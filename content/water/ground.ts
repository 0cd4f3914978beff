import type { Crop, Garden } from '../../src/garden/garden.ts';

/** The ground a crop is watered on. */
export interface Ground {
  readonly area_m2: number;
  /** `spots`: the middle of this season’s spots of the crop; `room`: one plant, the middle of what others give it. */
  readonly from: 'spots' | 'room';
}

/** Its average spot of the latest season, else the room of one plant; null where neither is known. */
export function groundOf({ seasons }: Garden, crop: Crop): Ground | null {
  const spots = new Map(
    (seasons.at(-1)?.plantings ?? [])
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .map(({ spot }) => [spot.id, spot.share_m2] as const),
  );
  const shares = [...spots.values()].filter((share) => share !== null);
  if (shares.length > 0)
    return { area_m2: shares.reduce((sum, share) => sum + share, 0) / shares.length, from: 'spots' };
  const { room } = crop;
  return room && { area_m2: (room.plant_area_low_m2 + room.plant_area_high_m2) / 2, from: 'room' };
}
