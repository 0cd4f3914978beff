/**
 * How likely what was seen of a fruit is. The fruit becomes ripe at a time T after it set, log T ~ N(m, σ²); it is prime
 * from T exp(w) and over from T exp(w + w'), with the same two widths for all fruits, so that a fruit that takes a tenth
 * longer also keeps a tenth longer. On the scale of log time this is the ordered probit model: McCullagh 1980, Journal of
 * the Royal Statistical Society B 42:109-142 (from memory).
 */
import type { Vector } from '../linear/cholesky.ts';
import { type GrownSpan, grownSpan, isNarrow, ripeShare, sdWith, unripeShare } from './grown-span.ts';
import { normalBetween } from './normal-table.ts';
import type { RipeState } from './seen-fruit.ts';

/** What all fruits share, on the scale of log time. */
export interface Stages {
  /** σ, above 0. */
  readonly spread: number;
  /** How long just ripe and prime last: log of the ratio of a stage's end to its beginning, above 0. */
  readonly just: number;
  readonly prime: number;
}

/** What was seen of a fruit, or may yet be. */
export interface Sight {
  readonly grown: GrownSpan;
  /** Null: not cut. */
  readonly state: RipeState | null;
  /** When it was called not ripe, and how much earlier than `grown` that is; null: never, or calls are not used. */
  readonly call: { readonly grown: GrownSpan; readonly earlier: number } | null;
}

/**
 * Chance, of 1, of the state, and of the call where there was one. `wrong` tells how often calls are (of ripe fruits and
 * of unripe ones alike, below a half): wrong · P(state) + (1 - 2 wrong) · P(state, and T after the call).
 */
export function stateChance({ grown, state, call }: Sight, m: number, stages: Stages, wrong: number): number {
  const alone = state === null ? 1 : chanceOf(grown, boundsOf(state, stages), m, stages.spread);
  if (call === null) return alone;
  return wrong * alone + (1 - 2 * wrong) * chanceAfterCall(grown, state, call, m, stages);
}

/** Multiplies each product by the chance above, m going up from `from` by `by`; `least` stands for what is less. */
export function multiplyChances(
  products: Vector,
  sight: Sight,
  { from, by, least }: { readonly from: number; readonly by: number; readonly least: number },
  stages: Stages,
  wrong: number,
): void {
  const { grown, state, call } = sight;
  if (state === null || call !== null || !isNarrow(grown, stages.spread)) {
    for (let at = 0; at < products.length; at++) {
      const chance = stateChance(sight, from + at * by, stages, wrong);
      products[at] = (products[at] as number) * (chance > least ? chance : least);
    }
    return;
  }
  const { low, high } = boundsOf(state, stages);
  const sd = sdWith(grown, stages.spread);
  const middle = grown.log_mean - from;
  for (let at = 0; at < products.length; at++) {
    const t = middle - at * by;
    const chance = normalBetween((t + low) / sd, (t + high) / sd);
    products[at] = (products[at] as number) * (chance > least ? chance : least);
  }
}

/** Between what log times T lies, beside the log of the age, when a fruit is in a state. */
interface Bounds {
  readonly low: number;
  readonly high: number;
}

function boundsOf(state: RipeState, { just, prime }: Stages): Bounds {
  switch (state) {
    case 'U':
      return { low: 0, high: Number.POSITIVE_INFINITY };
    case 'J':
      return { low: -just, high: 0 };
    case 'P':
      return { low: -just - prime, high: -just };
    case 'O':
      return { low: Number.NEGATIVE_INFINITY, high: -just - prime };
  }
}

function chanceOf(grown: GrownSpan, { low, high }: Bounds, m: number, spread: number): number {
  if (isNarrow(grown, spread)) {
    const [t, sd] = [grown.log_mean - m, sdWith(grown, spread)];
    return normalBetween((t + low) / sd, (t + high) / sd);
  }
  if (high === Number.POSITIVE_INFINITY) return unripeShare(grown, m - low, spread);
  if (low === Number.NEGATIVE_INFINITY) return ripeShare(grown, m - high, spread);
  // A difference of shares, on the side on which both are small.
  return grown.log_mean + high > m
    ? unripeShare(grown, m - low, spread) - unripeShare(grown, m - high, spread)
    : ripeShare(grown, m - high, spread) - ripeShare(grown, m - low, spread);
}

function chanceAfterCall(
  grown: GrownSpan,
  state: RipeState | null,
  call: NonNullable<Sight['call']>,
  m: number,
  { spread, just, prime }: Stages,
): number {
  const passed = (width: number): number => passedSince(grown, call, width, m, spread);
  switch (state) {
    case null:
      return unripeShare(call.grown, m, spread);
    case 'U':
      return unripeShare(grown, m, spread);
    case 'J':
      return Math.max(0, passed(0) - passed(just));
    case 'P':
      return Math.max(0, passed(just) - passed(just + prime));
    case 'O':
      return Math.max(0, passed(just + prime) - ripeShare(call.grown, m, spread));
  }
}

/**
 * Average over t of the chance that T is below the later of t exp(-width) and the call, t - earlier. The first is the
 * later one up to t = earlier / (1 - exp(-width)).
 */
function passedSince(
  grown: GrownSpan,
  call: NonNullable<Sight['call']>,
  width: number,
  m: number,
  spread: number,
): number {
  const { from, to } = grown;
  const { earlier } = call;
  const turn = width > 0 ? earlier / -Math.expm1(-width) : Number.POSITIVE_INFINITY;
  if (turn >= to) return ripeShare(grown, m + width, spread);
  if (turn <= from) return ripeShare(call.grown, m, spread);
  const part = (turn - from) / (to - from);
  return (
    part * ripeShare(grownSpan(from, turn), m + width, spread) +
    (1 - part) * ripeShare(grownSpan(turn - earlier, to - earlier), m, spread)
  );
}
