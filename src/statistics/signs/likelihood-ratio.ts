/**
 * How much a sign says: how many times as often it shows among the fruits in question (the ripe) as among the rest.
 * Each share has Jeffreys' posterior, Beta(shown + ½, looked - shown + ½); the ratio's quantiles come by quadrature of
 * the two, exactly and without drawing lots. Fruits nobody looked at for this sign are in neither count.
 *
 * Fruits are taken as standing alone: where a season dries every tendril at once the range is too short. Ratios of
 * several signs are never to be multiplied, for signs share their causes; `ripe-chance.ts` puts them together.
 *
 * 90 % ranges held the true ratio in 88 to 95 of 100, over every outcome weighed by its chance (20 fruits with shares
 * 0.85 and 0.4, 0.6 and 0.6, 0.9 and 0.15; 16 fruits with shares 0.3 and 0.1).
 */
import type { Interval } from '../../figure.ts';
import { incompleteBeta } from '../incomplete-beta.ts';

/** Of the angle's standard deviation, how far the quadrature reaches to either side, and how many steps it takes. */
const REACH = 9;
const STEPS = 120;
const HALVINGS = 9;
const MOST_TRIES = 40;
/** Of a chance. */
const CLOSE = 1e-9;
/** No ratio beyond e to this power is looked for. */
const WIDEST = 40;

/** What a cut showed, as the records write it. */
export type StateInside = 'unripe' | 'just-ripe' | 'prime' | 'over';

/** Ripe yet: all others against the unripe. Too late: the over-ripe against the just ripe and the prime. */
export type RipeQuestion = 'ripe-yet' | 'too-late';

export interface Looked {
  readonly shown: number;
  readonly looked: number;
}

export interface SignCounts {
  /** Fruits for which the answer is yes. */
  readonly yes: Looked;
  readonly no: Looked;
}

/** Counts one sign; `shown` null where nobody looked. The unripe have no part in whether it is too late. */
export function signCounts(
  fruits: readonly { readonly state: StateInside; readonly shown: boolean | null }[],
  question: RipeQuestion,
): SignCounts {
  const count = (answer: boolean): Looked => {
    const own = fruits.filter(({ state, shown }) => shown !== null && answerOf(state, question) === answer);
    return { shown: own.filter(({ shown }) => shown).length, looked: own.length };
  };
  return { yes: count(true), no: count(false) };
}

/** Null where the question is not asked of such a fruit. */
export function answerOf(state: StateInside, question: RipeQuestion): boolean | null {
  if (question === 'ripe-yet') return state !== 'unripe';
  return state === 'unripe' ? null : state === 'over';
}

export interface Ratio {
  /** Posterior median, above 0. */
  readonly ratio: number;
  /**
   * Equal tails, from 0 when no fruit of the first group is counted; its upper end leans on the prior when none of the
   * second is.
   */
  readonly interval: Interval;
}

export interface SignEvidence {
  /** What seeing the sign does to the odds. */
  readonly shown: Ratio;
  /** What looking and not seeing it does. */
  readonly absent: Ratio;
  /** Chance that the sign is commoner where the answer is yes. */
  readonly points_to_yes: number;
}

/**
 * Right to 1e-5 of a ratio; a few milliseconds. Throws RangeError unless counts are whole, 0 <= shown <= looked,
 * looked > 0, and the level lies between 0 and 1.
 */
export function signEvidence({ yes, no }: SignCounts, level: number): SignEvidence {
  for (const { shown, looked } of [yes, no]) {
    if (!(Number.isInteger(looked) && looked > 0)) throw new RangeError(`invalid looked: ${looked}`);
    if (!(Number.isInteger(shown) && shown >= 0 && shown <= looked)) throw new RangeError(`invalid shown: ${shown}`);
  }
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  return {
    shown: ratioOf(yes, no, level),
    absent: ratioOf(missed(yes), missed(no), level),
    points_to_yes: 1 - ratioBelow(yes, no, 1),
  };
}

const missed = ({ shown, looked }: Looked): Looked => ({ shown: looked - shown, looked });

function ratioOf(yes: Looked, no: Looked, level: number): Ratio {
  const tail = (1 - level) / 2;
  return {
    ratio: quantile(yes, no, 0.5),
    interval: { low: yes.shown === 0 ? 0 : quantile(yes, no, tail), high: quantile(yes, no, 1 - tail), level },
  };
}

/** By halving until close, then by false position, halving the weight of an end that stays (Dowell & Jarratt 1971). */
function quantile(yes: Looked, no: Looked, p: number): number {
  const short = (log: number): number => ratioBelow(yes, no, Math.exp(log)) - p;
  let [low, high] = [-WIDEST, WIDEST];
  let [lowBy, highBy] = [-p, 1 - p];
  for (let step = 0; step < HALVINGS + MOST_TRIES; step++) {
    const part = step < HALVINGS ? 0.5 : lowBy / (lowBy - highBy);
    const middle = low + part * (high - low);
    const by = short(middle);
    if (Math.abs(by) < CLOSE) return Math.exp(middle);
    if (step < HALVINGS) [lowBy, highBy] = by < 0 ? [by, highBy] : [lowBy, by];
    else [lowBy, highBy] = by < 0 ? [by, highBy / 2] : [lowBy / 2, by];
    if (by < 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

/**
 * Chance that the ratio of the shares is at most r. For r up to 1 the second share is gone through and the first asked
 * to be at most r times as large; beyond 1 the other way about, so that no share asked for lies beyond 1, where the
 * integrand would have a corner.
 */
export function ratioBelow(yes: Looked, no: Looked, r: number): number {
  if (r > 1) return 1 - over(yes, (share) => below(share / r, no));
  return over(no, (share) => below(share * r, yes));
}

const below = (share: number, { shown, looked }: Looked): number =>
  incompleteBeta(share, 1 - share, shown + 0.5, looked - shown + 0.5);

/** Posterior mean of a function of the share, by Simpson's rule in the angle whose sine squared is the share. */
function over({ shown, looked }: Looked, value: (share: number) => number): number {
  const missed = looked - shown;
  const middle = Math.atan2(Math.sqrt(shown + 0.25), Math.sqrt(missed + 0.25));
  const reach = REACH / (2 * Math.sqrt(looked + 1));
  const [from, to] = [Math.max(0, middle - reach), Math.min(Math.PI / 2, middle + reach)];
  let [sum, whole] = [0, 0];
  for (let step = 0; step <= STEPS; step++) {
    const angle = from + ((to - from) * step) / STEPS;
    const [hit, miss] = [Math.sin(angle), Math.cos(angle)];
    const log = logPower(hit, 2 * shown) + logPower(miss, 2 * missed);
    const peak = logPower(Math.sin(middle), 2 * shown) + logPower(Math.cos(middle), 2 * missed);
    const weight = Math.exp(log - peak) * (step === 0 || step === STEPS ? 1 : step % 2 === 1 ? 4 : 2);
    if (weight === 0) continue;
    sum += weight * value(hit * hit);
    whole += weight;
  }
  return sum / whole;
}

const logPower = (base: number, power: number): number => (power === 0 ? 0 : power * Math.log(Math.max(base, 0)));
