import type { Season } from '../../src/garden/garden.ts';
import { naturally } from '../../src/natural-order.ts';

/** Spots of a season in words: null for all that were planted, a bed by its name, else the spots by theirs. */
export function whereOf({ plantings }: Season, spots: readonly string[] | null): string | null {
  if (spots === null) return null;
  const planted = [...new Map(plantings.map(({ spot }) => [spot.id, spot])).values()];
  const named = new Set(spots);
  const holds = (of: readonly { readonly id: string }[]): boolean => of.every(({ id }) => named.has(id));
  if (planted.length > 1 && holds(planted)) return null;
  const bed = planted.find(({ id }) => named.has(id))?.bed ?? null;
  const inBed = planted.filter((spot) => bed !== null && spot.bed === bed);
  if (inBed.length > 1 && inBed.length === named.size && holds(inBed)) return bed;
  return [...named].sort(naturally).join(', ');
}
