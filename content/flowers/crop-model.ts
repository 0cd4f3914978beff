import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop } from '../../src/garden/garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';

type Flowering = NonNullable<Crop['flowering']>;

/** How a crop flowers, as its file tells it; every part may be absent. */
export interface CropModel {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly sexes: Flowering['sexes'] | null;
  readonly carried_by: Flowering['carried_by'] | null;
  readonly female_looks: string | null;
  readonly males_per_female: Range | null;
  readonly visits_least: number | null;
  readonly hand_set_of_ten: Range | null;
  readonly cites: readonly string[];
}

interface Range {
  readonly low: number;
  readonly high: number;
}

export const cropModels = ({ ledger, garden: { about }, reference }: Facts): CropModel[] =>
  ledger.years.map(({ crop: { flowering, ...crop } }) => ({
    id: crop.id,
    names: cropNames({ flowering, ...crop }, about.locale),
    sexes: flowering?.sexes ?? null,
    carried_by: flowering?.carried_by ?? null,
    female_looks: inLanguage(flowering?.female_looks ?? null, about.locale),
    males_per_female: rangeOf(flowering?.males_per_female_low, flowering?.males_per_female_high),
    visits_least: flowering?.visits_least ?? null,
    hand_set_of_ten: rangeOf(flowering?.hand_set_of_ten_low, flowering?.hand_set_of_ten_high),
    cites: shortCites(reference, flowering?.sources ?? []),
  }));

/** Null unless both ends are told. */
const rangeOf = (low: number | null | undefined, high: number | null | undefined): Range | null =>
  low == null || high == null ? null : { low, high };
