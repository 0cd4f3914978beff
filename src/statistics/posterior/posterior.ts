/**
 * What values tell of a crossed model's levels, with all that is unknown of its spreads carried along:
 *
 *   y = X b + Σ Zₖuₖ + e,   e ~ N(0, σ²),   uₖ ~ N(0, (τₖσ)²),   p(b) ∝ 1,   p(σ) ∝ 1/σ,   τₖ ~ half-normal(scaleₖ)
 *
 * The scale is in residual SDs, so a prior says how levels differ beside fruits of one mound and holds in any unit. With
 * few levels restricted likelihood often ends at a spread of 0 and ranges that pretend to know it; here the prior is
 * weighed by the likelihood: p(τ | y) ∝ prior · |V|^-½ |XᵗV⁻¹X|^-½ (yᵗPy)^-(n-p)/2, then σ² | τ = yᵗPy / χ²(n - p), then
 * (b, u) | τ, σ normal about the solution of Henderson's equations (Gelman et al. 2013, Bayesian Data Analysis, 3rd ed.,
 * 5.4, 14.2 and 15; half-normal scales: Gelman 2006, Bayesian Analysis 1:515-534; all from memory). Ratios come from a
 * lattice (see `ratio-lattice`), so draws are independent and as many as asked for; that is their effective number.
 */

import { type CrossedEquations, crossedEquations, solveAt } from '../crossed/crossed-equations.ts';
import { dot, type Vector } from '../linear/cholesky.ts';
import { upperSolve } from '../linear/sparse-triangle.ts';
import { randomStream } from '../random-stream.ts';
import { type RatioAxis, type RatioLattice, type RatioPoint, ratioLattice } from '../ratio-lattice.ts';
import { type OrderedData, orderedData, type PosteriorData, type PosteriorRefusal } from './posterior-data.ts';
import { chiSquare, standardNormal } from './variates.ts';

export interface PosteriorSettings {
  /** Same data, same seed: same draws, whatever the order of the observations. */
  readonly seed: number;
  /** A whole number above 0. A share of 2,000 independent draws is known to 1 in 90 (standard error at a half). */
  readonly draws: number;
}

/** Draws stand in one order in all arrays: place i of each belongs to one draw. */
export interface Posterior {
  readonly observations: number;
  /** How many draws, each independent of the others. */
  readonly draws: number;
  /** In the order given; in the values' unit per unit of the column. */
  readonly coefficients: readonly { readonly name: string; readonly draws: Vector }[];
  readonly factors: readonly FactorPosterior[];
  /** σ, in the values' unit. */
  readonly residual_sd: Vector;
  /** Ratios tried, and the share of the heaviest: a lattice on which one point holds nearly all is too coarse. */
  readonly lattice: { readonly points: number; readonly largest_share: number };
}

export interface FactorPosterior {
  readonly name: string;
  /** Sorted by code unit. Effects are deviations in the values' unit; without observations, from the spread alone. */
  readonly levels: readonly { readonly level: string; readonly observations: number; readonly draws: Vector }[];
  /**
   * τσ, in the values' unit. Each ratio is spread evenly over its lattice cell, which widens the spread's own range by
   * 1 to 4 in 100 and touches no effect.
   */
  readonly sd: Vector;
}

/**
 * The posterior, or why there is none. One level, one value a cell, one season are no refusals: what the data cannot
 * tell apart is shared out by the priors. Throws RangeError for draws that are not a whole number above 0, and as
 * `orderedData` does.
 */
export function posterior(
  data: PosteriorData,
  { seed, draws }: PosteriorSettings,
): Posterior | { readonly cannot: PosteriorRefusal } {
  if (!(Number.isInteger(draws) && draws > 0)) throw new RangeError(`invalid draws: ${draws}`);
  const ordered = orderedData(data);
  if ('cannot' in ordered) return ordered;
  const equations = crossedEquations(ordered.left, ordered.fixed, ordered.places);
  const axes = data.random.map(({ scale }, k) => ({ scale, bend: 1 / Math.sqrt(mostOfALevel(ordered, k)) }));
  const lattice = ratioLattice((ratios) => logDensity(equations, axes, ratios), axes);
  const drawn = drawAll(equations, lattice, draws, randomStream(seed));
  return {
    observations: data.y.length,
    draws,
    coefficients: coefficientsOf(ordered, equations, drawn),
    factors: data.random.map(({ name }, k) => ({
      name,
      levels: (ordered.levels[k] ?? []).map(({ level, observations }, at) => {
        const unknown = equations.place[(ordered.places.range[k]?.from ?? 0) + at] as number;
        return { level, observations, draws: scaled(drawn.unknowns[unknown] as Vector, ordered.unit) };
      }),
      sd: scaled(drawn.sd[k] as Vector, ordered.unit),
    })),
    residual_sd: scaled(drawn.residual_sd, ordered.unit),
    lattice: {
      points: lattice.points.length,
      largest_share: lattice.points.reduce((most, { share }) => Math.max(most, share), 0),
    },
  };
}

