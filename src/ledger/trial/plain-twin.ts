import {
  type SharedDifferences,
  sharedDifferences,
  type VarietyDifference,
} from '../../statistics/shared-differences.ts';
import { scaled, type Trait, unscaled } from './trait.ts';
import type { TraitValue } from './trait-value.ts';

/** A difference anyone can work out again with a pencil. */
export interface PlainDifference {
  readonly variety: string;
  /** In the trait's unit; of a ratio, times. Standard errors stay on the scale of the fit. */
  readonly value: number;
  readonly sed: number | null;
  readonly sed_df: number | null;
  /** What the seasons' differences differ by; null with one. */
  readonly over_seasons_se: number | null;
  readonly seasons: readonly { readonly season: string; readonly difference: number }[];
  /** Ends of the differences when any one mound, or any one season, is left out; null where nothing would be left. */
  readonly without_mound: Ends | null;
  readonly without_season: Ends | null;
}

export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** The comparison without a model. */
export interface PlainTwin {
  /** Of every variety that shared a season with the yardstick, by id. */
  readonly differences: readonly PlainDifference[];
  /** For every 100 of the mean, what mounds of one variety in one season differ by; null for ladders, and without repeats. */
  readonly cv_of_100: number | null;
}

/** Differences from the yardstick over the seasons both stood in, the mound as the replicate. */
export function plainTwin(trait: Trait, values: readonly TraitValue[], yardstick: string): PlainTwin {
  const found = compared(values, yardstick, (value) => scaled(trait, value));
  // The spread for every 100 of the mean is that of the values themselves.
  const natural = trait.scale === 'plain' ? found : compared(values, yardstick, (value) => value);
  return {
    differences: found ? found.varieties.map((one) => told(trait, one, found.spread)) : [],
    cv_of_100: natural && trait.unit !== 'steps' && !('cannot' in natural.spread) ? natural.spread.cv_of_100 : null,
  };
}

function compared(values: readonly TraitValue[], yardstick: string, scale: (value: number) => number) {
  const found = sharedDifferences(
    values.map(({ season, variety, spot, value }) => ({ season, variety, mound: spot, value: scale(value) })),
    yardstick,
  );
  return 'cannot' in found ? null : found;
}

function told(
  trait: Trait,
  { variety, difference, sed, over_seasons, seasons, without_mound, without_season }: VarietyDifference,
  spread: SharedDifferences['spread'],
): PlainDifference {
  const turn = (value: number): number => unscaled(trait, value);
  const ends = (knife: VarietyDifference['without_mound']): Ends | null =>
    knife && { low: turn(knife.smallest.difference), high: turn(knife.largest.difference) };
  return {
    variety,
    value: turn(difference),
    sed,
    sed_df: 'cannot' in spread ? null : spread.df,
    over_seasons_se: 'cannot' in over_seasons ? null : over_seasons.se,
    seasons: seasons.map((one) => ({ season: one.season, difference: turn(one.difference) })),
    without_mound: ends(without_mound),
    without_season: ends(without_season),
  };
}
