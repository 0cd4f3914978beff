import type { Day } from '../day.ts';
import { cropNames } from '../garden/crop-name.ts';
import type { CropYear, YearBand, YearStep } from '../ledger/year/crop-year.ts';

/** When a step of a crop's year falls: as dates where they are known, and in weeks from planting out in any case. */
export interface WhenLine {
  readonly crop: string;
  readonly crops: string;
  readonly step: YearStep;
  /** Null where no date of planting out is known. */
  readonly first: Day | null;
  readonly last: Day | null;
  /** Whole weeks from planting out, the nearer first; null for planting out itself. */
  readonly weeks: { readonly low: number; readonly high: number; readonly side: 'before' | 'after' } | null;
  /** `planted`, `earlier` and `warm-up` tell of planting out itself; the others where the weeks come from. */
  readonly basis: 'own' | 'sources' | 'practice' | 'planted' | 'seasons' | 'warm-up';
  /** Seasons, plantings or years under it. */
  readonly count: number;
}

/** One line for each crop that has the step; a crop that lacks it is left to the page's words. */
export const whenLines = (years: readonly CropYear[], step: YearStep, locale: string): WhenLine[] =>
  years.flatMap(({ crop, bands, planting_out }): WhenLine[] => {
    const band = bands[step];
    if (!band) return [];
    const { one, many } = cropNames(crop, locale);
    const base = { crop: one, crops: many, step, first: band.first, last: band.last };
    if (step === 'plant-out' && planting_out)
      return [{ ...base, weeks: null, basis: planting_out.from, count: planting_out.count }];
    return [{ ...base, weeks: weeksOf(band), basis: band.basis, count: band.seasons }];
  });

function weeksOf({ from_days, to_days }: YearBand): NonNullable<WhenLine['weeks']> {
  const [a, b] = [Math.round(Math.abs(from_days) / 7), Math.round(Math.abs(to_days) / 7)];
  return { low: Math.min(a, b), high: Math.max(a, b), side: to_days <= 0 ? 'before' : 'after' };
}
