import type { WeightKey } from '../../records/weights.ts';
import type { TraitId } from './trait.ts';

/** What a grower may set store by, and the traits that tell of it, the best first. */
export const WEIGHT_TRAITS = {
  sweet: ['brix', 'sweet'],
  plenty: ['sound_kg_per_plant', 'ripe_fruits_per_plant'],
  big: ['mass_kg', 'size'],
  early: ['first_ripe_days'],
  crisp: ['crisp'],
  juicy: ['juicy'],
  reliable: ['sound_kg_per_plant', 'ripe_fruits_per_plant'],
  looks: ['looks'],
  liked: ['liked'],
} as const satisfies Readonly<Record<WeightKey, readonly TraitId[]>>;

/** From 0, never mind, to 3, most of all. */
export type Weights = Readonly<Partial<Record<WeightKey, number>>>;

export const MOST_WEIGHT = 3;

/** For a garden that names none: decided by the makers, each alike. */
export const USUAL_WEIGHTS: Weights = { sweet: 1, plenty: 1, early: 1, liked: 1 };
