import type { Facts } from '../../src/book/chapter.ts';
import type { Planting, Season } from '../../src/garden/garden.ts';

/** The season the sheets are for: the last that is written down; null before the first. */
export const seasonOf = ({ garden }: Facts): Season | null => garden.seasons.at(-1) ?? null;

/** Its plantings in the order of their spots. */
export function plantingsOf(facts: Facts): Planting[] {
  const order = new Map(facts.garden.spots.map(({ id }, index) => [id, index]));
  const place = ({ spot }: Planting): number => order.get(spot.id) ?? 0;
  return [...(seasonOf(facts)?.plantings ?? [])].sort((a, b) => place(a) - place(b));
}

/** Of the kinds of melon grown this season at least one parts from its stalk when ripe. */
export const hasSlip = (facts: Facts): boolean =>
  plantingsOf(facts).some(({ variety }) => variety !== null && (variety.slip ?? variety.crop.slip) !== 'none');
