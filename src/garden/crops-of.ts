import type { Crop, Variety } from './garden.ts';

/** The crops of some varieties, each once, in the order of their ids. */
export const cropsOf = (varieties: readonly Variety[]): Crop[] =>
  [...new Map(varieties.map(({ crop }) => [crop.id, crop])).values()].sort((a, b) => (a.id < b.id ? -1 : 1));
