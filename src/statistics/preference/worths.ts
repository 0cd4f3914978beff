/**
 * Which variety is liked better, from pairs and orders of a few tasted fruits. The fruit is the replicate: those who
 * taste one fruit taste the same sugar, so each fruit has an effect of its own within its variety (see
 * `posterior-mode`). How far varieties and fruits spread is not known either: the posterior is averaged over a grid of
 * both spreads, weighted by how probable they make the ballots, with a leaning normal curve at each (nested Laplace
 * approximation: Rue, Martino & Chopin 2009, Journal of the Royal Statistical Society B 71:319-392, from memory).
 * Nothing is drawn, so there is no seed. Against a long run of a sampler the ends of the intervals lie within a
 * fiftieth of their width; where spreads of 3 and more are likely and every ballot says one thing, they are too wide.
 */
import type { Interval } from '../../figure.ts';
import { areJoined, components } from '../connectivity.ts';
import { type Ballots, placed, type Tastings } from './ballot.ts';
import { mixtureCdf, mixtureMean, mixtureQuantile, type NormalPart } from './normal-mixture.ts';
import { type Mode, posteriorMode } from './posterior-mode.ts';

/** Spreads of a half-normal prior that are tried, evenly spaced from 0 to three of its scales. */
const GRID = 8;
const GRID_REACH = 3;
/** Spreads that carry less than this of the posterior are left out of it. */
const NEGLIGIBLE = 1e-4;

/** A standard deviation on the scale of log odds: given, or with a half-normal prior of this scale. */
export type SpreadPrior = { readonly known: number } | { readonly half_normal: number };

export interface Priors {
  /** Of the varieties' worths around equality. A narrow one pulls harder. */
  readonly variety: SpreadPrior;
  /** Of fruits within a variety; known to be 0 makes every ballot a repeat of its own. */
  readonly fruit: SpreadPrior;
  /** Of log ν around 0, where one in three between equals says "the same"; null when that was not offered. */
  readonly ties: number | null;
}

/**
 * Decided by the makers. At a spread of 1 the better of two varieties typically wins seven or eight pairs in ten; this
 * leaves room for twice that, and for fruits of one variety to differ as much as varieties do.
 */
export const WEAK_PULL: Priors = { variety: { half_normal: 1.5 }, fruit: { half_normal: 1.5 }, ties: 1 };

export interface Worth {
  /**
   * Log-worth less the average of all varieties it is joined to: half the log odds of winning, at two varieties. The
   * posterior mean, and equal tails.
   */
  readonly estimate: number;
  readonly interval: Interval;
}

export interface VarietyWorth {
  readonly variety: string;
  /** Fruits of it that were set beside another variety: the replicates. */
  readonly fruits: number;
  /** Ballots that did so. */
  readonly ballots: number;
  readonly worth: Worth | { readonly cannot: { readonly code: 'nothing-beside-it' } };
}

/** Log odds of a over b for typical fruits of each. */
export interface WorthDifference extends Worth {
  /** Posterior probability that a is worth more. */
  readonly chance_above: number;
}

export interface Worths {
  /** Sorted by code unit; varieties without a ballot are not among them. */
  readonly varieties: readonly VarietyWorth[];
  /** Varieties that can be compared with each other. */
  readonly groups: readonly (readonly string[])[];
  /** a less b. Throws RangeError for a variety without a ballot, or one twice. */
  readonly difference: (a: string, b: string) => WorthDifference | { readonly cannot: { readonly code: 'not-joined' } };
}

/**
 * The worths, or why there are none. Reaches to other fruits of these seasons, for these tasters. Independence of
 * ballots given the fruits is assumed: a taster may fill in several, but not the same one twice. Throws RangeError for
 * a fruit without a variety, a fruit beside itself, an order of fewer than two, "the same" where it was not offered, a
 * spread that is negative or not finite (of varieties: not above 0), or a level outside 0 to 1.
 */
