/** The likelihood of hits whose log odds are a sum of columns times coefficients: what every penalty is laid upon. */
import { dot, type Vector } from '../linear/cholesky.ts';

/** Units that share their columns: one fruit, or all fruits of a storm. The constant is a column like any other. */
export interface LogisticRow {
  readonly columns: readonly number[];
  readonly hits: number;
  readonly units: number;
}

export interface Design {
  readonly columns: readonly Vector[];
  readonly hits: readonly number[];
  readonly units: readonly number[];
  readonly width: number;
}

/**
 * Throws RangeError without rows, with unequally many columns, with a column that is not finite, or unless hits and
 * units are whole, 0 <= hits <= units, units > 0.
 */
export function designOf(rows: readonly LogisticRow[]): Design {
  const width = rows[0]?.columns.length ?? 0;
  if (width === 0) throw new RangeError(`invalid rows: ${rows.length} of ${width} columns`);
  for (const { columns, hits, units } of rows) {
    if (columns.length !== width || !columns.every(Number.isFinite))
      throw new RangeError(`invalid columns: ${columns}`);
    if (!(Number.isInteger(units) && units > 0)) throw new RangeError(`invalid units: ${units}`);
    if (!(Number.isInteger(hits) && hits >= 0 && hits <= units)) throw new RangeError(`invalid hits: ${hits}`);
  }
  return {
    columns: rows.map((row) => Float64Array.from(row.columns)),
    hits: rows.map((row) => row.hits),
    units: rows.map((row) => row.units),
    width,
  };
}

/** 1 / (1 + e^-x), without loss at either end. */
export const chanceAt = (logOdds: number): number =>
  logOdds >= 0 ? 1 / (1 + Math.exp(-logOdds)) : Math.exp(logOdds) / (1 + Math.exp(logOdds));

export interface Likelihood {
  readonly log: number;
  /** Of one unit of each row. */
  readonly chances: Vector;
  /** The variance of each row's hits: units times chance times its rest. */
  readonly weights: Vector;
  /** The log likelihood's curvature turned positive: Σ weight x xᵗ. */
  readonly information: readonly Vector[];
}

export function likelihoodAt(design: Design, coefficients: Vector): Likelihood {
  const { columns, hits, units, width } = design;
  const chances = new Float64Array(columns.length);
  const weights = new Float64Array(columns.length);
  const information = Array.from({ length: width }, () => new Float64Array(width));
  let log = 0;
  for (const [row, x] of columns.entries()) {
    const logOdds = dot(x, coefficients);
    const [hit, miss] = [chanceAt(logOdds), chanceAt(-logOdds)];
    const [n, y] = [units[row] as number, hits[row] as number];
    chances[row] = hit;
    weights[row] = n * hit * miss;
    // log of a chance without the chance: it may be too small for a number while its log is not.
    const logOf = (sign: number) => -Math.max(-sign * logOdds, 0) - Math.log1p(Math.exp(-Math.abs(logOdds)));
    log += y * logOf(1) + (n - y) * logOf(-1);
    for (let i = 0; i < width; i++) {
      const own = information[i] as Vector;
      const part = (weights[row] as number) * (x[i] as number);
      for (let j = 0; j <= i; j++) own[j] = (own[j] as number) + part * (x[j] as number);
    }
  }
  for (let i = 0; i < width; i++)
    for (let j = i + 1; j < width; j++) (information[i] as Vector)[j] = (information[j] as Vector)[i] as number;
  return { log, chances, weights, information };
}
