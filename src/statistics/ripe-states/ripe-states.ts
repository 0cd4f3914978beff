/**
 * When a variety's fruits become ripe, pass their prime and are over, learned from the insides of fruits that were cut:
 * ripe is seen only by cutting. The model is that of `state-chance`, with variety means drawn together (`shared-middles`).
 * Nothing unknown is put at its best value: with a dozen fruits such ranges hold some five in ten of what they should
 * hold nine of. The spread of fruits and the two widths come from a lattice (`ratio-lattice`), the rest
 * is summed on a grid; only the draws that are handed over are random. Fruits are taken as independent given their
 * variety, and the day of a cut as chosen by no sign of that fruit. Mounds that differ, or fruits picked by their looks,
 * break this.
 */
import type { Vector } from '../linear/cholesky.ts';
import { randomStream } from '../random-stream.ts';
import { type RatioLattice, ratioLattice } from '../ratio-lattice.ts';
import { grownSpan } from './grown-span.ts';
import { middlesGrid, varietyCurve } from './middles-grid.ts';
import { checkPriors, logPrior, type RipePriors } from './ripe-priors.ts';
import { FEWEST_OVER, inOrder, type RipeRefusal, type RipeState, refusalOf, type SeenFruit } from './seen-fruit.ts';
import { type SharedMiddles, sharedMiddles, sharings } from './shared-middles.ts';
import type { Sight, Stages } from './state-chance.ts';

export interface RipeSettings {
  /** Same fruits, same seed: same draws, whatever the order of the fruits. */
  readonly seed: number;
  /** A whole number above 0; 1,000 serve a window. */
  readonly draws: number;
  /** Chance that a call of "not ripe" is wrong, 0 or more and below a half; null: calls are not used. */
  readonly call_wrong: number | null;
}

/** Draws stand in one order in all arrays, each of equal weight. Times in the unit of the fruits' times. */
export interface RipeStates {
  /** Sorted by code unit. */
  readonly varieties: readonly {
    readonly variety: string;
    /** Cut fruits by their state. */
    readonly cut: Readonly<Record<RipeState, number>>;
    /** Mean of the log of the time from set to ripe. */
    readonly middle: Vector;
  }[];
  readonly draws: number;
  /** What the middles of varieties, of those never grown too, are normal about. */
  readonly common: Vector;
  /** Standard deviation of variety middles, and of the log times of a variety's fruits. */
  readonly between: Vector;
  readonly spread: Vector;
  /** Log of the ratio of a stage's end to its beginning. */
  readonly just: Vector;
  readonly prime: Vector;
  /** Whether a fruit was cut that was prime or over, and as many over as tell of it: without, only the prior does. */
  readonly seen: { readonly prime: boolean; readonly over: boolean };
  /** Points tried, and the share of the heaviest: a lattice on which one point holds nearly all is too coarse. */
  readonly lattice: { readonly points: number; readonly largest_share: number };
}

/** Where on the axis of each spread or width, in prior scales, steps go over from even to even ratios. */
const SPREAD_BEND = 0.3;
const WIDTH_BEND = 0.1;

/**
 * The posterior, or why there is none. Throws RangeError for times that are none, priors not above 0, draws that are not
 * a whole number above 0, or a chance of a wrong call outside 0 to a half.
 */
