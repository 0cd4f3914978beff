import type { Spot } from './garden.ts';

/** Whether an entry of the diary tells of a spot: one that names no spots tells of the whole garden. */
export const reaches = ({ spots }: { readonly spots: readonly string[] | null }, { id }: Pick<Spot, 'id'>): boolean =>
  spots === null || spots.includes(id);
