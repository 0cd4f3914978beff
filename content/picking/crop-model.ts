import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop } from '../../src/garden/garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import type { KeptFruit } from './kept-fruit.ts';
import { type PlaceLine, placeLines } from './places.ts';
import { type StillSound, stillSound } from './still-sound.ts';

/** How a crop is taken off and kept, as its file tells it, and how its fruit kept here. */
export interface CropModel {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly taking_off: string | null;
  readonly keeping: Crop['keeping'];
  readonly cites: readonly string[];
  /** Fruits laid by, all seasons together. */
  readonly kept: number;
  /** Empty where none of them has both days known. */
  readonly still_sound: readonly StillSound[];
  readonly has_seeds: boolean;
  readonly places: readonly PlaceLine[];
}

export function cropModels({ ledger, garden: { about }, reference }: Facts, fruits: readonly KeptFruit[]): CropModel[] {
  return ledger.years.map(({ crop }) => {
    const own = fruits.filter((one) => one.crop?.id === crop.id);
    const still_sound = own.some(({ days }) => days !== null)
      ? stillSound(own, `picking.${crop.id}`, ledger.bases)
      : [];
    return {
      id: crop.id,
      names: cropNames(crop, about.locale),
      taking_off: inLanguage(crop.keeping?.taking_off ?? null, about.locale),
      keeping: crop.keeping,
      cites: shortCites(reference, crop.keeping?.sources ?? []),
      kept: own.length,
      still_sound,
      has_seeds: still_sound.some(({ seeds }) => seeds !== null),
      places: placeLines(own),
    };
  });
}
