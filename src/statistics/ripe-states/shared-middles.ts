/**
 * How varieties share: the middles of varieties are normal about a common one, which may lie anywhere alike, with a
 * spread τ of half-normal prior. τ is tried at the middles of equal parts of its prior, the common middle on the grid and
 * beyond it, and each variety's middle is summed over its grid, so nothing here is a normal approximation.
 */
import type { Vector } from '../linear/cholesky.ts';
import type { MiddlesGrid, VarietyCurve } from './middles-grid.ts';
import { normalValue } from './normal-table.ts';

/** Parts of the prior of τ. Few varieties tell little of it. */
const PARTS = 8;
/** In spreads: how far a variety is looked for from the common middle, and that from the grid. */
const FAR = 4.5;
const BEYOND = 3;

/** A spread between varieties, and how middles lie around the common one under it. */
export interface Sharing {
  readonly spread: number;
  /** Share of varieties so many steps of the grid away from the common middle, either side. */
  readonly away: Vector;
  /** Places of the common middle that are tried, on the grid and beyond: first, step, count. */
  readonly from: number;
  readonly stride: number;
  readonly places: number;
}

/** With the weight of each place, relative to the others of all spreads. */
interface WeighedSharing {
  readonly sharing: Sharing;
  readonly weights: Vector;
}

export interface SharedMiddles {
  readonly log_evidence: number;
  /** One draw: common middle, spread between varieties, middle of each variety in the order of the curves. */
  readonly draw: (random: () => number) => {
    readonly common: number;
    readonly between: number;
    readonly middles: readonly number[];
  };
}

/** Spreads at half-normal quantiles in the middles of equal parts: each stands for as much of the prior. */
export const sharings = (scale: number, grid: MiddlesGrid, varieties: number): Sharing[] =>
  Array.from({ length: PARTS }, (_, part) =>
    sharingAt(scale * normalValue(0.5 + (part + 0.5) / PARTS / 2), grid, varieties),
  );

function sharingAt(spread: number, { step, count }: MiddlesGrid, varieties: number): Sharing {
  const reach = Math.ceil((FAR * spread) / step);
  const away = Float64Array.from({ length: reach + 1 }, (_, steps) => Math.exp(-(((steps * step) / spread) ** 2) / 2));
  const whole = away.reduce((sum, one) => sum + 2 * one, -1);
  // The common middle is known no better than to this, and a sum over a normal curve is exact at such steps.
  const stride = Math.max(1, Math.floor(spread / Math.sqrt(varieties) / step));
  const beyond = Math.ceil((BEYOND * spread) / step);
  const places = Math.ceil((count + 2 * beyond) / stride);
  return { spread, away: away.map((one) => one / whole), from: -beyond, stride, places };
}

/** The sum over what varieties share, at one spread of fruits and one pair of widths. */
export function sharedMiddles(
  curves: readonly VarietyCurve[],
  grid: MiddlesGrid,
  tried: readonly Sharing[],
): SharedMiddles {
  const weighed = tried.map((sharing) => ({ sharing, weights: weightsOf(sharing, curves) }));
  const total = weighed.reduce((sum, { weights }) => sum + sumOf(weights), 0);
  const log_best = curves.reduce((sum, curve) => sum + curve.log_best, 0);
  return {
    log_evidence: Math.log(total) + log_best,
    draw: (random) => {
      const [sharing, index] = chosen(weighed, random() * total);
      const place = sharing.from + index * sharing.stride;
      const within = sharing.stride * (random() - 0.5);
      return {
        common: grid.lowest + (place + within) * grid.step,
        between: sharing.spread,
        middles: curves.map((curve) => {
          const at = drawPlace(curve, sharing, place, random());
          return grid.lowest + (at + random() - 0.5) * grid.step;
        }),
      };
    },
  };
}

function sumOf(values: Vector): number {
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += values[at] as number;
  return sum;
}

function weightsOf({ away, from, stride, places }: Sharing, curves: readonly VarietyCurve[]): Vector {
  const weights = new Float64Array(places).fill(stride);
  for (const curve of curves) {
    for (let index = 0; index < places; index++) {
      const weight = weights[index] as number;
      if (weight > 0) weights[index] = weight * sumAround(curve, away, from + index * stride);
    }
  }
  return weights;
}

/** How likely a variety's fruits are when the common middle is at a place. */
function sumAround({ first, likelihood }: VarietyCurve, away: Vector, place: number): number {
  const reach = away.length - 1;
  const to = Math.min(likelihood.length - 1, place + reach - first);
  let sum = 0;
  for (let at = Math.max(0, place - reach - first); at <= to; at++)
    sum += (likelihood[at] as number) * (away[Math.abs(first + at - place)] as number);
  return sum;
}

function chosen(weighed: readonly WeighedSharing[], until: number): readonly [Sharing, number] {
  let sum = 0;
  let last: readonly [Sharing, number] | null = null;
  for (const { sharing, weights } of weighed) {
    for (let index = 0; index < weights.length; index++) {
      const weight = weights[index] as number;
      if (weight === 0) continue;
      sum += weight;
      last = [sharing, index];
      if (sum > until) return last;
    }
  }
  if (!last) throw new RangeError('invalid curves: no place is possible for all varieties');
  return last;
}

function drawPlace({ first, likelihood }: VarietyCurve, { away }: Sharing, place: number, chance: number): number {
  const weightAt = (at: number): number => (likelihood[at] as number) * (away[Math.abs(first + at - place)] ?? 0);
  let total = 0;
  for (let at = 0; at < likelihood.length; at++) total += weightAt(at);
  let sum = 0;
  for (let at = 0; at < likelihood.length; at++) {
    sum += weightAt(at);
    if (sum > chance * total) return first + at;
  }
  return first + likelihood.length - 1;
}
