/**
 * The chance that a fruit is ripe (or over) from its age and its signs together. Log odds are a constant, a slope on
 * age, a slope on the score of its signs (`sign-score.ts`: a count, never a product of ratios), an offset of its
 * variety and one of its season, each drawn towards 0 by a stated normal curve. The chance is the mean over all
 * coefficients the cuts allow, over the seasons still to come and over varieties not yet cut; not the chance at the
 * best of them.
 *
 * Age is days since set on the log scale, less the mean of the fruits cut and in units of their spread. A fruit without
 * a day of set stands at the mean, with an offset of its own; asked about, it may have any age the fruits cut had.
 *
 * Supposes that signs mean the same in a season to come but for one offset, and that what made a keeper cut a fruit is
 * among age and signs. Where an observer changes it over-claims: tests/truth/ripe-claims.truth.ts says by how much.
 */
import type { Interval } from '../../figure.ts';
import { ridgePosterior } from '../penalised-logistic/gaussian-prior.ts';
import { chanceAt } from '../penalised-logistic/logistic.ts';
import { mixtureQuantile, type NormalPart } from '../preference/normal-mixture.ts';
import { type Signs, signScore, usualSigns } from './sign-score.ts';

/**
 * Standard deviations of the priors in log odds, decided by the makers, to be printed on the methods page: an offset of
 * 0.7 doubles the odds, of 1.5 makes them four and a half times as high, of 3 twenty times.
 */
export const PRIOR_SPREADS = {
  constant: 1.5,
  /** For one spread of the fruits' ages. */
  age: 1.5,
  age_unknown: 0.5,
  /** From no sign shown to all. */
  signs: 3,
  variety: 0.5,
  season: 0.7,
} as const;

/** Of log days: what ages are spread by when fewer than two are known, or all are alike. */
const LEAST_AGE_SPREAD = 0.05;
/** Steps over six standard deviations to either side. */
const STEPS = 120;
const REACH = 6;
/** Ages that stand for a normal curve of them, in its standard deviations. */
const AGES = Array.from({ length: 15 }, (_, k) => (k - 7) / 2);

export interface LookedFruit {
  /** Above 0; null where the day of set is not known. */
  readonly days_since_set: number | null;
  /** Of every fruit the same signs, in the same places. */
  readonly signs: Signs;
  /** Null where not known: then any variety. */
  readonly variety: string | null;
}

export interface CutFruit extends LookedFruit {
  readonly season: string;
  /** The answer: ripe for "ripe yet", over for "too late". */
  readonly answer: boolean;
}

export interface RipeChance {
  /** Of a fruit in a season not yet cut from. */
  readonly chance: number;
  /** What the chance could be, were coefficients and season known; equal tails. */
  readonly interval: Interval;
}

export interface RipeModel {
  readonly of: (fruit: LookedFruit, level: number) => RipeChance;
  readonly fruits: number;
  readonly seasons: number;
  /** Slopes on age and score at the posterior's peak, in log odds. */
  readonly slopes: { readonly age: number; readonly signs: number };
}

/**
 * From any number of cut fruits, none ripe or all ripe too: the priors hold it. The caller abstains below what its page
 * asks for. Against weighted draws from the exact posterior a chance was right to 0.003 and the ends of its range to
 * 0.02 from 24 fruits on; to 0.01 and 0.04 below. Throws RangeError without fruits, with unequally many signs, or for
 * days that are not above 0.
 */
export function ripeModel(fruits: readonly CutFruit[]): RipeModel {
  if (fruits.length === 0) throw new RangeError('invalid fruits: none');
  const scales = scalesOf(fruits);
  const varieties = [...new Set(fruits.flatMap(({ variety }) => variety ?? []))].sort();
  const seasons = [...new Set(fruits.map(({ season }) => season))].sort();
  const shared = (fruit: LookedFruit, age: number): number[] => [
    1,
    age,
    Number(fruit.days_since_set === null),
    signScore(fruit.signs, scales.usual),
    ...varieties.map((variety) => Number(fruit.variety === variety)),
  ];
  const rows = fruits.map((fruit) => ({
    columns: [...shared(fruit, scales.age(fruit) ?? 0), ...seasons.map((season) => Number(fruit.season === season))],
    hits: Number(fruit.answer),
    units: 1,
  }));
  const { constant, age, age_unknown, signs, variety, season } = PRIOR_SPREADS;
  const spreads = [constant, age, age_unknown, signs, ...varieties.map(() => variety), ...seasons.map(() => season)];
  const posterior = ridgePosterior(rows, spreads);
  const partsOf = (fruit: LookedFruit): NormalPart[] => {
    const own = scales.age(fruit);
    const isNew = fruit.variety === null || !varieties.includes(fruit.variety);
    const fresh = season ** 2 + (isNew ? variety ** 2 : 0);
    const ages = own !== null ? [own] : scales.has_ages ? AGES : [0];
    const weights = ages.map((one) => (own === null ? Math.exp((-one * one) / 2) : 1));
    const whole = weights.reduce((sum, one) => sum + one, 0);
    return ages.map((one, index) => {
      const known = posterior.of([...shared(fruit, one), ...seasons.map(() => 0)]);
      const sd = Math.sqrt(known.variance + fresh);
      return { weight: (weights[index] ?? 0) / whole, mean: known.mean, sd, skewness: known.third_cumulant / sd ** 3 };
    });
  };
  return {
    of: (fruit, level) => chanceOf(partsOf(fruit), level),
    fruits: fruits.length,
    seasons: seasons.length,
    slopes: { age: posterior.peak[1] ?? 0, signs: posterior.peak[3] ?? 0 },
  };
}

function scalesOf(fruits: readonly CutFruit[]) {
  const logs = fruits.flatMap(({ days_since_set }) => (days_since_set === null ? [] : [logDays(days_since_set)]));
  const mean = logs.reduce((sum, one) => sum + one, 0) / Math.max(logs.length, 1);
  const square = logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(logs.length - 1, 1);
  const spread = Math.max(Math.sqrt(square), LEAST_AGE_SPREAD);
  return {
    usual: usualSigns(fruits.map(({ signs }) => signs)),
    has_ages: logs.length > 0,
    /** Of a garden that never wrote down a day, nobody's age counts. */
    age: ({ days_since_set }: LookedFruit): number | null =>
      days_since_set === null || logs.length === 0 ? null : (logDays(days_since_set) - mean) / spread,
  };
}

function logDays(days: number): number {
  if (!(days > 0 && Number.isFinite(days))) throw new RangeError(`invalid days since set: ${days}`);
  return Math.log(days);
}

/** Mean of the chance over the log odds, and the range of the chance: it rises with them. */
function chanceOf(parts: readonly NormalPart[], level: number): RipeChance {
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  const at = (p: number) => chanceAt(mixtureQuantile(parts, p));
  return {
    chance: parts.reduce((sum, part) => sum + part.weight * meanChance(part), 0),
    interval: { low: at((1 - level) / 2), high: at((1 + level) / 2), level },
  };
}

function meanChance({ mean, sd, skewness }: NormalPart): number {
  let [sum, whole] = [0, 0];
  for (let step = 0; step <= STEPS; step++) {
    const z = REACH * ((2 * step) / STEPS - 1);
    const weight = Math.exp((-z * z) / 2) * Math.max(0, 1 + (skewness * (z ** 3 - 3 * z)) / 6);
    sum += weight * chanceAt(mean + sd * z);
    whole += weight;
  }
  return sum / whole;
}
