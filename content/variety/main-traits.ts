import type { CropTrial, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';

/** Of twins the first that is known: a meter stands before a word. */
const MAIN: readonly (readonly string[])[] = [
  ['brix', 'sweet'],
  ['sound_kg_per_plant', 'ripe_fruits_per_plant'],
  ['mass_kg', 'size'],
  ['first_ripe_days'],
  ['liked'],
];

/** The traits of the one table, in its order. */
export const mainTraits = ({ traits }: CropTrial): TrialTrait[] =>
  MAIN.flatMap((ids) => {
    const able = ids.map((id) => traits.find(({ trait, numbers }) => trait.id === id && numbers.cannot === null));
    return able.find((one) => one !== undefined) ?? [];
  });
