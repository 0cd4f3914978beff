/**
 * Chances that are not known exactly, as draws. A chance with a mean and "as if counted on so many" is a beta
 * distribution, Beta(mean × counted, (1 - mean) × counted); its draws are its quantiles at points spread evenly, so the
 * same every time, and each of them rises with the mean.
 */
import { betaQuantile } from '../beta-quantile.ts';

export interface UncertainChance {
  /** 0 to 1. */
  readonly mean: number;
  /** As sure as if counted on so many fruits, storms or days, above 0; null where it is known exactly. */
  readonly counted: number | null;
}

/** Enough that the tenths of a difference of losses move by less than a twentieth of "little". */
export const DRAWS = 499;

/** A smaller one has all its draws at 0 or 1, to the last digit, but for one in a thousand million. */
const LEAST_SHAPE = 1e-9;

/**
 * Draws of one chance: its quantiles at the middles of as many equal parts, in the order of one of five lists of points
 * that do not go together (`stream` 0 to 4; Halton 1960, Numerische Mathematik 2:84-90, bases 2, 3, 5, 7, 11, from
 * memory). Throws RangeError for a mean outside 0 to 1, a count not above 0, and any other stream.
 */
export function chanceDraws({ mean, counted }: UncertainChance, stream: number): number[] {
  const order = ORDERS[stream];
  if (order === undefined) throw new RangeError(`invalid stream: ${stream}`);
  if (!(mean >= 0 && mean <= 1)) throw new RangeError(`invalid mean: ${mean}`);
  if (counted !== null && !(counted > 0 && Number.isFinite(counted))) throw new RangeError(`invalid count: ${counted}`);
  if (counted === null || mean === 0 || mean === 1) return new Array<number>(DRAWS).fill(mean);
  const [a, b] = [mean, 1 - mean].map((part) => Math.max(part * counted, LEAST_SHAPE)) as [number, number];
  return order.map((place) => betaQuantile((place + 0.5) / DRAWS, a, b));
}

/** The digits of a number to a base, mirrored at the point. */
function mirrored(number: number, base: number): number {
  let [value, place, left] = [0, 1, number];
  while (left > 0) {
    place /= base;
    value += place * (left % base);
    left = Math.floor(left / base);
  }
  return value;
}

const ORDERS: readonly (readonly number[])[] = [2, 3, 5, 7, 11].map((base) => {
  const points = Array.from({ length: DRAWS }, (_, draw) => mirrored(draw + 1, base));
  const sorted = [...points].sort((one, other) => one - other);
  return points.map((point) => sorted.indexOf(point));
});
