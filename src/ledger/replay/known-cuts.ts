import type { Crop, Garden } from '../../garden/garden.ts';
import type { CropSignRecord } from '../../records/trait/sign.ts';
import { judgedFruits } from '../ripeness/judged-fruit.ts';
import { shownBy } from '../ripeness/sign-shown.ts';
import { lookOf, vineSigns } from '../ripeness/together.ts';
import type { KnownFruit } from '../ripeness/together-numbers.ts';

/** What a book has to tell ripeness from: the crop's cut fruits that were looked over, with their signs in one order. */
export interface KnownCuts {
  readonly signs: readonly CropSignRecord[];
  readonly known: readonly KnownFruit[];
}

export function knownCuts({ seasons }: Garden, crop: Crop): KnownCuts {
  const signs = vineSigns(crop);
  const looked = judgedFruits(seasons, crop).filter((one) => signs.some((sign) => shownBy(sign)(one) !== null));
  return {
    signs,
    known: looked.map((one) => ({
      ...lookOf(signs, one, one.planting, one.days_set),
      season: one.season.slug,
      state: one.state,
    })),
  };
}
