import { bestShare, differences } from '../../statistics/posterior/level-summary.ts';
import { mostOf, OF } from './claim.ts';
import { type ScorePart, scoreOf, weightOf, wishedFor } from './score.ts';
import { BEST, MANY } from './trait-numbers.ts';
import type { Weights } from './weight.ts';

/** Below this chance of being better than the yardstick a variety may go. */
const GOES_BELOW = 0.1;
/** A variety this likely among the best three is listed even as a fourth. */
const EVEN = 0.5;

/**
 * listed: on the short list. again: nothing speaks against another try. goes: hardly ever better than the yardstick.
 * few: too little is known of what was wished for.
 */
export type Standing = 'listed' | 'again' | 'goes' | 'few';

export interface ListEntry {
  readonly variety: string;
  readonly standing: Standing;
  /** Chance, of 1, that it serves the wishes better than the yardstick; null for itself, and where too few. */
  readonly better: number | null;
  /** Chance, of 1, that it is among the best three; null with fewer than five to choose from. */
  readonly best: number | null;
  /** Seasons in which both it and the yardstick told of at least half of what is wished for. */
  readonly seasons: number;
}

export interface ListDesk {
  readonly parts: readonly ScorePart[];
  /** Varieties ever harvested, in the alphabet's order. */
  readonly varieties: readonly string[];
  readonly yardstick: string;
}

/** Every variety with its standing, in the order given: a list has no first place. Empty when no wish can be told. */
export function shortlist(desk: ListDesk, weights: Weights): ListEntry[] {
  const { parts, varieties, yardstick } = desk;
  const used = wishedFor(parts, weights);
  if (used.length === 0) return [];
  const isHalf = (of: readonly ScorePart[]): boolean => 2 * weightOf(of, weights) >= weightOf(used, weights);
  const known = varieties.filter((variety) => isHalf(used.filter(({ told }) => told.includes(variety))));
  const shared = (variety: string): number =>
    seasonsIn(used, yardstick).filter((season) =>
      isHalf(used.filter((part) => [variety, yardstick].every((one) => part.seasons.get(one)?.includes(season)))),
    ).length;
  const few = (variety: string): ListEntry => ({
    variety,
    standing: 'few',
    better: null,
    best: null,
    seasons: shared(variety),
  });
  const scores = scoreOf(used, weights, known);
  if (known.length < 2 || !known.includes(yardstick)) return varieties.map(few);
  const better = new Map(differences(scores, yardstick).map((one) => [one.level, one.share_above_zero]));
  const best = known.length >= MANY ? new Map(bestShare(scores, BEST).map((one) => [one.level, one.share])) : null;
  const third = best ? ([...best.values()].sort((a, b) => b - a)[BEST - 1] ?? 0) : 0;
  return varieties.map((variety) => {
    if (!known.includes(variety)) return few(variety);
    const seasons = shared(variety);
    const chance = better.get(variety) ?? null;
    const share = best?.get(variety) ?? null;
    const goes = chance !== null && chance < GOES_BELOW && OF - mostOf(seasons) < GOES_BELOW * OF;
    const listed = share === null ? !goes : share >= Math.min(third, EVEN);
    return { variety, standing: goes ? 'goes' : listed ? 'listed' : 'again', better: chance, best: share, seasons };
  });
}

const seasonsIn = (parts: readonly ScorePart[], variety: string): string[] => [
  ...new Set(parts.flatMap(({ seasons }) => seasons.get(variety) ?? [])),
];
