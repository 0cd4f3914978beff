import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import type { Crop, Planting } from '../../src/garden/garden.ts';
import { lastPlanted } from '../../src/garden/last-planted.ts';

/** The ground a plant takes, as sources give it, against what each had here. */
export interface RoomHere {
  readonly names: { readonly one: string; readonly many: string };
  /** Null where no source tells. */
  readonly room: Crop['room'];
  /** Ground of the last season's spots divided by the plants set in them. */
  readonly each: Figure;
  /** `less`: under the least that sources give; `more`: over the most. */
  readonly fits: 'less' | 'within' | 'more' | null;
}

export const roomsHere = ({ garden, ledger }: Facts): RoomHere[] => {
  const season = lastPlanted(garden);
  return cropsOf(garden.varieties).map((crop) => {
    const plantings = season?.plantings.filter(({ variety }) => variety?.crop.id === crop.id) ?? [];
    const value = groundEach(plantings);
    return {
      names: cropNames(crop, garden.about.locale),
      room: crop.room,
      each: happened({
        id: `variety.room-here.${crop.id}.m2_each`,
        value,
        unit: 'm2',
        n: plantings.length,
        method: 'ground-each',
        basis: ledger.bases.of(plantings.map(({ key }) => key)),
        reason: value === null ? because('area-missing') : null,
      }),
      fits: fitOf(value, crop.room),
    };
  });
};

/** Each planting's spot counts once for it. Null when the area of any spot, or a plant, is missing. */
function groundEach(plantings: readonly Planting[]): number | null {
  const plants = plantings.reduce((sum, { plants_set }) => sum + plants_set, 0);
  const areas = [...new Map(plantings.map(({ spot }) => [spot.id, spot.share_m2])).values()];
  if (plants === 0 || areas.some((area) => area === null)) return null;
  return areas.reduce<number>((sum, area) => sum + (area ?? 0), 0) / plants;
}

function fitOf(each: number | null, room: Crop['room']): RoomHere['fits'] {
  if (each === null || room === null) return null;
  if (each < room.plant_area_low_m2) return 'less';
  return each > room.plant_area_high_m2 ? 'more' : 'within';
}
