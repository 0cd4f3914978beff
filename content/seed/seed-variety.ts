import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Season, Variety } from '../../src/garden/garden.ts';
import { lastPlanted } from '../../src/garden/last-planted.ts';

/**
 * What may be kept. `alone`: comes true, and nothing else of its kind grew here. `closed`: flowers were closed by hand.
 * `itself`: its flower mostly takes its own pollen. `close-first`: others of its kind flower beside it. `trial`: nobody
 * knows whether it comes true. `none`: a hybrid.
 */
export type Worth = 'alone' | 'closed' | 'itself' | 'close-first' | 'trial' | 'none';

export interface SeedVariety {
  readonly id: string;
  readonly name: string;
  readonly crop: { readonly one: string; readonly many: string };
  readonly seed: Variety['seed'];
  /** Others of its crop that stood here in the same season, in the alphabet's order. */
  readonly beside: readonly string[];
  /** A planting whose variety, and so crop, nobody knows stood here too. */
  readonly unknown_beside: boolean;
  /** Flowers closed for seed; an entry without a number is one. */
  readonly closed: number;
  readonly worth: Worth;
  readonly plants: Figure;
  /** Plants to save from, as sources give them; null where they give none. */
  readonly parents: { readonly low: number; readonly high: number } | null;
}

/** The season whose seed is asked for: the last in which anything was planted. */
export const seedSeason = ({ garden }: Facts): Season | null => lastPlanted(garden);

/** Every variety of that season; before the first, every variety written down, as if all were grown together. */
export function seedVarieties(facts: Facts): SeedVariety[] {
  const season = seedSeason(facts);
  const { varieties } = facts.garden;
  const grown = season
    ? varieties.filter(({ id }) => season.plantings.some(({ variety }) => variety?.id === id))
    : varieties;
  return grown.map((variety) => seedVariety(facts, season, variety, grown));
}

function seedVariety(
  { garden, ledger }: Facts,
  season: Season | null,
  variety: Variety,
  grown: readonly Variety[],
): SeedVariety {
  const plantings = season?.plantings.filter((planting) => planting.variety?.id === variety.id) ?? [];
  const closed = (season?.events.flowering ?? [])
    .filter(({ what, planting }) => what === 'closed-for-seed' && plantings.some(({ id }) => id === planting))
    .reduce((sum, { flowers }) => sum + (flowers ?? 1), 0);
  const beside = grown.filter(({ id, crop }) => crop.id === variety.crop.id && id !== variety.id);
  const unknown_beside = season?.plantings.some((planting) => planting.variety === null) ?? false;
  const { crop } = variety;
  return {
    id: variety.id,
    name: variety.name,
    crop: cropNames(crop, garden.about.locale),
    seed: variety.seed,
    beside: beside.map(({ name }) => name),
    unknown_beside,
    closed,
    worth: worthOf(variety, closed, beside.length > 0 || unknown_beside),
    plants: happened({
      id: `seed.${season?.slug ?? 'none'}.${variety.id}.plants`,
      value: season ? plantings.reduce((sum, { plants_set }) => sum + plants_set, 0) : null,
      unit: 'plants',
      n: plantings.length,
      method: 'plain-count',
      basis: ledger.bases.of(plantings.map(({ key }) => key)),
      reason: season ? null : because('not-planted'),
    }),
    parents: crop.seed && { low: crop.seed.parents_low, high: crop.seed.parents_high },
  };
}

function worthOf({ seed, crop }: Variety, closed: number, has_others: boolean): Worth {
  if (seed === 'hybrid') return 'none';
  if (seed === 'unknown') return 'trial';
  if (closed > 0) return 'closed';
  if (crop.flowering?.carried_by === 'shaking') return 'itself';
  return has_others ? 'close-first' : 'alone';
}