const mostOfALevel = ({ levels }: OrderedData, factor: number): number =>
  (levels[factor] ?? []).reduce((most, { observations }) => Math.max(most, observations), 1);

/** log p(τ | y) but for a constant. */
function logDensity(equations: CrossedEquations, axes: readonly RatioAxis[], ratios: readonly number[]): number {
  const { log_determinant, quadratic } = solveAt(equations, ratios);
  const prior = axes.reduce((sum, { scale }, k) => sum + ((ratios[k] ?? 0) / scale) ** 2, 0);
  return -(log_determinant + equations.df * Math.log(quadratic) + prior) / 2;
}

interface Drawn {
  /** By place: c, or u = τv. */
  readonly unknowns: readonly Vector[];
  readonly residual_sd: Vector;
  /** τσ by factor. */
  readonly sd: readonly Vector[];
}

/** Draws of one point share its triangle, but stand among the others where chance put them. */
function drawAll(equations: CrossedEquations, lattice: RatioLattice, draws: number, random: () => number): Drawn {
  const { layout, factor, df } = equations;
  const unknowns = Array.from({ length: layout.size }, () => new Float64Array(draws));
  const residual_sd = new Float64Array(draws);
  const sd = lattice.points[0]?.ratios.map(() => new Float64Array(draws)) ?? [];
  const vector = new Float64Array(layout.size);
  for (const [point, places] of placesByPoint(lattice.points, draws, random)) {
    const { ratios, numbers, solution, quadratic } = solveAt(equations, point.ratios);
    for (const at of places) {
      const sigma = Math.sqrt(quadratic / chiSquare(random, df));
      residual_sd[at] = sigma;
      for (let one = 0; one < layout.size; one++) {
        vector[one] = standardNormal(random) / Math.sqrt(numbers[layout.start[one] as number] as number);
      }
      upperSolve(layout, numbers, vector);
      for (let one = 0; one < layout.size; one++) {
        const value = (solution[one] as number) + sigma * (vector[one] as number);
        (unknowns[one] as Vector)[at] = (ratios[factor[one] as number] ?? 1) * value;
      }
      const spread = lattice.withinCell(point, ratios.map(random));
      for (const [k, ratio] of spread.entries()) (sd[k] as Vector)[at] = sigma * ratio;
    }
  }
  return { unknowns, residual_sd, sd };
}

/** Which draws fall on which point. */
function placesByPoint(
  points: readonly RatioPoint[],
  draws: number,
  random: () => number,
): readonly (readonly [RatioPoint, readonly number[]])[] {
  const sorted = Array.from({ length: draws }, (_, at) => ({ at, chance: random() }));
  sorted.sort((a, b) => a.chance - b.chance || a.at - b.at);
  let next = 0;
  let sum = 0;
  return points.flatMap((point, index) => {
    sum += point.share;
    const from = next;
    const last = index === points.length - 1;
    while (next < draws && (last || (sorted[next]?.chance ?? 1) < sum)) next++;
    return next === from ? [] : [[point, sorted.slice(from, next).map(({ at }) => at)] as const];
  });
}

/** b = (XᵗX)⁻¹Xᵗy + R⁻¹c, in the values' unit. */
function coefficientsOf(
  { fixed, places, coefficients, unit }: OrderedData,
  { place }: CrossedEquations,
  { unknowns }: Drawn,
): Posterior['coefficients'] {
  return fixed.names.map((name, j) => {
    const draws = new Float64Array(unknowns[0]?.length ?? 0).fill(coefficients[j] ?? 0);
    for (const [i, direction] of fixed.basis.entries()) {
      const weight = unit * dot(fixed.weights[j] as Vector, direction);
      const own = unknowns[place[places.count + i] as number] as Vector;
      for (let at = 0; at < draws.length; at++) draws[at] = (draws[at] as number) + weight * (own[at] as number);
    }
    return { name, draws };
  });
}

const scaled = (values: Vector, unit: number): Vector => values.map((value) => unit * value);
