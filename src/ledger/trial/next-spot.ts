import { expectedGain } from '../../statistics/expected-gain.ts';
import type { Vector } from '../../statistics/linear/cholesky.ts';
import type { LevelDraws } from '../../statistics/posterior/level-draws.ts';
import { type ScorePart, scoreOf, weightOf, wishedFor } from './score.ts';
import { traitOf } from './trait.ts';
import { BEST, MANY, type TraitFound } from './trait-numbers.ts';
import type { TraitValue } from './trait-value.ts';
import type { Weights } from './weight.ts';

/** What one more spot of a variety next summer would be worth to the choice. */
export interface NextSpot {
  readonly variety: string;
  /** By how much the best (three, of many) are expected to be better for knowing it, in what one fruit differs from the next. */
  readonly gain: number;
  /** False for one that was never harvested here. */
  readonly grown: boolean;
}

/**
 * For every variety, the one that would teach most first. A spot moves all means along with what it says of its own: by
 * cov(score, own) / √(var(own) + noise), the noise being what the summer, the mound and its fruits add. The yardstick and
 * the other varieties are taken to show how the summer was.
 */
export function nextSpots(
  parts: readonly ScorePart[],
  found: readonly TraitFound[],
  values: readonly TraitValue[],
  weights: Weights,
  varieties: readonly string[],
): NextSpot[] {
  const used = wishedFor(parts, weights);
  if (used.length === 0) return [];
  const scores = scoreOf(used, weights, varieties);
  const centred = scores.map(({ level, draws }) => ({ level, mean: meanOf(draws), draws: lessMean(draws) }));
  const places = varieties.length >= MANY ? BEST : 1;
  const noise = noiseOf(used, found, values, weights);
  return centred
    .map((own) => {
      const seen = Math.sqrt(product(own.draws, own.draws) + noise);
      const lines = centred.map(({ mean, draws }) => ({ mean, slope: product(draws, own.draws) / seen }));
      const grown = values.some(({ variety }) => variety === own.level);
      return { variety: own.level, gain: expectedGain(lines, places), grown };
    })
    .sort((a, b) => b.gain - a.gain);
}

/** Variance that one spot’s score has around what the variety is worth. A spot tells nothing new of how reliable it is. */
function noiseOf(
  used: readonly ScorePart[],
  found: readonly TraitFound[],
  values: readonly TraitValue[],
  weights: Weights,
): number {
  const whole = weightOf(used, weights);
  return used
    .filter(({ key }) => key !== 'reliable')
    .reduce((sum, { key, trait }) => {
      const fit = found.find(({ numbers }) => numbers.trait === trait)?.fit;
      if (!fit) return sum;
      const { sd } = fit;
      const one = meanSquare(sd.residual);
      const fruits = fruitsOfMound(trait, values);
      const between = meanSquare(sd.variety_season) + (sd.mound ? meanSquare(sd.mound) : 0);
      return sum + ((weights[key] ?? 0) / whole) ** 2 * ((between + one / fruits) / one);
    }, 0);
}

/** Values a mound gave, on average; 1 where a mound gives one. */
function fruitsOfMound(trait: ScorePart['trait'], values: readonly TraitValue[]): number {
  if (traitOf(trait).of !== 'fruit') return 1;
  const own = values.filter((value) => value.trait === trait);
  return own.length / Math.max(new Set(own.map(({ season, spot }) => `${season} ${spot}`)).size, 1);
}

const meanOf = (draws: Vector): number => draws.reduce((sum, value) => sum + value, 0) / draws.length;
const meanSquare = (draws: Vector): number => draws.reduce((sum, value) => sum + value * value, 0) / draws.length;
const product = (a: Vector, b: Vector): number =>
  a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0) / a.length;

function lessMean(draws: LevelDraws['draws']): Vector {
  const mean = meanOf(draws);
  return draws.map((value) => value - mean);
}
