/**
 * A density of ratios τ ≥ 0 as shares of a lattice of points. The density depends on τ² and is an even function of each
 * τ = bend · sinh x, so that the points at x = ½, 1½, 2½ … steps are the trapezoidal rule for the whole line, whose
 * error falls exponentially as the step shrinks (Trefethen & Weideman 2014, SIAM Review 56:385-458; from memory): for a
 * normal shape of standard deviation s as exp(-2π²s²/step²), and for the likelihood's own bends, which lie at
 * τ² = -1/λ with λ no more than the largest number of observations a level has, as exp(-π²/step) when `bend` is
 * 1/√λ. So some hundred points are as good as the density itself for whatever depends on τ², as each effect does,
 * with nothing to tune and no chain to wait for.
 */

export interface RatioPoint {
  readonly ratios: readonly number[];
  /** Of 1. */
  readonly share: number;
}

export interface RatioLattice {
  readonly points: readonly RatioPoint[];
  /** Ratios spread evenly over the lattice cell of a point (in x), by one number from 0 to 1 a factor. */
  readonly withinCell: (point: RatioPoint, parts: readonly number[]) => number[];
}

/** One axis of the lattice. */
export interface RatioAxis {
  /** Half-normal scale of the prior, which the density does not outreach by far. */
  readonly scale: number;
  /** Ratio at which the likelihood starts to bend: 1 / √ of the largest number of observations a level has. */
  readonly bend: number;
}

/** Points whose log density is so far below the top are not searched from. */
const NEGLIGIBLE = 8.5;
/**
 * In standard deviations of the density along its axis, by the number of factors, and in x. Means and spreads of effects
 * are then within 3 thousandths of a standard deviation of those at half the step (four factors: 1 in 100).
 */
const STEP_BY_FACTORS = [1, 0.5, 0.5, 0.75, 0.9];
const LARGEST_STEP = 0.75;
/** Two standard deviations from the top of a normal density. */
const TWO_SD_DOWN = 2;
const SWEEPS = 3;
/** Ratios tried first, besides the prior's own scale. */
const LADDER = [0.03, 0.1, 0.2, 0.4, 0.7, 1, 1.5, 2.5, 4, 7, 12];
const HALVINGS = 14;

type LogDensity = (ratios: readonly number[]) => number;

/** The lattice of a log density of τ with one top, or several joined by a ridge; one axis per factor. */
export function ratioLattice(logDensity: LogDensity, axes: readonly RatioAxis[]): RatioLattice {
  const ratiosAt = (x: readonly number[]): number[] => x.map((one, k) => (axes[k]?.bend ?? 1) * Math.sinh(one));
  /** Of x. */
  const logHeight = (x: readonly number[]): number =>
    x.reduce((sum, one) => sum + Math.log(Math.cosh(one)), logDensity(ratiosAt(x)));
  const start = highest(logHeight, axes);
  const share = STEP_BY_FACTORS[axes.length] ?? 1;
  const steps = start.map((near, k) =>
    Math.min(LARGEST_STEP, share * widthAlong((x) => logHeight(start.with(k, x)), near, farthest(axes[k]))),
  );
  const places = (cell: readonly number[]): number[] => cell.map((one, k) => (one + 0.5) * (steps[k] ?? 0));
  const known = new Map<string, { readonly cell: readonly number[]; readonly height: number }>();
  const heightOf = (cell: readonly number[]): number => {
    const key = `${cell}`;
    const found = known.get(key);
    if (found) return found.height;
    const height = logHeight(places(cell));
    known.set(key, { cell, height });
    return height;
  };
  flood(
    heightOf,
    climbed(
      heightOf,
      start.map((one, k) => Math.floor(one / (steps[k] ?? 1))),
    ),
  );

  const found = [...known.values()];
  const summit = found.reduce((best, { height }) => Math.max(best, height), Number.NEGATIVE_INFINITY);
  const total = found.reduce((sum, { height }) => sum + Math.exp(height - summit), 0);
  return {
    points: found.map(({ cell, height }) => ({
      ratios: ratiosAt(places(cell)),
      share: Math.exp(height - summit) / total,
    })),
    withinCell: ({ ratios }, parts) =>
      ratiosAt(
        ratios.map((ratio, k) => Math.asinh(ratio / (axes[k]?.bend ?? 1)) + (steps[k] ?? 0) * ((parts[k] ?? 0) - 0.5)),
      ),
  };
}

