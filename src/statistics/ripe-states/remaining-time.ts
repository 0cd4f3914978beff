/**
 * How much longer a fruit on the vine takes: its own time is as uncertain as fruits differ, and what fruits do is as
 * uncertain as the cuts leave it, so every number here is an average over the draws of `ripe-states`.
 */
import type { Interval } from '../../figure.ts';
import type { Vector } from '../linear/cholesky.ts';
import { randomStream } from '../random-stream.ts';
import { grownSpan } from './grown-span.ts';
import { normalShare, normalValue } from './normal-table.ts';
import { checkWrong, type RipeStates } from './ripe-states.ts';
import { checkAge, type RipeState } from './seen-fruit.ts';
import { type Sight, type Stages, stateChance } from './state-chance.ts';

/** A fruit that was not cut. */
export interface GrowingFruit {
  /** Null, or a variety of which no fruit was cut: one like those that were. */
  readonly variety: string | null;
  /** Fewest and most of the time since it set, as in `seen-fruit`. */
  readonly from: number;
  readonly to: number;
  /**
   * Chance that a call of "not ripe" made now is wrong, 0 or more and below a half; 0 for one held to be unripe for
   * certain. Null: nobody has called it, and it may be ripe, or over, already.
   */
  readonly call_wrong: number | null;
}

/** Time until something, in the unit of the fruit's age; 0 where it has happened already. */
export interface Remaining {
  readonly median: number;
  /** Equal tails. */
  readonly half: Interval;
  readonly most: Interval;
}

/** No fruit was cut that far on, or too few over, so nothing but the prior tells when this one will be. */
export interface NoneSeen {
  readonly cannot: { readonly code: 'none-cut-prime' | 'few-cut-over' };
}

export interface RipeWindow {
  readonly to_just: Remaining;
  readonly to_prime: Remaining | NoneSeen;
  readonly to_over: Remaining | NoneSeen;
  /** Chances of 1, so much later; ripe is just ripe or prime. Null where too few were cut over, which leaves those two unparted. */
  readonly later: readonly {
    readonly after: number;
    readonly unripe: number;
    readonly ripe: number | null;
    readonly over: number | null;
  }[];
}

/** Unripe, but older than nearly all the cuts leave possible: a wrong date, a wrong variety, or a fruit past knowing. */
export interface Outgrown {
  readonly cannot: { readonly code: 'outgrown' };
}

/**
 * Fruits that this one may be: one a draw, with weights that add up to 1. Times in heat become days by running each of
 * them through a past year; weights stay.
 */
export interface RemainingDraws {
  readonly weight: Vector;
  readonly to_just: Vector;
  readonly to_prime: Vector;
  readonly to_over: Vector;
}

/** How one draw sees the fruit. */
interface Part extends Stages {
  readonly middle: number;
}

const HALF = 0.5;
const MOST = 0.9;
/** Of the fruit's age. */
const CLOSE = 1e-7;
const MOST_STEPS = 100;
/** Of the draws: were fewer left of them, by their weights, few would speak for all. */
const FEWEST_LEFT = 0.01;
const IMPOSSIBLE = 1e-12;

/**
 * The window at so many times from now, each 0 or more, or why there is none. Throws RangeError for a time or a chance
 * that is none.
 */
export function ripeWindow(states: RipeStates, fruit: GrowingFruit, after: readonly number[]): RipeWindow | Outgrown {
  check(fruit);
  for (const one of after) if (!(one >= 0 && Number.isFinite(one))) throw new RangeError(`invalid time: ${one}`);
  const parts = partsOf(states, fruit);
  const called = parts.map((part) => chanceOf(part, sightLater(fruit, null, 0), fruit));
  if (isOutgrown(called)) return { cannot: { code: 'outgrown' } };
  const whole = sum(called);
  const chance = (wanted: readonly RipeState[], later: number): number =>
    wanted.reduce((all, state) => {
      const sight = sightLater(fruit, state, later);
      let own = 0;
      for (const part of parts) own += chanceOf(part, sight, fruit);
      return all + own;
    }, 0) / whole;
  const remaining = (begun: (later: number) => number): Remaining => {
    const at = (share: number): number => quantile(begun, share, fruit.to);
    const interval = (level: number): Interval => ({ low: at((1 - level) / 2), high: at((1 + level) / 2), level });
    return { median: at(0.5), half: interval(HALF), most: interval(MOST) };
  };
  const { prime, over } = states.seen;
  return {
    to_just: remaining((later) => 1 - chance(['U'], later)),
    to_prime: prime ? remaining((later) => chance(['P', 'O'], later)) : { cannot: { code: 'none-cut-prime' } },
    to_over: over ? remaining((later) => chance(['O'], later)) : { cannot: { code: 'few-cut-over' } },
    later: after.map((one) => {
      const unripe = chance(['U'], one);
      const gone = over ? chance(['O'], one) : null;
      return { after: one, unripe, ripe: gone === null ? null : Math.max(0, 1 - unripe - gone), over: gone };
    }),
  };
}

