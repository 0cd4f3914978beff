/**
 * The most probable worths when the spreads are known, and how sharply the posterior falls off around them. Fruit f of
 * variety v has log-worth θᵥ + φ_f with θ ~ N(0, spread of varieties²), φ ~ N(0, spread of fruits²) and log ν ~
 * N(0, spread of ties²): a ridge that pulls towards equal worth. All is solved in units of these spreads, so that a
 * spread of 0 does no harm, by Newton’s method with halved steps; the posterior has a single peak.
 */
import { dot, logDeterminant, type Rows, solve, triangleOf, type Vector } from '../linear/cholesky.ts';
import type { Ballots } from './ballot.ts';
import { type Likelihood, likelihoodOf } from './choice-likelihood.ts';
import { choicesOf, leanOf } from './lean.ts';

const MOST_STEPS = 200;
/** Where a step gains less than this in log density, the error after it is far below rounding of what is printed. */
const LAST_GAIN = 1e-9;
/** Of the normal curve's: far from normal, the next order could take away more than there is. */
const LEAST_VARIANCE = 0.25;

/** Standard deviations on the scale of log odds, 0 or more; `ties` null where "the same" was not offered. */
export interface Spreads {
  readonly variety: number;
  readonly fruit: number;
  readonly ties: number | null;
}

export interface Leaning {
  readonly mean: number;
  readonly variance: number;
  readonly third_cumulant: number;
}

export interface Mode {
  /** Where the search ended, in units of the spreads: a good place to start from at spreads close by. */
  readonly units: Vector;
  /** θ by the variety's place. */
  readonly worths: Vector;
  /** Null where "the same" was not offered. */
  readonly log_ties: number | null;
  /** Of Σ weights[v] θᵥ: its variance in the normal curve fitted at the peak. */
  readonly variance: (weights: readonly number[]) => number;
  /** The same of the posterior itself: mean, variance and third cumulant, to the order that `lean` gives. */
  readonly leaning: (weights: readonly number[]) => Leaning;
  /** The log of the ballots' probability given the spreads, to the order after Laplace's: see `lean`. */
  readonly log_evidence: number;
}

/** `start` saves steps and changes nothing else. */
export function posteriorMode(ballots: Ballots, spreads: Spreads, start?: Vector): Mode {
  const { variety_of, varieties } = ballots;
  const ties = varieties.length + variety_of.length;
  const shape = { ballots, parts: partsOf(ballots, spreads), ties_offered: spreads.ties !== null };
  let at = evaluate(shape, start ?? new Float64Array(ties + 1));
  for (let step = 0; step < MOST_STEPS; step++) {
    const move = solve(at.triangle, at.slope);
    if (dot(move, at.slope) < LAST_GAIN) {
      at = evaluate(shape, moved(at.units, move, 1));
      break;
    }
    const next = climb(shape, at, move);
    if (next === null) break;
    at = next;
  }
  const { triangle, units } = at;
  const inUnitsOf = (weights: readonly number[]): Vector => {
    const scaled = new Float64Array(units.length);
    for (const [v, weight] of weights.entries()) scaled[v] = spreads.variety * weight;
    return scaled;
  };
  const leaning = leanAt(shape, at);
  return {
    units,
    worths: units.slice(0, varieties.length).map((unit) => spreads.variety * unit),
    log_ties: spreads.ties === null ? null : spreads.ties * (units[ties] as number),
    variance: (weights) => {
      const scaled = inUnitsOf(weights);
      return dot(scaled, solve(triangle, scaled));
    },
    leaning: (weights) => {
      const scaled = inUnitsOf(weights);
      const direction = solve(triangle, scaled);
      const more = leaning.along(byFruit(shape, direction));
      const normal = dot(scaled, direction);
      return {
        mean: dot(scaled, units) + dot(direction, leaning.pull),
        variance: Math.max(normal + more.variance, normal * LEAST_VARIANCE),
        third_cumulant: more.third_cumulant,
      };
    },
    log_evidence: at.log_density - logDeterminant(triangle) / 2 + leaning.log_evidence,
  };
}

