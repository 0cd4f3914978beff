/** What draws of levels say: where each lies, how it stands to one of them, and how often it is among the best. */
import type { Interval } from '../../figure.ts';
import type { Vector } from '../linear/cholesky.ts';
import type { LevelDraws } from './level-draws.ts';

export interface LevelInterval {
  readonly level: string;
  /** In the values' unit. */
  readonly median: number;
  readonly interval: Interval;
}

export interface LevelDifference extends LevelInterval {
  /** Share of draws in which the level is above the one it is compared with, of 1; equal draws count as half. */
  readonly share_above_zero: number;
}

/**
 * Median and equal-tailed interval of each level, at a share such as 0.9. Throws RangeError for a share outside 0 to 1
 * or levels without draws.
 */
export function levelIntervals(levels: readonly LevelDraws[], share = 0.9): LevelInterval[] {
  return levels.map(({ level, draws }) => ({ level, ...middleOf(draws, share) }));
}

/** Each other level less this one. Throws RangeError when it is not among them, and as `levelIntervals` does. */
export function differences(levels: readonly LevelDraws[], from: string, share = 0.9): LevelDifference[] {
  const base = levels.find(({ level }) => level === from)?.draws;
  if (!base) throw new RangeError(`invalid level: ${from} is not among the levels`);
  return levels
    .filter(({ level }) => level !== from)
    .map(({ level, draws }) => {
      const less = draws.map((value, draw) => value - (base[draw] as number));
      const above = less.reduce((sum, value) => sum + (value > 0 ? 1 : value === 0 ? 0.5 : 0), 0);
      return { level, ...middleOf(less, share), share_above_zero: above / less.length };
    });
}

/**
 * Share of draws, of 1, in which each level is among the highest `places`. Levels that share the last place of a draw
 * share its credit, so that shares add up to `places`. Throws RangeError unless places is a whole number from 1 to the
 * number of levels.
 */
export function bestShare(
  levels: readonly LevelDraws[],
  places: number,
): { readonly level: string; readonly share: number }[] {
  if (!(Number.isInteger(places) && places >= 1 && places <= levels.length))
    throw new RangeError(`invalid places: ${places} of ${levels.length}`);
  const draws = levels[0]?.draws.length ?? 0;
  const credit = new Float64Array(levels.length);
  for (let draw = 0; draw < draws; draw++) {
    const values = Float64Array.from(levels, (one) => one.draws[draw] as number);
    const last = values.toSorted()[levels.length - places] as number;
    const above = values.reduce((sum, value) => sum + (value > last ? 1 : 0), 0);
    const level = values.reduce((sum, value) => sum + (value === last ? 1 : 0), 0);
    for (const [at, value] of values.entries()) {
      credit[at] = (credit[at] as number) + (value > last ? 1 : value === last ? (places - above) / level : 0);
    }
  }
  return levels.map(({ level }, at) => ({ level, share: (credit[at] as number) / draws }));
}

function middleOf(draws: Vector, share: number): Omit<LevelInterval, 'level'> {
  if (!(share > 0 && share < 1)) throw new RangeError(`invalid share: ${share}`);
  if (draws.length === 0) throw new RangeError('invalid draws: there are none');
  const sorted = draws.toSorted();
  const [low, median, high] = [(1 - share) / 2, 0.5, (1 + share) / 2].map((p) => quantile(sorted, p));
  return { median: median as number, interval: { low: low as number, high: high as number, level: share } };
}

/** Between the two nearest of sorted draws: definition 7 of Hyndman & Fan 1996, The American Statistician 50:361-365 (from memory). */
function quantile(sorted: Vector, p: number): number {
  const at = p * (sorted.length - 1);
  const below = sorted[Math.floor(at)] as number;
  const above = sorted[Math.ceil(at)] as number;
  return below + (at - Math.floor(at)) * (above - below);
}