/**
 * As many as the posterior has draws; the same seed gives the same. What the window does not tell for want of cuts rests
 * on the prior here. Refuses and throws as the window does.
 */
export function remainingDraws(states: RipeStates, fruit: GrowingFruit, seed: number): RemainingDraws | Outgrown {
  check(fruit);
  const random = randomStream(seed);
  const parts = partsOf(states, fruit);
  const weight = new Float64Array(parts.length);
  const found = {
    to_just: new Float64Array(parts.length),
    to_prime: new Float64Array(parts.length),
    to_over: new Float64Array(parts.length),
  };
  for (const [at, part] of parts.entries()) {
    const age = fruit.from + (fruit.to - fruit.from) * random();
    const now = (Math.log(age) - part.middle) / part.spread;
    const [ripe, unripe] = [normalShare(now), normalShare(-now)];
    const wrong = fruit.call_wrong;
    const [whenRipe, whenUnripe] = wrong === null ? [1, 1] : [wrong, 1 - wrong];
    const called = whenRipe * ripe + whenUnripe * unripe;
    weight[at] = called;
    const is_ripe = random() * called < whenRipe * ripe;
    const z = is_ripe ? farthestOf(ripe * (1 - random())) : -farthestOf(unripe * (1 - random()));
    const time = Math.exp(part.middle + part.spread * z);
    found.to_just[at] = Math.max(0, time - age);
    found.to_prime[at] = Math.max(0, time * Math.exp(part.just) - age);
    found.to_over[at] = Math.max(0, time * Math.exp(part.just + part.prime) - age);
  }
  if (isOutgrown(weight)) return { cannot: { code: 'outgrown' } };
  const whole = sum(weight);
  return { weight: weight.map((one) => one / whole), ...found };
}

function check({ from, to, variety, call_wrong }: GrowingFruit): void {
  checkAge(from, to, variety ?? 'an unseen variety');
  checkWrong(call_wrong);
}

function partsOf(states: RipeStates, { variety }: GrowingFruit): Part[] {
  const own = states.varieties.find((one) => one.variety === variety);
  return Array.from({ length: states.draws }, (_, at) => {
    const spread = states.spread[at] as number;
    const [just, prime] = [states.just[at] as number, states.prime[at] as number];
    return own
      ? { middle: own.middle[at] as number, spread, just, prime }
      : {
          middle: states.common[at] as number,
          spread: Math.hypot(spread, states.between[at] as number),
          just,
          prime,
        };
  });
}

/** The fruit in a state so much later (null: in any), and called now where it was. */
const sightLater = ({ from, to, call_wrong }: GrowingFruit, state: RipeState | null, later: number): Sight => ({
  grown: grownSpan(from + later, to + later),
  state,
  call: call_wrong === null ? null : { earlier: later, grown: grownSpan(from, to) },
});

const chanceOf = (part: Part, sight: Sight, { call_wrong }: GrowingFruit): number =>
  stateChance(sight, part.middle, part, call_wrong ?? 0);

function sum(values: ArrayLike<number>): number {
  let all = 0;
  for (let at = 0; at < values.length; at++) all += values[at] as number;
  return all;
}

/** The effective number of weighted draws: Kish 1965, Survey Sampling, 11.7 (from memory). */
function isOutgrown(weights: ArrayLike<number>): boolean {
  const whole = sum(weights);
  const squares = sum(Array.from(weights, (one) => one * one));
  return whole < IMPOSSIBLE * weights.length || (whole * whole) / squares < FEWEST_LEFT * weights.length;
}

/** Where no digits are left, the farthest value there is. */
const farthestOf = (chance: number): number => normalValue(Math.max(chance, Number.MIN_VALUE));

/** The time by which a share is reached, by false position with every second step a halving. */
function quantile(reached: (time: number) => number, share: number, age: number): number {
  let [low, below] = [0, reached(0) - share];
  if (below >= 0) return 0;
  let [high, above] = [age, reached(age) - share];
  while (above < 0) [low, below, high, above] = [high, above, 2 * high, reached(2 * high) - share];
  for (let step = 0; step < MOST_STEPS && high - low > CLOSE * age; step++) {
    const falls = low + ((high - low) * below) / (below - above);
    const middle = step % 3 === 2 ? (low + high) / 2 : falls;
    const value = reached(middle) - share;
    if (Math.abs(value) < CLOSE) return middle;
    if (value < 0) [low, below] = [middle, value];
    else [high, above] = [middle, value];
  }
  return (low + high) / 2;
}
