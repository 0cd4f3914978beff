/**
 * How likely the ballots are when fruit i has log-worth λᵢ. Of a pair, Davidson 1970, Journal of the American
 * Statistical Association 65:317-328 (from memory): "first", "second" and "the same" have odds exp(λ₁) to exp(λ₂) to
 * ν exp((λ₁ + λ₂) / 2), which is Bradley & Terry 1952 at ν = 0. Of an order, Plackett 1975, Applied Statistics
 * 24:193-202 and Luce 1959 (from memory): the best is chosen among all with odds exp(λ), the next among the rest. An
 * order of two is a pair without "the same"; an order read from its worst end is not the same model turned round.
 * Every term is concave in λ and log ν together.
 */
import type { Vector } from '../linear/cholesky.ts';
import type { Ballots, PlacedPair } from './ballot.ts';

/** The log likelihood with its slopes, and its curvature turned positive, over the fruits' log-worths and then log ν. */
export interface Likelihood {
  readonly log: number;
  readonly slope: Vector;
  readonly information: readonly Vector[];
}

const SHARE_WON = { first: 0.5, same: 0, second: -0.5 } as const;

/** `logTies` is log ν; minus infinity where "the same" was not offered. */
export function likelihoodOf({ fruits, pairs, orders }: Ballots, worths: Vector, logTies: number): Likelihood {
  const size = fruits.length + 1;
  const slope = new Float64Array(size);
  const information = Array.from({ length: size }, () => new Float64Array(size));
  let log = 0;
  for (const pair of pairs) log += addPair(pair, worths, logTies, slope, information);
  for (const order of orders) log += addOrder(order, worths, slope, information);
  return { log, slope, information };
}

/** With d = λ₁ - λ₂ the three odds are exp(d / 2), exp(-d / 2) and ν. */
function addPair(
  { first, second, said }: PlacedPair,
  worths: Vector,
  logTies: number,
  slope: Vector,
  information: readonly Vector[],
): number {
  const ties = slope.length - 1;
  const half = (at(worths, first) - at(worths, second)) / 2;
  const largest = Math.max(Math.abs(half), logTies);
  const [one, other, same] = [Math.exp(half - largest), Math.exp(-half - largest), Math.exp(logTies - largest)];
  const whole = one + other + same;
  const mean = (one - other) / whole / 2;
  const sameShare = same / whole;
  const pull = SHARE_WON[said] - mean;
  add(slope, first, pull);
  add(slope, second, -pull);
  add(slope, ties, (said === 'same' ? 1 : 0) - sameShare);
  const along = (one + other) / whole / 4 - mean * mean;
  const across = -mean * sameShare;
  addBoth(information, first, second, -along);
  addBoth(information, first, ties, across);
  addBoth(information, second, ties, -across);
  add(information[first] as Vector, first, along);
  add(information[second] as Vector, second, along);
  add(information[ties] as Vector, ties, sameShare * (1 - sameShare));
  const own = said === 'first' ? half : said === 'second' ? -half : logTies;
  return own - largest - Math.log(whole);
}

function addOrder(order: readonly number[], worths: Vector, slope: Vector, information: readonly Vector[]): number {
  let log = 0;
  for (let stage = 0; stage + 1 < order.length; stage++) {
    const left = order.slice(stage);
    const largest = Math.max(...left.map((fruit) => at(worths, fruit)));
    const odds = left.map((fruit) => Math.exp(at(worths, fruit) - largest));
    const whole = odds.reduce((sum, one) => sum + one, 0);
    const [best = 0] = left;
    add(slope, best, 1);
    log += at(worths, best) - largest - Math.log(whole);
    for (const [i, fruit] of left.entries()) {
      const chance = (odds[i] ?? 0) / whole;
      const row = information[fruit] as Vector;
      add(slope, fruit, -chance);
      add(row, fruit, chance);
      for (const [j, other] of left.entries()) add(row, other, (-chance * (odds[j] ?? 0)) / whole);
    }
  }
  return log;
}

const at = (vector: Vector, place: number): number => vector[place] as number;

function add(vector: Vector, place: number, value: number): void {
  vector[place] = at(vector, place) + value;
}

function addBoth(rows: readonly Vector[], one: number, other: number, value: number): void {
  add(rows[one] as Vector, other, value);
  add(rows[other] as Vector, one, value);
}
