import type { Garden } from '../../garden/garden.ts';
import { lastPlanted } from '../../garden/last-planted.ts';
import { givings } from './given.ts';

/** Spots of a crop that drew on the tank in the last season in which any did, as they were planted last; all of the crop’s before the first. */
export function tankSpots(garden: Garden, crop: string): string[] {
  const drew = garden.seasons.findLast((season) => givings(garden, season).some(({ from_tank }) => from_tank));
  const drawing = drew && new Set(givings(garden, drew).flatMap(({ spot, from_tank }) => (from_tank ? [spot] : [])));
  const plantings = (lastPlanted(garden)?.plantings ?? []).filter(({ variety }) => variety?.crop.id === crop);
  return [...new Set(plantings.map(({ spot }) => spot.id))].filter((id) => !drawing || drawing.has(id));
}
