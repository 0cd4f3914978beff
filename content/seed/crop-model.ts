import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import type { WhenLine } from '../../src/book/when-line.ts';
import { addDays } from '../../src/day.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop } from '../../src/garden/garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import type { CropYear } from '../../src/ledger/year/crop-year.ts';

/** What the seed of a crop takes, as its file gives it. */
export interface CropModel {
  readonly names: { readonly one: string; readonly many: string };
  /** Null where nobody's figures were found. */
  readonly seed: Crop['seed'];
  readonly crosses: string | null;
  readonly cleaning: string | null;
  /** When the seed of the first fruits to set is ripe; null where the days or the set are not known. */
  readonly soonest: WhenLine | null;
  readonly cites: readonly string[];
}

export const cropModels = ({ ledger, garden, reference }: Facts): CropModel[] =>
  ledger.years.map((year) => {
    const { seed } = year.crop;
    const { locale } = garden.about;
    return {
      names: cropNames(year.crop, locale),
      seed,
      crosses: seed && inLanguage(seed.crosses, locale),
      cleaning: seed && inLanguage(seed.cleaning, locale),
      soonest: soonestOf(year, locale),
      cites: shortCites(reference, seed?.sources ?? []),
    };
  });

function soonestOf({ crop, bands, planting_out }: CropYear, locale: string): WhenLine | null {
  const { set } = bands;
  const past = crop.seed?.past_flowering_days ?? null;
  if (!set || past === null) return null;
  const days = set.from_days + past;
  const day = planting_out && addDays(planting_out.day, days);
  const weeks = Math.round(days / 7);
  const { one, many } = cropNames(crop, locale);
  return {
    crop: one,
    crops: many,
    step: 'set',
    first: day,
    last: day,
    weeks: { low: weeks, high: weeks, side: 'after' },
    basis: set.basis,
    count: set.seasons,
  };
}
