/** What is known of one fruit: how long it had grown, and how its inside was when it was cut. */

/** Unripe, just ripe, prime, over: a fruit passes through them in this order. */
export type RipeState = 'U' | 'J' | 'P' | 'O';

export interface SeenFruit {
  readonly variety: string;
  /**
   * Fewest and most of the time since it set, in days or in heat, when it was cut; equal where the day of set is known.
   * All times between are taken as equally likely. 0 or more, and the most above 0.
   */
  readonly from: number;
  readonly to: number;
  /** Null for a fruit that was not cut, which tells something only by a call. */
  readonly state: RipeState | null;
  /**
   * How much earlier, in the same unit, somebody last called it "not ripe" from outside; 0 for a fruit not cut. Absent or
   * null: never. Read only where the settings tell how often calls are wrong. One call a fruit: a keeper who misjudges
   * a fruit goes on misjudging it.
   */
  readonly called_earlier?: number | null;
}

/** Fewest cut fruits of all varieties together. A judgement of the makers, no source. */
export const FEWEST_CUT = 6;
/**
 * Fewest cut over from which it is told when one will be. Where fruits are picked by their signs, a single one that was
 * over is an odd one, and windows built on it held some four in ten of what they should hold nine of
 * (tests/truth/ripe-window.truth.ts). A judgement of the makers, no source.
 */
export const FEWEST_OVER = 2;

/** Why there is nothing to tell. */
export type RipeRefusal =
  | { readonly code: 'few-cut'; readonly cut: number; readonly need: number }
  /** Every fruit was in one state, which bounds the time of ripeness on one side at most. */
  | { readonly code: 'one-state'; readonly state: RipeState; readonly cut: number }
  /** No fruit of any variety was cut unripe: nothing tells how early is too early. */
  | { readonly code: 'no-unripe'; readonly cut: number };

/** Null when the cuts suffice. Varieties share, so one variety's unripe fruit serves another. */
export function refusalOf(fruits: readonly SeenFruit[]): RipeRefusal | null {
  const states = fruits.flatMap(({ state }) => (state === null ? [] : [state]));
  const [first] = states;
  if (first === undefined || states.length < FEWEST_CUT)
    return { code: 'few-cut', cut: states.length, need: FEWEST_CUT };
  if (states.every((state) => state === first)) return { code: 'one-state', state: first, cut: states.length };
  return states.includes('U') ? null : { code: 'no-unripe', cut: states.length };
}

/** Fruits in one order, whatever that of the records. Throws RangeError for times that are none. */
export function inOrder(fruits: readonly SeenFruit[]): SeenFruit[] {
  for (const { variety, from, to, called_earlier } of fruits) {
    checkAge(from, to, variety);
    if (called_earlier !== undefined && called_earlier !== null && !(called_earlier >= 0 && called_earlier <= from))
      throw new RangeError(`invalid call: ${called_earlier} before ${from} of ${variety}`);
  }
  return fruits.toSorted(
    (a, b) =>
      (a.variety < b.variety ? -1 : a.variety > b.variety ? 1 : 0) ||
      a.from - b.from ||
      a.to - b.to ||
      rank(a.state) - rank(b.state) ||
      (a.called_earlier ?? -1) - (b.called_earlier ?? -1),
  );
}

/** Throws RangeError unless 0 <= from <= to and to is above 0 and finite. */
export function checkAge(from: number, to: number, variety: string): void {
  if (!(from >= 0 && from <= to && to > 0 && Number.isFinite(to)))
    throw new RangeError(`invalid time: ${from} to ${to} of ${variety}`);
}

const rank = (state: RipeState | null): number => (state === null ? -1 : 'UJPO'.indexOf(state));
