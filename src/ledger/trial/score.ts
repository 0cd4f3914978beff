import { WEIGHT_KEYS, type WeightKey } from '../../records/weights.ts';
import type { Vector } from '../../statistics/linear/cholesky.ts';
import type { LevelDraws } from '../../statistics/posterior/level-draws.ts';
import { type TraitId, traitOf } from './trait.ts';
import { median, summerOf, type TraitFit } from './trait-fit.ts';
import type { TraitFound } from './trait-numbers.ts';
import type { TraitValue } from './trait-value.ts';
import { WEIGHT_TRAITS, type Weights } from './weight.ts';

/** Seasons of a variety before anything is said of how even it is from summer to summer. */
export const RELIABLE_SEASONS = 4;

/** One wish of the grower's, the trait it is told by, and what each variety is worth in it. */
export interface ScorePart {
  readonly key: WeightKey;
  readonly trait: TraitId;
  /**
   * Higher is better: in what one fruit (or mound) differs from the next, so that wishes of different units can be added.
   * One entry a variety.
   */
  readonly worth: readonly LevelDraws[];
  /** Varieties with values enough in it, joined to the yardstick. */
  readonly told: readonly string[];
  /** Of each variety, the seasons it gave a value of the trait in. */
  readonly seasons: ReadonlyMap<string, readonly string[]>;
}

/** Every wish that the records tell of at least two varieties, weighed or not, in the order of WEIGHT_KEYS. */
export function scoreParts(found: readonly TraitFound[], values: readonly TraitValue[]): ScorePart[] {
  return WEIGHT_KEYS.flatMap((key) => {
    const [first] = WEIGHT_TRAITS[key].flatMap((id) => {
      const one = found.find(({ numbers }) => numbers.trait === id);
      if (!one?.fit) return [];
      const seasons = seasonsOf(id, values);
      const able = one.numbers.varieties
        .filter(({ apart }) => apart === null || apart === 'yardstick')
        .map(({ variety }) => variety);
      const told =
        key === 'reliable' ? able.filter((variety) => (seasons.get(variety)?.length ?? 0) >= RELIABLE_SEASONS) : able;
      return told.length < 2 ? [] : [{ key, trait: id, told, seasons, fit: one.fit }];
    });
    if (!first) return [];
    const { fit, ...part } = first;
    return [{ ...part, worth: key === 'reliable' ? evenness(fit, part) : inFruits(fit, part.trait) }];
  });
}

function seasonsOf(id: TraitId, values: readonly TraitValue[]): ReadonlyMap<string, readonly string[]> {
  const own = values.filter(({ trait }) => trait === id);
  return new Map(
    [...new Set(own.map(({ variety }) => variety))].map((variety) => [
      variety,
      [...new Set(own.filter((one) => one.variety === variety).map(({ season }) => season))].sort(),
    ]),
  );
}

function inFruits({ worth, sd }: TraitFit, id: TraitId): LevelDraws[] {
  const sense = traitOf(id).better === 'less' ? -1 : 1;
  const unit = sense / median(sd.residual);
  return worth.map(({ level, draws }) => ({ level, draws: draws.map((value) => unit * value) }));
}

/**
 * How little a variety swung from summer to summer: less the standard deviation of what its summers added. One with
 * fewer than four summers, or none, counts as the average of the others: nothing is known of it.
 */
function evenness(
  { summers, sd, worth }: TraitFit,
  { told, seasons }: Pick<ScorePart, 'told' | 'seasons'>,
): LevelDraws[] {
  const unit = median(sd.residual);
  const swings = told.map((variety) => {
    const own = (seasons.get(variety) ?? []).map(
      (season) => summers.find(({ level }) => level === summerOf(variety, season))?.draws ?? new Float64Array(0),
    );
    return { level: variety, draws: (own[0] ?? new Float64Array(0)).map((_, draw) => -spreadAt(own, draw) / unit) };
  });
  const average = (swings[0]?.draws ?? new Float64Array(0)).map(
    (_, draw) => swings.reduce((sum, { draws }) => sum + (draws[draw] ?? 0), 0) / swings.length,
  );
  const others = worth.filter(({ level }) => !told.includes(level)).map(({ level }) => ({ level, draws: average }));
  return [...swings, ...others];
}

function spreadAt(series: readonly Vector[], draw: number): number {
  const mean = series.reduce((sum, one) => sum + (one[draw] ?? 0), 0) / series.length;
  const squares = series.reduce((sum, one) => sum + ((one[draw] ?? 0) - mean) ** 2, 0);
  return Math.sqrt(squares / (series.length - 1));
}

/** The parts that are wished for. */
export const wishedFor = (parts: readonly ScorePart[], weights: Weights): ScorePart[] =>
  parts.filter(({ key }) => (weights[key] ?? 0) > 0);

/** What some parts weigh together. */
export const weightOf = (parts: readonly ScorePart[], weights: Weights): number =>
  parts.reduce((sum, { key }) => sum + (weights[key] ?? 0), 0);

/** The weighted mean of the parts, a draw each: of varieties no part knows, nothing is added. */
export function scoreOf(parts: readonly ScorePart[], weights: Weights, varieties: readonly string[]): LevelDraws[] {
  const used = wishedFor(parts, weights);
  const whole = weightOf(used, weights);
  const draws = used[0]?.worth[0]?.draws.length ?? 0;
  return varieties.map((variety) => {
    const score = new Float64Array(draws);
    for (const { key, worth } of used) {
      const own = worth.find(({ level }) => level === variety)?.draws;
      const share = (weights[key] ?? 0) / whole;
      if (own) for (let draw = 0; draw < draws; draw++) score[draw] = (score[draw] ?? 0) + share * (own[draw] ?? 0);
    }
    return { level: variety, draws: score };
  });
}
