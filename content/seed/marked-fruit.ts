import { daysBetween } from '../../src/day.ts';
import type { Fruit, Planting, Season } from '../../src/garden/garden.ts';

/** A fruit somebody marked to keep seed of, and what the records say against it. */
export interface MarkedFruit {
  readonly id: string;
  /** Null where nobody knows. */
  readonly variety: string | null;
  readonly spot: string;
  /**
   * `hybrid`: it does not come true. `bitter`: it, or another of its plant, was. `sick`: wilt or rotten fruit was found in its spot. `young`: fewer days from set to
   * picking than its seed needs.
   */
  readonly against: 'hybrid' | 'bitter' | 'sick' | 'young' | null;
}

/** Found in a spot, these may have gone into its seed. */
const SICK = ['wilt', 'fruit-rot'];

export function markedFruits({ plantings, events }: Season): MarkedFruit[] {
  const sick = new Set(events.scouting.filter(({ found }) => SICK.includes(found)).flatMap(({ spots }) => spots ?? []));
  return plantings.flatMap((planting) =>
    planting.fruits
      .filter(({ cut }) => cut?.keep_seed === true)
      .map((fruit) => ({
        id: fruit.id,
        variety: planting.variety?.name ?? null,
        spot: planting.spot.id,
        against: againstOf(planting, fruit, sick),
      })),
  );
}

/** Spots that bore a bitter fruit, each once. */
export const bitterSpots = ({ plantings }: Season): string[] => [
  ...new Set(plantings.filter(({ fruits }) => fruits.some(isBitter)).map(({ spot }) => spot.id)),
];

const isBitter = ({ cut }: Fruit): boolean => cut?.bitter === true;

function againstOf(planting: Planting, fruit: Fruit, sick: ReadonlySet<string>): MarkedFruit['against'] {
  if (planting.variety?.seed === 'hybrid') return 'hybrid';
  if (planting.fruits.some((other) => isBitter(other) && mayShareAPlant(fruit, other))) return 'bitter';
  if (sick.has(planting.spot.id)) return 'sick';
  const needs = planting.variety?.crop.seed?.past_flowering_days ?? null;
  const days = daysGrown(fruit);
  return needs !== null && days !== null && days < needs ? 'young' : null;
}

const mayShareAPlant = (a: Fruit, b: Fruit): boolean => a.plant === null || b.plant === null || a.plant === b.plant;

/** From set to picking at the most, for either may be known only between two days. Null where either is not known at all. */
function daysGrown({ set, pick }: Fruit): number | null {
  const [from, to] = [set?.set_on?.first ?? null, pick?.picked_on.last ?? null];
  return from === null || to === null ? null : daysBetween(from, to);
}
