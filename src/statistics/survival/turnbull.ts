/**
 * The likeliest distribution of times of which some are known only between two looks: the shares solve Turnbull's
 * equation of self-consistency (1976, J. R. Statist. Soc. B 38:290-295, from memory). His own iteration creeps, so
 * the solution is found by Newton's method on the places that hold something, and accepted only when no other place
 * would raise the likelihood (Gentleman & Geyer 1994, Biometrika 81:618-623, from memory).
 */
import { leastSquares } from '../least-squares.ts';
import { type Cover, innermost, type Place } from './innermost.ts';
import type { RipeTime } from './ripe-time.ts';

const MOST_STEPS = 1000;
/** Shares that a step moves by less are at rest. */
const AT_REST = 1e-12;
/** How far, relative to the number of observations, a place may seem to raise the likelihood by rounding alone. */
const ROUNDING = 1e-9;
/** A share below this is nothing: where holding a little is as likely as holding none, Newton's step leaves a rounding. */
const NOTHING = 1e-10;

export interface Mass {
  readonly place: Place;
  /** Share of all whose time lies there, > 0; where inside the place cannot be told. Together 1. */
  readonly share: number;
}

/**
 * Places in order of time with the share of each; none for no observations. Assumes independent observations, and
 * looks that did not choose their day by what was about to happen.
 */
export function turnbull(observations: readonly RipeTime[]): Mass[] {
  const { places, covers } = innermost(observations);
  if (places.length === 0) return [];
  const shares = likeliestShares(covers, places.length);
  return places.flatMap((place, index) => {
    const share = shares[index] ?? 0;
    return share > NOTHING ? [{ place, share }] : [];
  });
}

function likeliestShares(covers: readonly Cover[], places: number): number[] {
  let shares = new Array<number>(places).fill(1 / places);
  for (let step = 0; step < MOST_STEPS; step++) {
    const change = newtonChange(covers, shares);
    if (change.every((one) => Math.abs(one) <= AT_REST)) {
      const missing = mostWanted(covers, shares);
      if (missing === null) return shares;
      shares = withPlace(covers, shares, missing);
    } else {
      shares = moved(covers, shares, change);
    }
  }
  throw new RangeError(`invalid times: no likeliest distribution in ${MOST_STEPS} steps`);
}

/**
 * Newton's step for sum(count log P) - n sum(share) on the places that hold something, zero elsewhere. With
 * S = sqrt(count) / P where an observation covers a place, the Hessian is -S'S and S times the shares is sqrt(count),
 * so the step is shares - n (S'S)^-1 1, and the rows of the pseudo-inverse of S give (S'S)^-1.
 */
function newtonChange(covers: readonly Cover[], shares: readonly number[]): number[] {
  const held = shares.flatMap((share, place) => (share > 0 ? [place] : []));
  const rows = covers.map((cover) => ({ ...cover, weight: Math.sqrt(cover.count) / chanceOf(cover, shares) }));
  const columns = held.map((place) =>
    rows.map(({ first, last, weight }) => (first <= place && place <= last ? weight : 0)),
  );
  const { weights } = leastSquares(columns, new Array<number>(rows.length).fill(0));
  const sums = rows.map((_, row) => weights.reduce((sum, one) => sum + (one[row] ?? 0), 0));
  const n = covers.reduce((sum, { count }) => sum + count, 0);
  const change = new Array<number>(shares.length).fill(0);
  held.forEach((place, index) => {
    const own = weights[index] ?? [];
    change[place] = (shares[place] ?? 0) - n * own.reduce((sum, one, row) => sum + one * (sums[row] ?? 0), 0);
  });
  return change;
}

/** The shares after the longest part of the step that lowers neither a share below zero nor the likelihood. */
function moved(covers: readonly Cover[], shares: readonly number[], change: readonly number[]): number[] {
  const stops = shares.map((share, place) => {
    const by = change[place] ?? 0;
    return share > 0 && share + by <= 0 ? share / -by : Number.POSITIVE_INFINITY;
  });
  const furthest = Math.min(1, ...stops);
  return climb(covers, shares, (part) =>
    shares.map((share, place) => {
      const emptied = part === 1 && stops[place] === furthest;
      return emptied ? 0 : share + part * furthest * (change[place] ?? 0);
    }),
  );
}

/** The place that would raise the likelihood most if it held something; null when none would. */
function mostWanted(covers: readonly Cover[], shares: readonly number[]): number | null {
  const n = covers.reduce((sum, { count }) => sum + count, 0);
  const rows = covers.map((cover) => ({ ...cover, weight: cover.count / chanceOf(cover, shares) }));
  const slopes = shares.map((_, place) =>
    rows.reduce((sum, { first, last, weight }) => sum + (first <= place && place <= last ? weight : 0), 0),
  );
  const steepest = Math.max(...slopes);
  return steepest > n * (1 + ROUNDING) ? slopes.indexOf(steepest) : null;
}

const withPlace = (covers: readonly Cover[], shares: readonly number[], wanted: number): number[] =>
  climb(covers, shares, (part) =>
    shares.map((share, place) => (1 - part / 2) * share + (place === wanted ? part / 2 : 0)),
  );

/** The first of parts 1, 1/2, 1/4 … of a step at which the likelihood has not fallen, scaled to add up to 1. */
function climb(covers: readonly Cover[], from: readonly number[], at: (part: number) => number[]): number[] {
  const before = logLikelihood(covers, from);
  const n = covers.reduce((sum, { count }) => sum + count, 0);
  for (let part = 1; part > Number.EPSILON; part /= 2) {
    const raw = at(part);
    const whole = raw.reduce((sum, one) => sum + one, 0);
    const shares = raw.map((one) => one / whole);
    if (logLikelihood(covers, shares) >= before - n * Number.EPSILON * 16) return shares;
  }
  return [...from];
}

const logLikelihood = (covers: readonly Cover[], shares: readonly number[]): number =>
  covers.reduce((sum, cover) => sum + cover.count * Math.log(chanceOf(cover, shares)), 0);

function chanceOf({ first, last }: Cover, shares: readonly number[]): number {
  let chance = 0;
  for (let place = first; place <= last; place++) chance += shares[place] ?? 0;
  return chance;
}
