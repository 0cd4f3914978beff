import { cropsOf } from '../../src/garden/crops-of.ts';
import type { EventOf } from '../../src/garden/event.ts';
import type { Crop, Planting, Season } from '../../src/garden/garden.ts';

export type Flower = EventOf<'flowering'>;

/** The planting an entry tells of; null where it names none. */
export const plantingOf = ({ plantings }: Season, { planting }: Flower): Planting | null =>
  plantings.find(({ id }) => id === planting) ?? null;

/** The crop of its planting, or the only one of the season; null where nobody can say. */
export function cropOf(season: Season, flower: Flower): Crop | null {
  if (flower.planting !== null) return plantingOf(season, flower)?.variety?.crop ?? null;
  const [crop, ...others] = cropsOf(season.plantings.flatMap(({ variety }) => variety ?? []));
  return others.length === 0 && season.plantings.every(({ variety }) => variety !== null) ? (crop ?? null) : null;
}
