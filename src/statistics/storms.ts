/**
 * Fruits split after rain. All fruits of a storm share its rain and the dry spell before it, so the storm is the repeat
 * and not the fruit.
 *
 * How often: the beta-binomial share by storm (`beta-binomial.ts`), the chance of a fresh fruit in a fresh storm. Under
 * five storms a prior is returned and called one.
 *
 * Does it go with the dry spell before, or with the rain? A slope with a range cannot be had honestly from so few
 * storms: where storms have effects of their own, Firth's 90 % profile intervals held the true slope in 58 to 85 of 100
 * invented gardens, t intervals over the storms' log odds in 79 to 92 (5 to 12 storms, 300 gardens each). What is
 * returned is a direction or "cannot tell", by shuffling whole storms: called by chance in 6 to 10 of 100 gardens.
 */
import type { Interval } from '../figure.ts';
import { groupedShare } from './beta-binomial.ts';
import { betaQuantile } from './beta-quantile.ts';
import { shuffleDays } from './permutation.ts';
import { randomStream } from './random-stream.ts';

/** Storms with fruit exposed, below which nothing is counted. */
export const FEWEST_STORMS = 5;

/** A judgement of the makers, no source: Beta(½, 4½), 1 in 10 on average, and 19 in 20 that it is under 4 in 10. */
export const SPLIT_PRIOR = { hits: 0.5, misses: 4.5 } as const;

/** How alike two fruits of one storm are taken to be when storms are weighed; only the weights hang on it. */
const ALIKE = 0.2;
/** A direction is called when so few of the shuffled storms go as strongly with it, to either side. */
const CALLED_BELOW = 0.1;
const SHUFFLES = 1999;
const STREAM = 1935;

export interface StormCount {
  /** Fruits that hung in it near enough to ripe to split. */
  readonly exposed: number;
  readonly split: number;
}

export interface SplitChance {
  /** `prior`: too few storms; nothing of this is counted. */
  readonly from: 'prior' | 'storms';
  readonly chance: number;
  readonly interval: Interval;
  /** Storms with at least one fruit exposed. */
  readonly storms: number;
  readonly exposed: number;
}

/**
 * Chance that a fruit splits in a storm yet to come. Throws RangeError for counts that are not whole, 0 <= split <=
 * exposed, and a level outside 0 to 1.
 */
export function splitChance(storms: readonly StormCount[], level: number): SplitChance {
  const counted = exposedOnly(storms);
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  const exposed = counted.reduce((sum, one) => sum + one.exposed, 0);
  if (counted.length < FEWEST_STORMS) {
    const { hits, misses } = SPLIT_PRIOR;
    const at = (p: number) => betaQuantile(p, hits, misses);
    const interval = { low: at((1 - level) / 2), high: at((1 + level) / 2), level };
    return { from: 'prior', chance: hits / (hits + misses), interval, storms: counted.length, exposed };
  }
  const { share, interval } = groupedShare(
    counted.map((one) => ({ hits: one.split, units: one.exposed })),
    level,
  );
  return { from: 'storms', chance: share, interval, storms: counted.length, exposed };
}

export interface MeasuredStorm extends StormCount {
  /** Days dry before, the swing of the soil's store, or mm of rain; null where not known. */
  readonly measure: number | null;
}

export interface SplitDirection {
  /** More splits with a higher measure, fewer, or the storms do not tell. */
  readonly goes: 'more' | 'fewer' | 'cannot-tell';
  /** Why it does not: too few storms with a measure, measures or shares all alike, or no direction stands out. */
  readonly why: 'few-storms' | 'all-alike' | 'not-clear' | null;
  readonly storms: number;
}

/**
 * Each storm's share of splits less the average, weighed by how much its fruits say, goes with the measure as strongly
 * in fewer than 1 of 10 shuffles: then a direction. All orders up to seven storms, drawn from a fixed stream beyond.
 * Throws RangeError as `splitChance` and for a measure that is not finite.
 */
export function splitDirection(storms: readonly MeasuredStorm[]): SplitDirection {
  const counted = exposedOnly(storms).flatMap(({ measure, ...one }) => (measure === null ? [] : [{ ...one, measure }]));
  const cannot = (why: SplitDirection['why']): SplitDirection => ({ goes: 'cannot-tell', why, storms: counted.length });
  if (counted.length < FEWEST_STORMS) return cannot('few-storms');
  const weights = counted.map(({ exposed }) => exposed / (1 + (exposed - 1) * ALIKE));
  const shares = counted.map(({ split, exposed }) => split / exposed);
  const whole = weights.reduce((sum, one) => sum + one, 0);
  const average = shares.reduce((sum, share, index) => sum + share * (weights[index] ?? 0), 0) / whole;
  const residuals = shares.map((share, index) => (weights[index] ?? 0) * (share - average));
  if (residuals.every((one) => Math.abs(one) < 1e-9)) return cannot('all-alike');
  // The residuals add up to 0, so the strength does not change when all measures do by the same.
  const middle = counted.reduce((sum, one) => sum + one.measure, 0) / counted.length;
  const along = (measures: readonly number[], lacks: readonly number[]): number =>
    lacks.reduce((sum, lack, index) => sum + lack * ((measures[index] ?? 0) - middle), 0);
  const test = shuffleDays(
    counted.map(({ measure }, index) => ({ id: `${index}`, stratum: '', covariates: [measure] })),
    residuals.map((residual, index) => ({ day: `${index}`, residual })),
    ([measures = []], lacks) => Math.abs(along(measures, lacks)),
    { random: randomStream(STREAM), draws: SHUFFLES },
  );
  if ('cannot' in test) return cannot('all-alike');
  if (test.p > CALLED_BELOW) return cannot('not-clear');
  const measures = counted.map(({ measure }) => measure);
  return { goes: along(measures, residuals) > 0 ? 'more' : 'fewer', why: null, storms: counted.length };
}

function exposedOnly<Storm extends StormCount>(storms: readonly Storm[]): Storm[] {
  for (const { exposed, split } of storms) {
    if (!(Number.isInteger(exposed) && exposed >= 0)) throw new RangeError(`invalid exposed: ${exposed}`);
    if (!(Number.isInteger(split) && split >= 0 && split <= exposed)) throw new RangeError(`invalid split: ${split}`);
  }
  return storms.filter(({ exposed }) => exposed > 0);
}
