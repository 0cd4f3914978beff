/**
 * Log odds as a sum of columns, the likelihood penalised by Jeffreys' prior: log likelihood + ½ log |information|.
 * Firth 1993, Biometrika 80:27-38; Heinze & Schemper 2002, Statistics in Medicine 21:2409-2419 (both from memory).
 * Finite where a column parts hits from misses, as the maximum likelihood is not. In a table of two by two it is the
 * log odds ratio after half a unit is added to each cell.
 *
 * Takes every unit as standing alone. Units of one storm or season do not: there its intervals are too short.
 */
import type { Interval } from '../../../src/figure.ts';
import {
  dot,
  logDeterminant,
  type Rows,
  solve,
  triangleOf,
  type Vector,
} from '../../../src/statistics/linear/cholesky.ts';
import {
  type Design,
  designOf,
  type Likelihood,
  type LogisticRow,
  likelihoodAt,
} from '../../../src/statistics/penalised-logistic/logistic.ts';
import { mixtureQuantile } from '../../../src/statistics/preference/normal-mixture.ts';

const MOST_STEPS = 500;
/** Of the penalised log likelihood's slope in units of its curvature: beyond the eighth digit of a coefficient. */
const LAST_GAIN = 1e-18;
/** A coefficient is never moved further than this at once, in log odds at the farthest row. */
const LONGEST = 5;
/** Relative: by so much the log density of the same point may differ. Near the maximum steps gain less than this. */
const ROUNDING = 1e-13;
const MOST_DOUBLINGS = 60;
const MOST_TRIES = 100;
/** Of a standard error, and of the χ² quantile. */
const CLOSE = 1e-9;
/** Of one coefficient's standard error: how far the score is followed to either side for its slope. */
const NEARBY = 1e-4;

export interface FirthFit {
  /** In the columns' order. */
  readonly coefficients: readonly number[];
  /** From the information at the maximum; intervals are better read off the profile. */
  readonly standard_errors: readonly number[];
  readonly penalised_log_likelihood: number;
}

/** One column can be made of the others; their coefficients cannot be told apart. */
export interface DependentColumns {
  readonly code: 'dependent-columns';
}

/** The maximum, right to 8 digits. Throws RangeError as `designOf`. */
export function fitFirth(rows: readonly LogisticRow[]): FirthFit | { readonly cannot: DependentColumns } {
  const best = maximum(designOf(rows), null, null);
  if (best === null) return { cannot: { code: 'dependent-columns' } };
  return {
    coefficients: [...best.coefficients],
    standard_errors: Array.from(best.coefficients, (_, column) => {
      const unit = new Float64Array(best.coefficients.length).fill(1, column, column + 1);
      return Math.sqrt(dot(unit, solve(best.triangle, unit)));
    }),
    penalised_log_likelihood: best.log,
  };
}

/**
 * The values of one coefficient (by its place) that the data would not contradict: twice the penalised log likelihood,
 * all other coefficients fitted anew, falls short of its maximum by no more than the χ² quantile on one degree of
 * freedom. Throws RangeError for a place that is no column and a level outside 0 to 1.
 */
export function firthInterval(
  rows: readonly LogisticRow[],
  column: number,
  level: number,
): Interval | { readonly cannot: DependentColumns } {
  const design = designOf(rows);
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  if (!(Number.isInteger(column) && column >= 0 && column < design.width))
    throw new RangeError(`invalid column: ${column}`);
  const best = maximum(design, null, null);
  if (best === null) return { cannot: { code: 'dependent-columns' } };
  const z = mixtureQuantile([{ weight: 1, mean: 0, sd: 1, skewness: 0 }], (1 + level) / 2);
  const at = best.coefficients[column] as number;
  const unit = new Float64Array(design.width).fill(1, column, column + 1);
  const step = z * Math.sqrt(dot(unit, solve(best.triangle, unit)));
  const end = (sign: number): number => {
    let start = best.coefficients;
    const beyond = (value: number): number => {
      const found = maximum(design, { column, value }, start);
      if (found === null) return Number.POSITIVE_INFINITY;
      start = found.coefficients;
      return 2 * (best.log - found.log) - z * z;
    };
    let [near, far] = [at, at + sign * step];
    let [nearBy, farBy] = [-z * z, beyond(far)];
    for (let doubling = 0; farBy < 0; doubling++) {
      if (doubling === MOST_DOUBLINGS) throw new RangeError(`invalid rows: column ${column} has no end`);
      [near, nearBy, far] = [far, farBy, at + 2 * (far - at)];
      farBy = beyond(far);
    }
    // False position, halving the weight of an end that stays: Dowell & Jarratt 1971, BIT 11:168-174 (from memory).
    for (let tries = 0; tries < MOST_TRIES && Math.abs(far - near) > CLOSE * step; tries++) {
      const part = Number.isFinite(farBy) ? nearBy / (nearBy - farBy) : 0.5;
      const middle = near + part * (far - near);
      const by = beyond(middle);
      if (Math.abs(by) < CLOSE * z * z) return middle;
      if (by > 0) [far, farBy, nearBy] = [middle, by, nearBy / 2];
      else [near, nearBy, farBy] = [middle, by, farBy / 2];
    }
    return (near + far) / 2;
  };
  return { low: end(-1), high: end(1), level };
}

