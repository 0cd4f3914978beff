/**
 * How far each variety stood from one yardstick variety, over the seasons (or blocks) in which both stood and no others:
 * the mean over those seasons of (mean of the variety's mounds - mean of the yardstick's mounds), each season weighing
 * the same however many mounds it had. A contrast of cell means, so that anyone can redo it with a pencil.
 *
 * The mound is the replicate: several values of one mound in one season count as their mean. Two standard errors:
 * `sed` from what mounds of one variety in one season differ by, pooled over all seasons and varieties given (one spread
 * for all is assumed); it says how well *these* seasons are known. `over_seasons` from what the seasons' differences
 * differ by, so that a variety suited to one summer widens it; it alone reaches to another season.
 *
 * The same numbers come from a model with an effect for every variety in every season (R: `lm(value ~ 0 + cell)`; with
 * no gaps `emmeans(lm(value ~ variety * season), "variety")`), whose weights and residual these are. The additive model
 * variety + season (`fitAdditive`; Searle, Speed & Milliken 1980) differs in three ways: it also compares by way of third
 * varieties and in seasons without the yardstick, it weighs seasons by their mounds, and its residual holds variety x
 * season as well. The estimates agree when every variety has as many mounds in every season, all of it in one season.
 */
import { sumOfSquares } from './least-squares.ts';

/** Values this close, relative to the largest of them, differ by rounding only. */
const ROUNDING = 64 * Number.EPSILON;

export interface MoundValue {
  readonly season: string;
  readonly variety: string;
  /** A name need only be unlike others of its season and variety. */
  readonly mound: string;
  readonly value: number;
}

/** Between mounds of one variety in one season. */
export interface MoundSpread {
  /** In the values' unit, on `df` degrees of freedom: mounds less one, added over varieties and seasons. */
  readonly sd: number;
  readonly df: number;
  /** Coefficient of variation: sd for every 100 of the mean of all mounds; null when that mean is not above 0. */
  readonly cv_of_100: number | null;
}

/** No variety has two mounds in a season, or all that have agree exactly. */
export type NoSpread = { readonly code: 'no-repeats' } | { readonly code: 'no-spread'; readonly df: number };

export interface SharedSeason {
  readonly season: string;
  /** Variety minus yardstick, in the values' unit, as are all differences and standard errors here. */
  readonly difference: number;
  readonly mounds: number;
  readonly yardstick_mounds: number;
}

/** The comparison with something left out. */
export interface LeftOut {
  readonly season: string;
  /** Both null when the whole season was left out. */
  readonly variety: string | null;
  readonly mound: string | null;
  readonly difference: number;
  /** Null when what is left has no spread. */
  readonly sed: number | null;
  readonly df: number | null;
}

export interface JackKnife {
  /** The first of equals. */
  readonly smallest: LeftOut;
  readonly largest: LeftOut;
  /** How many single things, left out, leave no shared season; they are in neither line. */
  readonly ends_it: number;
}

export interface VarietyDifference {
  readonly variety: string;
  /** Sorted by code unit, at least one. */
  readonly seasons: readonly SharedSeason[];
  readonly difference: number;
  /** On the degrees of freedom of the spread; null when there is none. */
  readonly sed: number | null;
  /** On seasons - 1 degrees of freedom. */
  readonly over_seasons:
    | { readonly se: number; readonly df: number }
    | { readonly cannot: { readonly code: 'one-season' } | { readonly code: 'seasons-agree' } };
  /** Null when leaving out any one mound of the two varieties, or any one season, leaves nothing to compare. */
  readonly without_mound: JackKnife | null;
  readonly without_season: JackKnife | null;
}

export interface SharedDifferences {
  readonly yardstick: string;
  readonly spread: MoundSpread | { readonly cannot: NoSpread };
  /** How many varieties are compared: the more there are, the further the best of them overstates itself. */
  readonly comparisons: number;
  /** Sorted by code unit. */
  readonly varieties: readonly VarietyDifference[];
  /** Varieties that shared no season with the yardstick, sorted. */
  readonly never_together: readonly string[];
}

/**
 * Compares every variety with the yardstick, or says why not. The same bits whatever the order of the values.
 * Throws RangeError for a value that is not finite.
 */
export function sharedDifferences(
  values: readonly MoundValue[],
  yardstick: string,
): SharedDifferences | { readonly cannot: { readonly code: 'no-values' } | { readonly code: 'no-yardstick' } } {
  const mounds = mergedMounds(values);
  if (mounds.length === 0) return { cannot: { code: 'no-values' } };
  const names = [...new Set(mounds.map((one) => one.variety))].sort();
  if (!names.includes(yardstick)) return { cannot: { code: 'no-yardstick' } };
  const spread = moundSpread(mounds);
  const varieties: VarietyDifference[] = [];
  const neverTogether: string[] = [];
  for (const variety of names.filter((name) => name !== yardstick)) {
    const seasons = sharedSeasons(mounds, variety, yardstick);
    if (seasons.length === 0) neverTogether.push(variety);
    else varieties.push(described(mounds, seasons, spread, variety, yardstick));
  }
  return { yardstick, spread, comparisons: varieties.length, varieties, never_together: neverTogether };
}

