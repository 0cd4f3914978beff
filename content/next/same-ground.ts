import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop, Planting, Season } from '../../src/garden/garden.ts';
import { plantedSeasons } from '../../src/garden/last-planted.ts';
import { naturally } from '../../src/natural-order.ts';

/** A spot of the plan: what stood in it, the last season and the one before. */
export interface SpotLine {
  readonly spot: string;
  /** Names of the varieties; `unknown` where nobody knows; empty where nothing stood. */
  readonly last: readonly string[];
  readonly before: readonly string[];
  /** The crop that stood there in both seasons; null where none did. */
  readonly again: string | null;
}

export interface SameGround {
  readonly last: string;
  /** Null with one season planted. */
  readonly before: string | null;
  /** Every spot of the garden, in natural order. */
  readonly spots: readonly SpotLine[];
  /** Spots with the same crop two seasons running. */
  readonly count: Figure;
}

/** The last two planted seasons, spot by spot; null before the first. */
export function sameGround({ garden, ledger }: Facts): SameGround | null {
  const planted = plantedSeasons(garden);
  const [last, before] = [planted.at(-1), planted.at(-2) ?? null];
  if (!last) return null;
  const many = (crop: Crop): string => cropNames(crop, garden.about.locale).many;
  const spots = [...garden.spots]
    .sort((a, b) => naturally(a.id, b.id))
    .map(({ id }) => {
      const [now, then] = [plantingsIn(last, id), plantingsIn(before, id)];
      const shared = cropsIn(now).find((crop) => cropsIn(then).some((other) => other.id === crop.id));
      return { spot: id, last: namesIn(now), before: namesIn(then), again: shared ? many(shared) : null };
    });
  const twice = spots.filter(({ again }) => again !== null).map(({ spot }) => spot);
  const keys = [last, before].flatMap((season) =>
    twice.flatMap((spot) => plantingsIn(season, spot).map(({ key }) => key)),
  );
  return {
    last: last.label,
    before: before?.label ?? null,
    spots,
    count: happened({
      id: `next.${last.slug}.spots_again`,
      value: twice.length,
      unit: 'spots',
      n: spots.length,
      method: 'plain-count',
      basis: ledger.bases.of(keys),
      reason: null,
    }),
  };
}

const plantingsIn = (season: Season | null, spotId: string): Planting[] =>
  season?.plantings.filter(({ spot }) => spot.id === spotId) ?? [];

const cropsIn = (plantings: readonly Planting[]): Crop[] => plantings.flatMap(({ variety }) => variety?.crop ?? []);

const namesIn = (plantings: readonly Planting[]): string[] => [
  ...new Set(plantings.map(({ variety }) => variety?.name ?? 'unknown')),
];