interface Point {
  readonly coefficients: Vector;
  readonly likelihood: Likelihood;
  readonly triangle: Rows;
  readonly log: number;
}

function pointAt(design: Design, coefficients: Vector): Point | null {
  const likelihood = likelihoodAt(design, coefficients);
  const triangle = triangleOf(likelihood.information);
  if (triangle === null) return null;
  return { coefficients, likelihood, triangle, log: likelihood.log + logDeterminant(triangle) / 2 };
}

/** The highest point, with one coefficient held where that is asked; null where the information has no inverse. */
function maximum(
  design: Design,
  held: { readonly column: number; readonly value: number } | null,
  start: Vector | null,
): Point | null {
  const from = Float64Array.from(start ?? new Float64Array(design.width));
  if (held) from[held.column] = held.value;
  let point = pointAt(design, from);
  for (let step = 0; point !== null && step < MOST_STEPS; step++) {
    const move = moveFrom(design, point, held?.column ?? null);
    if (move === null) return null;
    const slope = dot(move.slope, move.move);
    if (slope < LAST_GAIN) break;
    const next = climb(design, point, move.move);
    if (next === null) break;
    point = next;
  }
  return point;
}

function climb(design: Design, from: Point, move: Vector): Point | null {
  const longest = Math.max(...design.columns.map((x) => Math.abs(dot(x, move))));
  for (let part = Math.min(1, LONGEST / longest); part > Number.EPSILON; part /= 2) {
    const next = pointAt(
      design,
      from.coefficients.map((one, place) => one + part * (move[place] as number)),
    );
    if (next !== null && next.log >= from.log - ROUNDING * Math.abs(from.log)) return next;
  }
  return null;
}

/** Firth's score: hits less units times chance, plus leverage times (½ less chance). */
function scoreAt({ columns, hits, units, width }: Design, { likelihood, triangle }: Point): Vector {
  const score = new Float64Array(width);
  for (const [row, x] of columns.entries()) {
    const chance = likelihood.chances[row] as number;
    const leverage = (likelihood.weights[row] as number) * dot(x, solve(triangle, x));
    const left = (hits[row] as number) - (units[row] as number) * chance + leverage * (0.5 - chance);
    for (let i = 0; i < width; i++) score[i] = (score[i] as number) + left * (x[i] as number);
  }
  return score;
}

/**
 * The score along the free coefficients and the step it asks for. The penalty bends the density as well, far out more
 * than the likelihood does, so the score's own slope is taken, by differences; the information where that has no
 * inverse.
 */
function moveFrom(design: Design, point: Point, held: number | null): { slope: Vector; move: Vector } | null {
  const free = Array.from({ length: design.width }, (_, place) => place).filter((place) => place !== held);
  const slope = scoreAt(design, point).map((one, place) => (place === held ? 0 : one));
  const onFree = (rows: Rows): Vector[] =>
    free.map((row) => Float64Array.from(free, (place) => (rows[row] as Vector)[place] as number));
  const inner = triangleOf(onFree(bendAt(design, point, free))) ?? triangleOf(onFree(point.likelihood.information));
  if (inner === null) return null;
  const solved = solve(
    inner,
    Float64Array.from(free, (place) => slope[place] as number),
  );
  const move = new Float64Array(design.width);
  for (const [index, place] of free.entries()) move[place] = solved[index] as number;
  return { slope, move };
}

/** The curvature of the penalised log likelihood turned positive; only places that are free are filled. */
function bendAt(design: Design, point: Point, free: readonly number[]): Rows {
  const bend = Array.from({ length: design.width }, () => new Float64Array(design.width));
  for (const place of free) {
    const step = NEARBY / Math.sqrt((point.likelihood.information[place] as Vector)[place] as number);
    const beside = (sign: number): Vector | null => {
      const moved = point.coefficients.map((one, at) => (at === place ? one + sign * step : one));
      const next = pointAt(design, moved);
      return next && scoreAt(design, next);
    };
    const [up, down] = [beside(1), beside(-1)];
    if (up === null || down === null) return point.likelihood.information;
    for (const row of free) (bend[row] as Vector)[place] = ((down[row] as number) - (up[row] as number)) / (2 * step);
  }
  return bend;
}
