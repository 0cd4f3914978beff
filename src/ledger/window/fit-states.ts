import { type Kept, keptOr } from '../../kept.ts';
import { WEAK_RIPE_PRIORS } from '../../statistics/ripe-states/ripe-priors.ts';
import { type RipeStates, ripeStates } from '../../statistics/ripe-states/ripe-states.ts';
import type { RipeRefusal, SeenFruit } from '../../statistics/ripe-states/seen-fruit.ts';

const SETTINGS = { seed: 1, draws: 1000, call_wrong: null } as const;
/** Digits after the point of a kept draw, on the scale of log time: a millionth of the time itself. */
const DIGITS = 1e6;

/** The states as plain numbers, so that they can be kept. */
type PlainStates = Omit<RipeStates, 'varieties' | 'common' | 'between' | 'spread' | 'just' | 'prime'> & {
  readonly [draws in 'common' | 'between' | 'spread' | 'just' | 'prime']: readonly number[];
} & {
  readonly varieties: readonly (Omit<RipeStates['varieties'][number], 'middle'> & {
    readonly middle: readonly number[];
  })[];
};

/** When fruits of each variety become ripe and are over, or why nobody can say. Fresh and kept are the same to the last digit. */
export function fitStates(fruits: readonly SeenFruit[], kept: Kept): RipeStates | { readonly cannot: RipeRefusal } {
  const plain = keptOr(kept, 'fits', JSON.stringify(['ripe-states', SETTINGS, WEAK_RIPE_PRIORS, fruits]), () => {
    const found = ripeStates(fruits, WEAK_RIPE_PRIORS, SETTINGS);
    return 'cannot' in found ? found : plainOf(found);
  });
  return 'cannot' in plain ? plain : vectorsOf(plain);
}

/** Spreads and widths stay above 0. */
const rounded = (draws: ArrayLike<number>): number[] =>
  Array.from(draws, (one) => Math.round(one * DIGITS) / DIGITS || Math.sign(one) / DIGITS);

const plainOf = (states: RipeStates): PlainStates => ({
  ...states,
  varieties: states.varieties.map((one) => ({ ...one, middle: rounded(one.middle) })),
  common: rounded(states.common),
  between: rounded(states.between),
  spread: rounded(states.spread),
  just: rounded(states.just),
  prime: rounded(states.prime),
});

const vectorsOf = (plain: PlainStates): RipeStates => ({
  ...plain,
  varieties: plain.varieties.map((one) => ({ ...one, middle: Float64Array.from(one.middle) })),
  common: Float64Array.from(plain.common),
  between: Float64Array.from(plain.between),
  spread: Float64Array.from(plain.spread),
  just: Float64Array.from(plain.just),
  prime: Float64Array.from(plain.prime),
});
