/**
 * The share of each group by itself, partly drawn to what all groups have in common: a keeper with few calls is judged
 * much by what the others do, one with many by their own. Groups are as in `beta-binomial.ts`, with its priors: given the
 * common share m and the correlation r of units of one group, a group's share is
 * Beta(m (1 - r)/r + hits, (1 - m)(1 - r)/r + misses) (Skellam 1948, from memory). Both unknowns are summed over by
 * quadrature; nothing is drawn by lot.
 */
import type { Interval } from '../figure.ts';
import { CORRELATION_SCALE, type UnitGroup } from './beta-binomial.ts';
import { incompleteBeta } from './incomplete-beta.ts';

const ANGLES = 40;
const ROOTS = 16;
/** What weighs less than this part of the heaviest is left away. */
const NEGLIGIBLE = 1e-5;
/** Of a share. */
const CLOSE = 1e-5;

export interface MemberShare {
  /** Posterior mean, 0 to 1. */
  readonly share: number;
  /** Equal tails, never reaching 0 or 1. */
  readonly interval: Interval;
}

/** One place of the common share and the correlation, as the shapes of the Beta curve of groups. */
interface Place {
  readonly a: number;
  readonly b: number;
  readonly weight: number;
}

/**
 * In the groups' order; right to 0.005 from two groups on. Throws RangeError without groups, unless hits and units are
 * whole and 0 <= hits <= units (a group without units is one nobody has seen), or for a level outside 0 to 1.
 */
export function memberShares(groups: readonly UnitGroup[], level: number): MemberShare[] {
  if (groups.length === 0) throw new RangeError('invalid groups: none');
  for (const { hits, units } of groups)
    if (!(Number.isInteger(units) && Number.isInteger(hits) && hits >= 0 && hits <= units))
      throw new RangeError(`invalid group: ${hits} of ${units}`);
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  const places = placesOf(groups);
  return groups.map((group) => shareOf(places, group, level));
}

/** Midpoints in the angle, in which the prior of the share is flat, and in the root of the correlation. */
function placesOf(groups: readonly UnitGroup[]): Place[] {
  const tried = Array.from({ length: ANGLES * ROOTS }, (_, index) => {
    const share = Math.sin((Math.PI / 2) * ((Math.floor(index / ROOTS) + 0.5) / ANGLES)) ** 2;
    const root = ((index % ROOTS) + 0.5) / ROOTS;
    const correlation = root ** 2;
    const units = (1 - correlation) / correlation;
    const [a, b] = [share * units, (1 - share) * units];
    // dr = 2 root d(root).
    const prior = Math.log(root) - 0.5 * (correlation / CORRELATION_SCALE) ** 2;
    return { a, b, log: groups.reduce((sum, group) => sum + logChance(group, a, b), prior) };
  });
  const peak = Math.max(...tried.map(({ log }) => log));
  return tried
    .map(({ a, b, log }) => ({ a, b, weight: Math.exp(log - peak) }))
    .filter(({ weight }) => weight > NEGLIGIBLE);
}

/** Products rather than gamma functions: counts are small, and nothing is lost where units are alike. */
function logChance({ hits, units }: UnitGroup, a: number, b: number): number {
  let log = 0;
  for (let j = 0; j < hits; j++) log += Math.log(a + j);
  for (let j = 0; j < units - hits; j++) log += Math.log(b + j);
  for (let j = 0; j < units; j++) log -= Math.log(a + b + j);
  return log;
}

function shareOf(places: readonly Place[], { hits, units }: UnitGroup, level: number): MemberShare {
  const own = places.map(({ a, b, weight }) => ({ a: a + hits, b: b + units - hits, weight }));
  const whole = own.reduce((sum, { weight }) => sum + weight, 0);
  const below = (share: number): number =>
    own.reduce((sum, { a, b, weight }) => sum + weight * incompleteBeta(share, 1 - share, a, b), 0) / whole;
  const tail = (1 - level) / 2;
  return {
    share: own.reduce((sum, { a, b, weight }) => sum + (weight * a) / (a + b), 0) / whole,
    interval: { low: quantile(below, tail), high: quantile(below, 1 - tail), level },
  };
}

function quantile(below: (share: number) => number, p: number): number {
  let [low, high] = [0, 1];
  while (high - low > CLOSE) {
    const middle = (low + high) / 2;
    if (below(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
