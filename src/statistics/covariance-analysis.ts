/**
 * Groups compared at one value of a covariate (varieties at one number of plants that came through, one day of setting):
 * value = group + slope x covariate + error, one slope and one residual standard deviation for all groups. Adjusted means
 * stand at the mean covariate of all observations (Snedecor & Cochran 1967, Statistical Methods, ch. 14, from memory).
 * The covariate must not be an outcome of the group: adjusting then takes away part of what is asked.
 */
import type { Estimate } from './additive-model.ts';
import { fUpperTail } from './distributions.ts';
import { type Column, indicators, sumToZero } from './factor-coding.ts';
import { extraSumOfSquares, leastSquares, sumOfSquares } from './least-squares.ts';

/** Numbers this close, relative to the largest of them, differ by rounding only. */
const ROUNDING = 64 * Number.EPSILON;

export interface CovariateObservation {
  readonly group: string;
  readonly covariate: number;
  readonly value: number;
}

export interface CovarianceRow {
  readonly term: 'group' | 'covariate' | 'residual';
  readonly df: number;
  /** Sum of squares, and mean square ss/df, in the values' unit squared. */
  readonly ss: number;
  readonly ms: number;
  readonly f: number | null;
  readonly p: number | null;
}

/** Whether one slope does for all groups: the sum of squares that a slope for each adds, against what is then left. */
export interface EqualSlopes {
  readonly f: number;
  readonly p: number;
  readonly df: number;
  readonly df_residual: number;
}

export interface CovarianceFit {
  /** Sorted by code unit. */
  readonly groups: readonly string[];
  /** In values' units per unit of the covariate. */
  readonly slope: Estimate;
  /** Where the means stand, in the covariate's unit. */
  readonly covariate_mean: number;
  /** In the values' unit, on `df` degrees of freedom. */
  readonly residual_sd: number;
  readonly df: number;
  /** Throws RangeError for an unknown name. */
  readonly mean: (group: string) => Estimate & { readonly n: number };
  /** a minus b at the same covariate. Throws RangeError for an unknown name, or one group twice. */
  readonly difference: (a: string, b: string) => Estimate;
  /** Each term after the other; without an interaction types II and III are the same. */
  readonly type: 'II';
  readonly rows: readonly CovarianceRow[];
  /** Null when a group's covariate does not vary, or nothing would be left to test against. */
  readonly equal_slopes: EqualSlopes | null;
}

/** Why there is no fit. */
export type CovarianceRefusal =
  | { readonly code: 'one-group' }
  /** Within groups the covariate is the same: it cannot be told from them. */
  | { readonly code: 'no-covariate-spread' }
  | { readonly code: 'no-residual-df'; readonly values: number; readonly unknowns: number }
  | { readonly code: 'no-spread'; readonly df: number };

/** Fits the model, or says why not. Throws RangeError for a number that is not finite. */
export function fitCovariance(
  observations: readonly CovariateObservation[],
): CovarianceFit | { readonly cannot: CovarianceRefusal } {
  for (const { covariate, value } of observations) {
    if (!Number.isFinite(covariate)) throw new RangeError(`invalid covariate: ${covariate}`);
    if (!Number.isFinite(value)) throw new RangeError(`invalid value: ${value}`);
  }
  const groups = [...new Set(observations.map((one) => one.group))].sort();
  if (groups.length < 2) return { cannot: { code: 'one-group' } };
  const sorted = [...observations].sort(
    (a, b) => groups.indexOf(a.group) - groups.indexOf(b.group) || a.covariate - b.covariate || a.value - b.value,
  );
  const places = sorted.map((one) => groups.indexOf(one.group));
  const covariateMean = average(sorted.map((one) => one.covariate));
  const covariate = sorted.map((one) => one.covariate - covariateMean);
  const largestCovariate = Math.max(...sorted.map((one) => Math.abs(one.covariate)));
  const varies = groups.map((_, place) => {
    const own = covariate.filter((_value, index) => places[index] === place);
    const middle = average(own);
    return own.some((value) => Math.abs(value - middle) > ROUNDING * largestCovariate);
  });
  if (!varies.includes(true)) return { cannot: { code: 'no-covariate-spread' } };
  const unknowns = groups.length + 1;
  const df = sorted.length - unknowns;
  if (df <= 0) return { cannot: { code: 'no-residual-df', values: sorted.length, unknowns } };

  const centre = average(sorted.map((one) => one.value));
  const values = sorted.map((one) => one.value - centre);
  const own = indicators(groups.length, places);
  const solved = leastSquares([...own, covariate], values);
  const residualSd = Math.sqrt(solved.residual_ss / df);
  const largest = Math.max(...sorted.map((one) => Math.abs(one.value)));
  if (residualSd <= ROUNDING * largest) return { cannot: { code: 'no-spread', df } };

  const constant = values.map(() => 1);
  const contrasts = sumToZero(groups.length, places);
  const residual = { ss: solved.residual_ss, df };
  const slopes = contrasts.map((column) => column.map((one, index) => one * (covariate[index] ?? 0)));
  const coefficient = (place: number): Estimate => ({
    estimate: solved.coefficients[place] ?? 0,
    se: residualSd * Math.sqrt(sumOfSquares(solved.weights[place] ?? [])),
  });
  const find = (group: string): number => {
    const place = groups.indexOf(group);
    if (place < 0) throw new RangeError(`invalid group: ${group} is not in this fit`);
    return place;
  };
  return {
    groups,
    slope: coefficient(groups.length),
    covariate_mean: covariateMean,
    residual_sd: residualSd,
    df,
    mean(group) {
      const place = find(group);
      const { estimate, se } = coefficient(place);
      return { estimate: centre + estimate, se, n: places.filter((one) => one === place).length };
    },
    difference(a, b) {
      if (a === b) throw new RangeError(`invalid difference: ${a} with itself`);
      const [one, other] = [find(a), find(b)];
      const weights = (solved.weights[one] ?? []).map((weight, at) => weight - (solved.weights[other]?.[at] ?? 0));
      return {
        estimate: coefficient(one).estimate - coefficient(other).estimate,
        se: residualSd * Math.sqrt(sumOfSquares(weights)),
      };
    },
    type: 'II',
    rows: [
      tested('group', extraSumOfSquares([constant, covariate], contrasts, values), contrasts.length, residual),
      tested('covariate', extraSumOfSquares(own, [covariate], values), 1, residual),
      { term: 'residual', ...residual, ms: residual.ss / df, f: null, p: null },
    ],
    equal_slopes: varies.includes(false) ? null : equalSlopes([...own, covariate], slopes, values, ROUNDING * largest),
  };
}

function tested(
  term: CovarianceRow['term'],
  ss: number,
  df: number,
  residual: { readonly ss: number; readonly df: number },
): CovarianceRow {
  const f = ss / df / (residual.ss / residual.df);
  return { term, df, ss, ms: ss / df, f, p: fUpperTail(f, df, residual.df) };
}

function equalSlopes(
  common: readonly Column[],
  slopes: readonly Column[],
  values: readonly number[],
  rounding: number,
): EqualSlopes | null {
  const df = values.length - common.length - slopes.length;
  if (df <= 0) return null;
  const residualMs = leastSquares([...common, ...slopes], values).residual_ss / df;
  if (Math.sqrt(residualMs) <= rounding) return null;
  const f = extraSumOfSquares(common, slopes, values) / slopes.length / residualMs;
  return { f, p: fUpperTail(f, slopes.length, df), df: slopes.length, df_residual: df };
}

const average = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
