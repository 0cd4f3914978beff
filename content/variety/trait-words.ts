import type { TraitId } from '../../src/ledger/trial/trait.ts';

/** What a trait is called in charts and tables, and what the better of two does. */
export const TRAIT_WORDS: Readonly<Record<TraitId, { readonly name: string; readonly more: string }>> = {
  brix: { name: 'Sugar of ripe fruit', more: 'is sweeter' },
  sweet: { name: 'Sweetness in words', more: 'is sweeter' },
  sound_kg_per_plant: { name: 'Sound fruit a plant', more: 'gives more' },
  ripe_fruits_per_plant: { name: 'Ripe fruits a plant', more: 'gives more' },
  mass_kg: { name: 'Mass of a fruit', more: 'is heavier' },
  size: { name: 'Size in words', more: 'is bigger' },
  first_ripe_days: { name: 'Days from planting out to the first ripe fruit', more: 'is ripe sooner' },
  first_ripe_c_days: { name: 'Heat from planting out to the first ripe fruit', more: 'is ripe on less heat' },
  crisp: { name: 'Crispness in words', more: 'is crisper' },
  juicy: { name: 'Juice in words', more: 'is juicier' },
  liked: { name: 'Liked, in words', more: 'is liked better' },
  looks: { name: 'Looks in words', more: 'looks better' },
};
