import type { Facts } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';

export interface Cover {
  /** Names of many, of every crop there is a variety of. */
  readonly crops: readonly string[];
  /** Labels of the first and the last season; null before the first. */
  readonly seasons: { readonly first: string; readonly last: string } | null;
}

export function coverOf({ garden: { about, varieties, seasons } }: Facts): Cover {
  const [first, last] = [seasons[0]?.label, seasons.at(-1)?.label];
  return {
    crops: cropsOf(varieties).map((crop) => cropNames(crop, about.locale).many),
    seasons: first && last ? { first, last } : null,
  };
}
