import type { Garden } from '../../garden/garden.ts';
import { lastPlanted } from '../../garden/last-planted.ts';
import type { SeasonWater } from './season-water.ts';

/** Spots of a crop that drew on the tank in the last season in which any did, as they were planted last; all of the crop’s before the first. */
export function tankSpots(garden: Garden, seasons: readonly Pick<SeasonWater, 'givings'>[], crop: string): string[] {
  const drawn = seasons.map(({ givings }) => givings.filter(({ from_tank }) => from_tank));
  const latest = drawn.findLast((givings) => givings.length > 0);
  const drawing = latest && new Set(latest.map(({ spot }) => spot));
  const plantings = (lastPlanted(garden)?.plantings ?? []).filter(({ variety }) => variety?.crop.id === crop);
  return [...new Set(plantings.map(({ spot }) => spot.id))].filter((id) => !drawing || drawing.has(id));
}