function described(
  mounds: readonly MoundValue[],
  seasons: readonly SharedSeason[],
  spread: SharedDifferences['spread'],
  variety: string,
  yardstick: string,
): VarietyDifference {
  const inSeasons = new Set(seasons.map((one) => one.season));
  const ofTheTwo = mounds.filter(
    (one) => inSeasons.has(one.season) && (one.variety === variety || one.variety === yardstick),
  );
  const leftOut = (season: string, left: MoundValue | null, kept: readonly MoundValue[]): LeftOut | null => {
    const shared = sharedSeasons(kept, variety, yardstick);
    if (shared.length === 0) return null;
    const among = moundSpread(kept);
    return {
      season,
      variety: left?.variety ?? null,
      mound: left?.mound ?? null,
      difference: average(shared.map((one) => one.difference)),
      sed: standardError(shared, among),
      df: 'cannot' in among ? null : among.df,
    };
  };
  return {
    variety,
    seasons,
    difference: average(seasons.map((one) => one.difference)),
    sed: standardError(seasons, spread),
    over_seasons: overSeasons(seasons, mounds),
    without_mound: jackKnife(
      ofTheTwo.map((left) =>
        leftOut(
          left.season,
          left,
          mounds.filter((one) => one !== left),
        ),
      ),
    ),
    without_season: jackKnife(
      seasons.map(({ season }) =>
        leftOut(
          season,
          null,
          mounds.filter((one) => one.season !== season),
        ),
      ),
    ),
  };
}

/** One entry a mound, sorted by season, variety, mound: sums run in one order. */
function mergedMounds(values: readonly MoundValue[]): MoundValue[] {
  const together = new Map<string, { one: MoundValue; values: number[] }>();
  for (const one of values) {
    if (!Number.isFinite(one.value)) throw new RangeError(`invalid value: ${one.value}`);
    const key = JSON.stringify([one.season, one.variety, one.mound]);
    const found = together.get(key) ?? { one, values: [] };
    found.values.push(one.value);
    together.set(key, found);
  }
  return [...together.values()]
    .map(({ one, values: own }) => ({ ...one, value: average([...own].sort((a, b) => a - b)) }))
    .sort((a, b) => byCodeUnit(a.season, b.season) || byCodeUnit(a.variety, b.variety) || byCodeUnit(a.mound, b.mound));
}

function moundSpread(mounds: readonly MoundValue[]): SharedDifferences['spread'] {
  const cells = new Map<string, number[]>();
  for (const { season, variety, value } of mounds) {
    const key = JSON.stringify([season, variety]);
    cells.set(key, [...(cells.get(key) ?? []), value]);
  }
  const groups = [...cells.values()];
  const df = groups.reduce((sum, own) => sum + own.length - 1, 0);
  if (df === 0) return { cannot: { code: 'no-repeats' } };
  const sd = Math.sqrt(groups.reduce((sum, own) => sum + squaresAroundMean(own), 0) / df);
  if (sd <= ROUNDING * largestOf(mounds)) return { cannot: { code: 'no-spread', df } };
  const mean = average(mounds.map((one) => one.value));
  return { sd, df, cv_of_100: mean > 0 ? (100 * sd) / mean : null };
}

function sharedSeasons(mounds: readonly MoundValue[], variety: string, yardstick: string): SharedSeason[] {
  const seasons = [...new Set(mounds.map((one) => one.season))].sort();
  return seasons.flatMap((season) => {
    const of = (name: string) =>
      mounds.filter((one) => one.season === season && one.variety === name).map((one) => one.value);
    const [own, against] = [of(variety), of(yardstick)];
    if (own.length === 0 || against.length === 0) return [];
    const difference = average(own) - average(against);
    return [{ season, difference, mounds: own.length, yardstick_mounds: against.length }];
  });
}

/** sd √(Σ(1/n + 1/m)) / seasons: the cell means of n and m mounds are independent and each season has weight 1/seasons. */
function standardError(seasons: readonly SharedSeason[], spread: SharedDifferences['spread']): number | null {
  if ('cannot' in spread) return null;
  const parts = seasons.reduce((sum, one) => sum + 1 / one.mounds + 1 / one.yardstick_mounds, 0);
  return (spread.sd * Math.sqrt(parts)) / seasons.length;
}

function overSeasons(
  seasons: readonly SharedSeason[],
  mounds: readonly MoundValue[],
): VarietyDifference['over_seasons'] {
  const df = seasons.length - 1;
  if (df === 0) return { cannot: { code: 'one-season' } };
  const sd = Math.sqrt(squaresAroundMean(seasons.map((one) => one.difference)) / df);
  if (sd <= ROUNDING * largestOf(mounds)) return { cannot: { code: 'seasons-agree' } };
  return { se: sd / Math.sqrt(seasons.length), df };
}

function jackKnife(lines: readonly (LeftOut | null)[]): JackKnife | null {
  const left = lines.filter((one) => one !== null);
  const [first] = left;
  if (!first) return null;
  return {
    smallest: left.reduce((least, one) => (one.difference < least.difference ? one : least), first),
    largest: left.reduce((most, one) => (one.difference > most.difference ? one : most), first),
    ends_it: lines.length - left.length,
  };
}

const average = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

function squaresAroundMean(values: readonly number[]): number {
  const mean = average(values);
  return sumOfSquares(values.map((one) => one - mean));
}

const largestOf = (mounds: readonly MoundValue[]): number => Math.max(...mounds.map((one) => Math.abs(one.value)));

const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