/** In x: sixteen prior scales. */
const farthest = (axis: RatioAxis | undefined): number => Math.asinh((16 * (axis?.scale ?? 1)) / (axis?.bend ?? 1));

/** The best of a ladder for one factor at a time, in x. */
function highest(logHeight: LogDensity, axes: readonly RatioAxis[]): readonly number[] {
  let best: readonly number[] = axes.map(({ scale, bend }) => Math.asinh(scale / bend));
  let height = logHeight(best);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const before = best;
    for (const [k, { scale, bend }] of axes.entries()) {
      for (const rung of [...LADDER, 0.1 * scale, scale]) {
        const next = best.with(k, Math.asinh(rung / bend));
        const own = logHeight(next);
        if (own > height) [best, height] = [next, own];
      }
    }
    if (best === before) break;
  }
  return best;
}

/** Standard deviation along one axis near a place, from how far away the density is as low as two of them. */
function widthAlong(logHeight: (x: number) => number, near: number, far: number): number {
  const [top, height] = topAlong(logHeight, near);
  const low = height - TWO_SD_DOWN;
  const above = crossing((away) => logHeight(top + away) < low, far) / 2;
  if (!(logHeight(0) < low)) return above;
  return Math.min(above, crossing((away) => logHeight(top - away) < low, top) / 2);
}

/** Golden sections around a place that is within a factor of two or so of the top. */
function topAlong(logHeight: (x: number) => number, near: number): readonly [number, number] {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0.4 * near, 2 * near];
  let best: readonly [number, number] = [near, logHeight(near)];
  for (let step = 0; step < HALVINGS; step++) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    const [atLeft, atRight] = [logHeight(left), logHeight(right)];
    if (atLeft > best[1]) best = [left, atLeft];
    if (atRight > best[1]) best = [right, atRight];
    if (atLeft > atRight) high = right;
    else low = left;
  }
  return best;
}

/** The smallest distance up to `farthest` beyond which `beyond` holds, by halving. */
function crossing(beyond: (away: number) => boolean, farthest: number): number {
  let [inside, outside] = [0, farthest];
  for (let step = 0; step < 2 * HALVINGS && outside - inside > 0.02 * outside; step++) {
    const middle = (inside + outside) / 2;
    if (beyond(middle)) outside = middle;
    else inside = middle;
  }
  return outside;
}

const neighbours = (cell: readonly number[]): (readonly number[])[] =>
  cell.flatMap((one, k) => [cell.with(k, one + 1), ...(one > 0 ? [cell.with(k, one - 1)] : [])]);

function climbed(heightOf: (cell: readonly number[]) => number, start: readonly number[]): readonly number[] {
  let top = start;
  for (;;) {
    const next = neighbours(top).reduce((best, one) => (heightOf(one) > heightOf(best) ? one : best), top);
    if (next === top) return top;
    top = next;
  }
}

/** Looks at every point that a way above the negligible leads to from the top, and at those next to it. */
function flood(heightOf: (cell: readonly number[]) => number, top: readonly number[]): void {
  let summit = heightOf(top);
  const seen = new Set([`${top}`]);
  const waiting = [top];
  for (let cell = waiting.pop(); cell; cell = waiting.pop()) {
    const height = heightOf(cell);
    summit = Math.max(summit, height);
    if (!(height >= summit - NEGLIGIBLE)) continue;
    for (const next of neighbours(cell)) {
      if (seen.has(`${next}`)) continue;
      seen.add(`${next}`);
      waiting.push(next);
    }
  }
}
