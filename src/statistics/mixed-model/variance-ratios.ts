/**
 * The variance ratios that make the restricted likelihood greatest, each 0 or more: a fixed grid finds the valley,
 * Newton steps with exact first and all but exact second derivatives its bottom. Deterministic. A ratio that ends at 0
 * does so because the criterion rises from there (the condition of Karush, Kuhn & Tucker), not because a search ran out.
 */
import { dot, type Rows, solve, triangleOf } from '../linear/cholesky.ts';
import { type Derivatives, derivatives } from './derivatives.ts';
import type { ReducedModel } from './reduced-model.ts';
import { type Evaluation, evaluate, roughCriterion } from './restricted-likelihood.ts';

/**
 * A residual spread below 1/3000 of a component's: likelihood then is all but flat on the way to no residual at all,
 * where data go whose levels are as many as their values, or whose repeats agree.
 */
const LARGEST_RATIO = 1e7;
export const tooLarge = (ratio: number): boolean => ratio >= LARGEST_RATIO;

const GRID = [0, 0.1, 0.3, 1, 4, 30, 1e3, 1e6];
const STARTS = [0, 1, 1e3];
const SWEEPS = 4;
const STEPS = 100;
const HALVINGS = 40;
/** Twice what a Newton step still gains in log likelihood. Below FLAT the criterion's own rounding hides the gain. */
const FLAT = 1e-9;
const SETTLED = 1e-20;
/** Near the bottom a step leaves the square of what it found; one that leaves more than this share met rounding. */
const STALLED = 0.1;
/** Share of a ratio's own curvature that must be left beside the other ratios: less is the error of the differences. */
const CURVED = 1e-5;

interface NewtonStep {
  readonly change: readonly number[];
  /** Twice the log likelihood that it gains, by the quadratic that it follows. */
  readonly gain: number;
  readonly exact: boolean;
}

export interface Optimum {
  readonly at: Evaluation;
  readonly converged: boolean;
  readonly steps: number;
  /** Twice what a further Newton step would gain in log likelihood. */
  readonly left_to_gain: number;
}

/** The best of the valleys that the grid leads to from components of none, one and a thousand residual variances. */
export function bestRatios(model: ReducedModel): Optimum {
  const criterion = remembered((ratios) => roughCriterion(model, ratios));
  const ends = STARTS.map((start) => onGrid(criterion, new Array<number>(model.places.range.length).fill(start)));
  const different = ends.filter((end, at) => ends.findIndex((other) => `${other}` === `${end}`) === at);
  const found = different.map((end) => descend(model, evaluate(model, end)));
  return found.reduce((best, next) => (next.at.criterion < best.at.criterion - FLAT ? next : best));
}

/** Best grid point for one factor at a time, until none moves. */
function onGrid(criterion: (ratios: readonly number[]) => number, start: readonly number[]): readonly number[] {
  let best = start;
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const before = best;
    for (const factor of start.keys()) {
      for (const ratios of GRID.map((ratio) => best.with(factor, ratio))) {
        if (criterion(ratios) < criterion(best)) best = ratios;
      }
    }
    if (best === before) break;
  }
  return best;
}

/** The same, asking for each point once. */
function remembered(criterion: (ratios: readonly number[]) => number): (ratios: readonly number[]) => number {
  const known = new Map<string, number>();
  return (ratios) => {
    const key = `${ratios}`;
    const value = known.get(key) ?? criterion(ratios);
    known.set(key, value);
    return value;
  };
}

function descend(model: ReducedModel, start: Evaluation): Optimum {
  let at = start;
  let last = Number.POSITIVE_INFINITY;
  for (let steps = 0; steps < STEPS; steps++) {
    if (!(at.quadratic > 0)) return { at, converged: false, steps, left_to_gain: last };
    const { change, gain, exact } = newtonStep(at.ratios, derivatives(model, at));
    if (gain <= SETTLED || (gain < FLAT && gain >= STALLED * last))
      return { at, converged: exact, steps, left_to_gain: gain };
    const next = move(model, at, change, gain < FLAT);
    if (next === null || next.ratios.some(tooLarge)) {
      return { at: next ?? at, converged: false, steps, left_to_gain: gain };
    }
    last = gain < FLAT ? gain : last;
    at = next;
  }
  return { at, converged: false, steps: STEPS, left_to_gain: last };
}

/**
 * The step among ratios that are free: those above 0, and those at 0 where the criterion falls, unless the step
 * itself would take them below. `exact` tells that the criterion curves upwards, as it does around a minimum.
 */
function newtonStep(ratios: readonly number[], slopes: Derivatives): NewtonStep {
  const { gradient, hessian, expected } = slopes;
  let free = [...gradient.keys()].filter((k) => (ratios[k] ?? 0) > 0 || (gradient[k] ?? 0) < 0);
  for (;;) {
    const part = (matrix: readonly (readonly number[])[]) =>
      free.map((k) => Float64Array.from(free, (l) => matrix[k]?.[l] ?? 0));
    const exact = curvesUpwards(part(hessian)) ? triangleOf(part(hessian)) : null;
    const down = Float64Array.from(free, (k) => -(gradient[k] ?? 0));
    const step = solve(exact ?? triangleOf(part(expected)) ?? [], down);
    const stays = free.filter((k, at) => (ratios[k] ?? 0) > 0 || (step[at] ?? 0) > 0);
    if (stays.length === free.length) {
      const change = gradient.map((_, k) => step[free.indexOf(k)] ?? 0);
      return { change, gain: dot(step, down), exact: exact !== null };
    }
    free = stays;
  }
}

const curvesUpwards = (hessian: Rows): boolean =>
  triangleOf(hessian.map((row, k) => row.with(k, (1 - CURVED) * (row[k] as number)))) !== null;

/** The longest of ever shorter steps that lowers the criterion; the whole step where rounding hides its gain. */
function move(model: ReducedModel, at: Evaluation, change: readonly number[], flat: boolean): Evaluation | null {
  let share = longestShare(at.ratios, change);
  for (let halving = 0; halving < HALVINGS; halving++) {
    const next = evaluate(model, moved(at.ratios, change, share));
    const reachesZero = next.ratios.some((ratio, k) => ratio === 0 && (at.ratios[k] ?? 0) > 0);
    if (flat || next.criterion < at.criterion + (reachesZero ? FLAT : 0)) return next;
    share /= 2;
  }
  return null;
}

/** All of the step, or as much as ends at 0 or at tenfold. */
function longestShare(ratios: readonly number[], change: readonly number[]): number {
  const room = ratios.map((ratio, k) => {
    const step = change[k] ?? 0;
    return step < 0 ? ratio / -step : step > 0 ? (9 * ratio + 1) / step : 1;
  });
  return Math.min(1, ...room);
}

/** Rounding must not leave a ratio that was to end at 0 a hair above it. */
const moved = (ratios: readonly number[], change: readonly number[], share: number): number[] =>
  ratios.map((ratio, k) => {
    const next = ratio + share * (change[k] ?? 0);
    return next > ratio * Number.EPSILON * 4 ? next : 0;
  });
