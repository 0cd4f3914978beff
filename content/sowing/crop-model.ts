import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop } from '../../src/garden/garden.ts';

/** What a crop's seed asks for, as its file gives it. */
export interface CropModel {
  readonly names: { readonly one: string; readonly many: string };
  readonly crop: Crop;
  /** From cool to warm; empty where no source was found. */
  readonly emergence: readonly { readonly soil_c: number; readonly days: number }[];
  readonly cites: readonly string[];
}

export const cropModels = ({ ledger, garden, reference }: Facts): CropModel[] =>
  ledger.years.map(({ crop }) => ({
    names: cropNames(crop, garden.about.locale),
    crop,
    emergence: crop.sowing?.emergence ?? [],
    cites: shortCites(reference, crop.sowing?.sources ?? []),
  }));
