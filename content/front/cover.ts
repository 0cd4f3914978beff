import type { Facts } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import { type SeasonSpan, seasonSpan } from '../../src/garden/season-span.ts';

export interface Cover {
  /** Names of many, of every crop there is a variety of. */
  readonly crops: readonly string[];
  /** Null before the first. */
  readonly seasons: SeasonSpan | null;
}

export function coverOf({ garden: { about, varieties, seasons } }: Facts): Cover {
  return {
    crops: cropsOf(varieties).map((crop) => cropNames(crop, about.locale).many),
    seasons: seasonSpan(seasons),
  };
}
