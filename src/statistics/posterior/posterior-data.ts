/** What a crossed model is fitted to, checked and put in one order, whatever the order of the records. */

import { type FixedColumn, type FixedPart, fixedPart, withoutFixed } from '../crossed/fixed-part.ts';
import type { Places } from '../crossed/random-factor.ts';
import { dot, type Vector } from '../linear/cholesky.ts';

/** Values this close to their fixed part, relative to the largest of them, differ from it by rounding only. */
const ROUNDING = 64 * Number.EPSILON;
const MOST_FACTORS = 4;

export interface PosteriorFactor {
  readonly name: string;
  /** The level of each observation. */
  readonly level: readonly string[];
  /** Scale of the half-normal prior on the ratio of the factor's SD to the residual SD: no unit, above 0. */
  readonly scale: number;
  /** Levels to tell of beside those observed: of one without a value, all that is known is how far levels differ. */
  readonly also?: readonly string[];
}

export interface PosteriorData {
  /** In any unit. */
  readonly y: readonly number[];
  /** A constant is a column like any other. */
  readonly fixed: readonly FixedColumn[];
  /** At most four. */
  readonly random: readonly PosteriorFactor[];
}

/** Why there is no posterior. */
export type PosteriorRefusal =
  | { readonly code: 'no-values' }
  /** As many fixed columns as values: nothing is left to tell how far values scatter. */
  | { readonly code: 'no-residual-df'; readonly values: number; readonly unknowns: number }
  /** The column is made up by those before it, as that of a single season is by the constant. */
  | { readonly code: 'rank-deficient'; readonly column: string }
  /** The fixed part leaves nothing to explain. */
  | { readonly code: 'no-spread'; readonly df: number };

export interface OrderedData {
  readonly fixed: FixedPart;
  readonly places: Places;
  /** Levels by factor, sorted by code unit, with the number of their observations. */
  readonly levels: readonly (readonly { readonly level: string; readonly observations: number }[])[];
  /** What the fixed part leaves, in units of `unit`. */
  readonly left: Vector;
  /** Root mean square of what the fixed part leaves, in the values' unit. */
  readonly unit: number;
  /** Least squares coefficients, in the values' unit per unit of the column. */
  readonly coefficients: readonly number[];
  readonly df: number;
}

/**
 * The data in order, or why nothing can be told. Throws RangeError for a value that is not finite or whose square is
 * not, a scale that is not above 0, a column or factor whose length differs from the values', two of one name, or more
 * than four factors.
 */
export function orderedData(data: PosteriorData): OrderedData | { readonly cannot: PosteriorRefusal } {
  check(data);
  if (data.y.length === 0) return { cannot: { code: 'no-values' } };
  const df = data.y.length - data.fixed.length;
  if (df <= 0) return { cannot: { code: 'no-residual-df', values: data.y.length, unknowns: data.fixed.length } };
  const order = orderOf(data);
  const turned = <T>(values: readonly T[]): T[] => order.map((at) => values[at] as T);
  const y = Float64Array.from(turned(data.y));
  const fixed = fixedPart(data.fixed.map(({ name, values }) => ({ name, values: turned(values) })));
  if ('dependent' in fixed) return { cannot: { code: 'rank-deficient', column: fixed.dependent } };
  const left = withoutFixed(fixed, y);
  const unit = Math.sqrt(dot(left, left) / df);
  if (!Number.isFinite(unit)) throw new RangeError('invalid values: their squares are beyond any number');
  const largest = y.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (unit <= ROUNDING * largest) return { cannot: { code: 'no-spread', df } };
  return {
    fixed,
    ...laidOut(data.random.map((factor) => ({ ...factor, level: turned(factor.level) }))),
    left: left.map((value) => value / unit),
    unit,
    coefficients: fixed.weights.map((row) => dot(row, y)),
    df,
  };
}

function check({ y, fixed, random }: PosteriorData): void {
  for (const value of [...y, ...fixed.flatMap((one) => one.values)]) {
    if (!Number.isFinite(value)) throw new RangeError(`invalid value: ${value}`);
  }
  for (const { name, length } of [
    ...fixed.map((one) => ({ name: one.name, length: one.values.length })),
    ...random.map((one) => ({ name: one.name, length: one.level.length })),
  ]) {
    if (length !== y.length) throw new RangeError(`invalid length: ${name} has ${length} for ${y.length} values`);
  }
  for (const names of [fixed, random].map((part) => part.map((one) => one.name))) {
    const twice = names.find((name, at) => names.indexOf(name) < at);
    if (twice !== undefined) throw new RangeError(`invalid name: ${twice} is there twice`);
  }
  for (const { name, scale } of random) {
    if (!(scale > 0 && Number.isFinite(scale))) throw new RangeError(`invalid scale: ${scale} of ${name}`);
  }
  if (random.length > MOST_FACTORS) throw new RangeError(`invalid factors: ${random.length}`);
}

/** By levels, then fixed columns, then values: ties are equal observations, so their order does not matter. */
function orderOf({ y, fixed, random }: PosteriorData): number[] {
  const byText = random.map(({ level }) => level);
  const byNumber = [...fixed.map(({ values }) => values), y];
  const compare = (a: number, b: number): number => {
    for (const level of byText) {
      const [one = '', other = ''] = [level[a], level[b]];
      if (one !== other) return one < other ? -1 : 1;
    }
    for (const values of byNumber) {
      const difference = (values[a] ?? 0) - (values[b] ?? 0);
      if (difference !== 0) return difference;
    }
    return 0;
  };
  return [...y.keys()].sort(compare);
}

function laidOut(factors: readonly PosteriorFactor[]): Pick<OrderedData, 'places' | 'levels'> {
  const range: { from: number; to: number }[] = [];
  let count = 0;
  const laid = factors.map(({ level, also }) => {
    const names = [...new Set([...level, ...(also ?? [])])].sort();
    const place = new Map(names.map((name, at) => [name, count + at]));
    range.push({ from: count, to: count + names.length });
    count += names.length;
    const of = level.map((name) => place.get(name) ?? 0);
    const observed = new Map<string, number>();
    for (const name of level) observed.set(name, (observed.get(name) ?? 0) + 1);
    return { of, levels: names.map((name) => ({ level: name, observations: observed.get(name) ?? 0 })) };
  });
  return { places: { of: laid.map(({ of }) => of), range, count }, levels: laid.map(({ levels }) => levels) };
}