export function ripeStates(
  fruits: readonly SeenFruit[],
  priors: RipePriors,
  { seed, draws, call_wrong }: RipeSettings,
): RipeStates | { readonly cannot: RipeRefusal } {
  checkPriors(priors);
  if (!(Number.isInteger(draws) && draws > 0)) throw new RangeError(`invalid draws: ${draws}`);
  checkWrong(call_wrong);
  const ordered = inOrder(fruits);
  const cannot = refusalOf(ordered);
  if (cannot) return { cannot };

  const told = call_wrong === null ? ordered.filter(({ state }) => state !== null) : ordered;
  const longest = Math.max(...told.map(({ to }) => to));
  const names = [...new Set(told.map(({ variety }) => variety))];
  const varieties = names.map((name) =>
    told.filter(({ variety }) => variety === name).map((fruit) => sightOf(fruit, longest, call_wrong)),
  );
  const grid = middlesGrid(varieties, priors.spread + priors.variety);
  const tried = sharings(priors.variety, grid, varieties.length);
  const sharedAt = (stages: Stages) =>
    sharedMiddles(
      varieties.map((own) => varietyCurve(own, grid, stages, call_wrong ?? 0)),
      grid,
      tried,
    );
  const lattice = ratioLattice(
    ([spread = 0, just = 0, prime = 0]) =>
      sharedAt({ spread, just, prime }).log_evidence + logPrior(priors, spread, just, prime),
    [
      { scale: priors.spread, bend: SPREAD_BEND * priors.spread },
      { scale: priors.just.median, bend: WIDTH_BEND * priors.just.median },
      { scale: priors.prime.median, bend: WIDTH_BEND * priors.prime.median },
    ],
  );

  const { middles, ...drawn } = drawAll(lattice, sharedAt, names.length, draws, seed, Math.log(longest));
  return {
    varieties: names.map((variety, index) => ({
      variety,
      cut: countsOf(told.filter((fruit) => fruit.variety === variety)),
      middle: middles[index] as Vector,
    })),
    draws,
    ...drawn,
    seen: {
      prime: told.some(({ state }) => state === 'P' || state === 'O'),
      over: told.filter(({ state }) => state === 'O').length >= FEWEST_OVER,
    },
    lattice: {
      points: lattice.points.length,
      largest_share: lattice.points.reduce((most, { share }) => Math.max(most, share), 0),
    },
  };
}

/** One draw from each of as many equal parts of the whole, so that a point has as many as is its share. */
function drawAll(
  { points, withinCell }: RatioLattice,
  sharedAt: (stages: Stages) => SharedMiddles,
  varieties: number,
  draws: number,
  seed: number,
  log_unit: number,
) {
  const random = randomStream(seed);
  const blank = (): Vector => new Float64Array(draws);
  const found = { common: blank(), between: blank(), spread: blank(), just: blank(), prime: blank() };
  const middles = Array.from({ length: varieties }, blank);
  const start = random();
  let [at, sum] = [0, 0];
  for (const point of points) {
    sum += point.share;
    const until = point === points.at(-1) ? draws : Math.min(draws, Math.ceil(sum * draws - start));
    if (until <= at) continue;
    const [spread = 0, just = 0, prime = 0] = point.ratios;
    const shared = sharedAt({ spread, just, prime });
    for (; at < until; at++) {
      const [own_spread = 0, own_just = 0, own_prime = 0] = withinCell(point, [random(), random(), random()]);
      const drawn = shared.draw(random);
      found.spread[at] = own_spread;
      found.just[at] = own_just;
      found.prime[at] = own_prime;
      found.between[at] = drawn.between;
      found.common[at] = drawn.common + log_unit;
      for (const [variety, middle] of drawn.middles.entries()) (middles[variety] as Vector)[at] = middle + log_unit;
    }
  }
  return { ...found, middles };
}

/** Throws RangeError for a chance outside 0 to a half. */
export function checkWrong(wrong: number | null): void {
  if (wrong !== null && !(wrong >= 0 && wrong < 0.5)) throw new RangeError(`invalid chance of a wrong call: ${wrong}`);
}

/** Times as parts of the longest, so that any unit gives the same numbers. */
const sightOf = ({ from, to, state, called_earlier }: SeenFruit, unit: number, wrong: number | null): Sight => ({
  grown: grownSpan(from / unit, to / unit),
  state,
  call:
    wrong === null || called_earlier === undefined || called_earlier === null
      ? null
      : {
          earlier: called_earlier / unit,
          grown: grownSpan((from - called_earlier) / unit, (to - called_earlier) / unit),
        },
});

function countsOf(fruits: readonly SeenFruit[]): Record<RipeState, number> {
  const count = (state: RipeState): number => fruits.filter((fruit) => fruit.state === state).length;
  return { U: count('U'), J: count('J'), P: count('P'), O: count('O') };
}
