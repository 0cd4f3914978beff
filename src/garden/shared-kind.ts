import type { Planting } from './garden.ts';

/** How the spots of some plantings are spoken of: mound, tub, row, bed, or spot when they are of several kinds. */
export function sharedKind(plantings: readonly Pick<Planting, 'spot'>[]): string {
  const [only, ...others] = new Set(plantings.map(({ spot }) => spot.kind));
  return only && others.length === 0 ? only : 'spot';
}
