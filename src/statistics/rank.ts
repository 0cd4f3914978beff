/** Where one value stands among others. */

/** The end of the order that has place 1: the largest value at the top, the smallest at the bottom. */
export type RankEnd = 'top' | 'bottom';

export interface Rank {
  /** 1 for the first; equal values share the better place and the places after it stay empty (1, 2, 2, 4). */
  readonly place: number;
  /** How many values were compared, this one included. */
  readonly of: number;
  /** How many of the others are equal to it. */
  readonly tied: number;
}

/** Sums of the same numbers in another order differ by about 1e-13; a printed total never shows a difference so small. */
const EQUAL_WITHIN = 1e-9;

/**
 * Place of a value among values that include it: one more than the number of those strictly beyond it, counted from
 * the top or from the bottom. Common practice in competitions, no source. Values are compared in full precision, so
 * the caller rounds nothing; two within 1e-9 of the larger size are equal. Zero equals only zero, which suits totals
 * of amounts that are never negative. Absent values are left out by the caller and lower `of`.
 * Throws RangeError for a number that is not finite, or a value that is not among the values.
 */
export function rankOf(value: number, among: readonly number[], from: RankEnd): Rank {
  for (const one of [value, ...among]) if (!Number.isFinite(one)) throw new RangeError(`invalid value: ${one}`);
  const equal = among.filter((one) => areEqual(one, value)).length;
  if (equal === 0) throw new RangeError(`invalid value: ${value} is not among the ${among.length} compared`);
  const beyond = among.filter((one) => !areEqual(one, value) && (from === 'top' ? one > value : one < value)).length;
  return { place: beyond + 1, of: among.length, tied: equal - 1 };
}

const areEqual = (a: number, b: number): boolean =>
  Math.abs(a - b) <= EQUAL_WITHIN * Math.max(Math.abs(a), Math.abs(b));
