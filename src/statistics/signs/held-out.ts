/** What would have been claimed of each cut fruit by one who had not seen its season. */
import { type CutFruit, ripeModel } from './ripe-chance.ts';

export interface HeldOutFruit {
  readonly fruit: CutFruit;
  /** From all other seasons. */
  readonly chance: number;
}

/** There is no other season to learn from. */
export interface OneSeason {
  readonly code: 'one-season';
}

/** The range is not used here. */
const LEVEL = 0.9;

/**
 * Leaves each season out whole, for its fruits share their weather, and asks the rest; in the fruits' order. Single
 * fruits left out would be judged by their neighbours. Throws RangeError as `ripeModel`.
 */
export function heldOutFruits(fruits: readonly CutFruit[]): readonly HeldOutFruit[] | { readonly cannot: OneSeason } {
  const seasons = [...new Set(fruits.map(({ season }) => season))];
  if (seasons.length < 2) return { cannot: { code: 'one-season' } };
  const models = new Map(
    seasons.map((season) => [season, ripeModel(fruits.filter((one) => one.season !== season))] as const),
  );
  return fruits.flatMap((fruit) => {
    const model = models.get(fruit.season);
    return model ? [{ fruit, chance: model.of(fruit, LEVEL).chance }] : [];
  });
}
