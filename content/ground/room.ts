import type { Facts } from '../../src/book/chapter.ts';
import type { Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Planting, Season } from '../../src/garden/garden.ts';
import { naturally } from '../../src/natural-order.ts';

/** Plantings of one crop alike in room, held against what sources give a plant. */
export interface RoomLine {
  readonly crops: string;
  readonly spots: readonly string[];
  readonly share_m2: number;
  readonly plants: number;
  /** Plants that fit at the widest and at the closest planting of the sources; null where the crop's file gives none. */
  readonly fits: { readonly least: number; readonly most: number } | null;
  /** More plants than fit at the closest planting of the sources. */
  readonly tight: boolean;
  /** One for each planting of the line. */
  readonly figures: readonly Figure[];
}

/** Plantings of a season by crop, printed area and plants; those without an area or a crop are left out. */
export function roomLines({ garden, ledger, format }: Facts, season: Season | null): RoomLine[] {
  const lines = new Map<string, RoomLine>();
  const plantings = (season?.plantings ?? []).toSorted((a, b) => naturally(a.spot.id, b.spot.id));
  for (const planting of plantings) {
    const { spot, variety, plants_set } = planting;
    if (!season || !variety || spot.share_m2 === null || plants_set < 1) continue;
    const key = [variety.crop.id, format.digits(spot.share_m2, 'm2'), plants_set].join(' ');
    const known = lines.get(key);
    const { room } = variety.crop;
    const fits = room && {
      least: Math.floor(spot.share_m2 / room.plant_area_high_m2),
      most: Math.floor(spot.share_m2 / room.plant_area_low_m2),
    };
    lines.set(key, {
      crops: cropNames(variety.crop, garden.about.locale).many,
      spots: [...(known?.spots ?? []), spot.id],
      share_m2: known?.share_m2 ?? spot.share_m2,
      plants: plants_set,
      fits: known ? known.fits : fits,
      tight: known ? known.tight : fits !== null && plants_set > fits.most,
      figures: [...(known?.figures ?? []), figureOf(season, planting, spot.share_m2, ledger)],
    });
  }
  return [...lines.values()];
}

const figureOf = (
  { slug }: Season,
  { id, key, plants_set }: Planting,
  share_m2: number,
  { bases }: Facts['ledger'],
): Figure => ({
  id: `ground.${slug}.${id}.m2_per_plant`,
  value: share_m2 / plants_set,
  unit: 'm2',
  interval: null,
  n: plants_set,
  replicate: null,
  reach: 'what-happened',
  method: 'room-per-plant',
  source: null,
  basis: bases.of([key]),
  reason: null,
});