export function worths(
  tastings: Tastings,
  priors: Priors,
  level: number,
):
  | Worths
  | { readonly cannot: { readonly code: 'no-ballots' } | { readonly code: 'one-variety'; readonly variety: string } } {
  check(tastings, priors, level);
  const ballots = placed(tastings);
  const { varieties } = ballots;
  const [first, second] = varieties;
  if (first === undefined) return { cannot: { code: 'no-ballots' } };
  if (second === undefined) return { cannot: { code: 'one-variety', variety: first } };
  const sets = ballotSets(ballots);
  const groups = components(sets.map((set) => set.map((fruit) => varietyName(ballots, fruit))));
  const parts = averagedOver(gridOf(ballots, priors));
  const summed = (weights: readonly number[]): Worth => {
    const mixture = parts(weights);
    const [low, high] = [(1 - level) / 2, (1 + level) / 2].map((p) => mixtureQuantile(mixture, p));
    return { estimate: mixtureMean(mixture), interval: { low: low ?? 0, high: high ?? 0, level } };
  };
  return {
    groups,
    varieties: varieties.map((variety, place) => {
      const group = groups.find((one) => one.includes(variety)) ?? [];
      const weights = varieties.map((one) => (one === variety ? 1 : 0) - (group.includes(one) ? 1 / group.length : 0));
      return {
        variety,
        ...countsOf(ballots, sets, place),
        worth: group.length > 1 ? summed(weights) : { cannot: { code: 'nothing-beside-it' } },
      };
    }),
    difference(a, b) {
      for (const one of [a, b])
        if (!varieties.includes(one)) throw new RangeError(`invalid variety: ${one} has no ballot`);
      if (a === b) throw new RangeError(`invalid difference: ${a} with itself`);
      if (!areJoined(groups, a, b)) return { cannot: { code: 'not-joined' } };
      const weights = varieties.map((one) => (one === a ? 1 : one === b ? -1 : 0));
      return { ...summed(weights), chance_above: 1 - mixtureCdf(parts(weights), 0) };
    },
  };
}

/** Places of the fruits of each ballot. */
const ballotSets = ({ pairs, orders }: Ballots): (readonly number[])[] => [
  ...pairs.map(({ first, second }) => [first, second]),
  ...orders,
];

const varietyName = ({ varieties, variety_of }: Ballots, fruit: number): string =>
  varieties[variety_of[fruit] ?? 0] ?? '';

function countsOf({ variety_of }: Ballots, sets: readonly (readonly number[])[], variety: number) {
  const beside = sets.filter((set) => {
    const own = set.filter((fruit) => variety_of[fruit] === variety).length;
    return own > 0 && own < set.length;
  });
  const fruits = new Set(beside.flat().filter((fruit) => variety_of[fruit] === variety));
  return { fruits: fruits.size, ballots: beside.length };
}

interface GridPoint {
  readonly mode: Mode;
  readonly log_weight: number;
}

function gridOf(ballots: Ballots, priors: Priors): GridPoint[] {
  let start: Mode['units'] | undefined;
  return pointsOf(priors.variety).flatMap((variety) =>
    pointsOf(priors.fruit).map((fruit) => {
      const spreads = { variety: variety.spread, fruit: fruit.spread, ties: priors.ties };
      const mode = posteriorMode(ballots, spreads, start);
      start = mode.units;
      return { mode, log_weight: variety.log_weight + fruit.log_weight + mode.log_evidence };
    }),
  );
}

function pointsOf(prior: SpreadPrior): { spread: number; log_weight: number }[] {
  if ('known' in prior) return [{ spread: prior.known, log_weight: 0 }];
  return Array.from({ length: GRID }, (_, k) => {
    const scales = ((k + 0.5) * GRID_REACH) / GRID;
    return { spread: scales * prior.half_normal, log_weight: (-scales * scales) / 2 };
  });
}

/** The posterior of Σ weights[v] θᵥ. */
function averagedOver(grid: readonly GridPoint[]): (weights: readonly number[]) => NormalPart[] {
  const largest = Math.max(...grid.map((one) => one.log_weight));
  const raw = grid.map(({ mode, log_weight }) => ({ mode, weight: Math.exp(log_weight - largest) }));
  const all = raw.reduce((sum, { weight }) => sum + weight, 0);
  const kept = raw.filter(({ weight }) => weight > NEGLIGIBLE * all);
  const whole = kept.reduce((sum, { weight }) => sum + weight, 0);
  return (weights) =>
    kept.map(({ mode, weight }) => {
      const { mean, variance, third_cumulant } = mode.leaning(weights);
      const sd = Math.sqrt(variance);
      return { weight: weight / whole, mean, sd, skewness: third_cumulant / sd ** 3 };
    });
}

function check({ pairs }: Tastings, { variety, fruit, ties }: Priors, level: number): void {
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  for (const [name, prior, least] of [
    ['variety', variety, Number.MIN_VALUE],
    ['fruit', fruit, 'known' in fruit ? 0 : Number.MIN_VALUE],
    ['ties', { known: ties ?? 0 }, 0],
  ] as const) {
    const spread = 'known' in prior ? prior.known : prior.half_normal;
    if (!(Number.isFinite(spread) && spread >= least)) throw new RangeError(`invalid spread: ${name} ${spread}`);
  }
  if (ties === null && pairs.some(({ said }) => said === 'same'))
    throw new RangeError('invalid ballot: the same, where it was not offered');
}
