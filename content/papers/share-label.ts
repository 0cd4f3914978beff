import type { Facts } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';

export interface ShareLabelModel {
  readonly crops: readonly KeepLine[];
}

/** How long a fruit keeps whole; null where the crop's file does not tell. */
interface KeepLine {
  readonly one: string;
  readonly keeps: {
    readonly days_low: number;
    readonly days_high: number;
    readonly c_low: number;
    readonly c_high: number;
  } | null;
}

export const shareLabelModel = ({ garden }: Facts): ShareLabelModel => ({
  crops: cropsOf(garden.varieties).map((crop) => ({
    one: cropNames(crop, garden.about.locale).one,
    keeps: crop.keeping && {
      days_low: crop.keeping.keeps_days_low,
      days_high: crop.keeping.keeps_days_high,
      c_low: crop.keeping.store_low_c,
      c_high: crop.keeping.store_high_c,
    },
  })),
});
