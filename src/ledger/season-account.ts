import type { Planting, Season } from '../garden/garden.ts';
import type { Bases } from './bases.ts';
import { type Harvest, harvestOf } from './harvest.ts';

/** What every figure of one season's yield is made from; each planting's harvest is reckoned once. */
export interface SeasonAccount {
  readonly season: Season;
  /** Stem of the season's figure ids, for instance `yield.2025`. */
  readonly stem: string;
  /** Null for a planting nobody wrote of. */
  readonly harvestOf: (planting: Planting) => Harvest | null;
  readonly bases: Bases;
}

export function openAccount(season: Season, bases: Bases): SeasonAccount {
  const harvests = new Map(season.plantings.map((planting) => [planting, harvestOf(planting)]));
  return { season, stem: `yield.${season.slug}`, harvestOf: (planting) => harvests.get(planting) ?? null, bases };
}