/** The lean at the peak, its pull in units. */
function leanAt(shape: Shape, { units, triangle }: Evaluation) {
  const { latent, log_ties } = latentOf(shape, units);
  const choices = choicesOf(shape.ballots, latent, log_ties);
  // A column of the covariance by fruits: out to units, through the inverse, and back.
  const covariance = shape.parts.map((own) => {
    const out = new Float64Array(units.length);
    for (const { unit, per } of own) out[unit] = per;
    return byFruit(shape, solve(triangle, out));
  });
  const found = leanOf(choices, covariance);
  const pull = new Float64Array(units.length);
  for (const [row, own] of shape.parts.entries())
    for (const { unit, per } of own) pull[unit] = (pull[unit] as number) + per * (found.pull[row] as number);
  return { ...found, pull };
}

interface Shape {
  readonly ballots: Ballots;
  /** Of which units the log-worth of each fruit is made, and last log ν. */
  readonly parts: readonly (readonly { readonly unit: number; readonly per: number }[])[];
  readonly ties_offered: boolean;
}

function byFruit({ parts }: Shape, units: Vector): Vector {
  const latent = new Float64Array(parts.length);
  for (const [row, own] of parts.entries())
    for (const { unit, per } of own) latent[row] = (latent[row] as number) + per * (units[unit] as number);
  return latent;
}

function latentOf(shape: Shape, units: Vector): { latent: Vector; log_ties: number } {
  const latent = byFruit(shape, units);
  return { latent, log_ties: shape.ties_offered ? (latent.at(-1) as number) : Number.NEGATIVE_INFINITY };
}

function partsOf({ variety_of, varieties }: Ballots, spreads: Spreads): Shape['parts'] {
  return [
    ...variety_of.map((variety, fruit) => [
      { unit: variety, per: spreads.variety },
      { unit: varieties.length + fruit, per: spreads.fruit },
    ]),
    [{ unit: varieties.length + variety_of.length, per: spreads.ties ?? 0 }],
  ];
}

/** The units are those of the spreads: varieties, then fruits, then ties. */
interface Evaluation {
  readonly units: Vector;
  /** Up to a constant that depends on nothing but how many units there are. */
  readonly log_density: number;
  readonly slope: Vector;
  readonly triangle: Rows;
}

/** The first of parts 1, 1/2, 1/4 … of a step that does not lower the density; null when rounding hides them all. */
function climb(shape: Shape, from: Evaluation, move: Vector): Evaluation | null {
  for (let part = 1; part > Number.EPSILON; part /= 2) {
    const next = evaluate(shape, moved(from.units, move, part));
    if (next.log_density >= from.log_density) return next;
  }
  return null;
}

const moved = (units: Vector, move: Vector, part: number): Vector =>
  units.map((unit, place) => unit + part * (move[place] as number));

function evaluate(shape: Shape, units: Vector): Evaluation {
  const { latent, log_ties } = latentOf(shape, units);
  const likelihood = likelihoodOf(shape.ballots, latent, log_ties);
  const { slope, precision } = inUnits(shape.parts, units.length, likelihood);
  const triangle = triangleOf(precision);
  if (triangle === null) throw new RangeError('invalid spreads: too wide for the posterior to have a peak');
  return {
    units,
    log_density: likelihood.log - dot(units, units) / 2,
    slope: slope.map((one, place) => one - (units[place] as number)),
    triangle,
  };
}

/** Slope of the log likelihood, and its information plus the prior's, by units instead of fruits. */
function inUnits(
  parts: Shape['parts'],
  size: number,
  { slope, information }: Likelihood,
): { slope: Vector; precision: Vector[] } {
  const bySlope = new Float64Array(size);
  const precision = Array.from({ length: size }, (_, unit) => new Float64Array(size).fill(1, unit, unit + 1));
  for (const [row, own] of parts.entries()) {
    for (const { unit, per } of own) {
      bySlope[unit] = (bySlope[unit] as number) + per * (slope[row] as number);
      const target = precision[unit] as Vector;
      for (const [column, others] of parts.entries()) {
        const value = per * ((information[row] as Vector)[column] as number);
        if (value === 0) continue;
        for (const other of others) target[other.unit] = (target[other.unit] as number) + value * other.per;
      }
    }
  }
  return { slope: bySlope, precision };
}
