import { brierScore } from '../../statistics/signs/claim-score.ts';
import { baseClaims, signClaims } from '../../statistics/signs/plain-claims.ts';
import type { CutFruit, LookedFruit } from '../../statistics/signs/ripe-chance.ts';

/** What one would have said of a fruit then who knew no model. */
export interface PlainClaim {
  /** The share of all cut fruits that were ripe, 0 to 1. */
  readonly base: number;
  /** By the one sign that had done best till then; null where the crop has none on the vine. */
  readonly sign: { readonly place: number; readonly chance: number } | null;
}

/** A fruit asked about stands in no season of the cuts. */
const ASKED = '';

/** Of each fruit asked about, from the cuts known then. Throws RangeError without cuts. */
export function plainThen(cuts: readonly CutFruit[], asked: readonly LookedFruit[]): PlainClaim[] {
  const best = bestSign(cuts);
  return asked.map((fruit) => {
    const all = [...cuts, { ...fruit, season: ASKED, answer: false }];
    const base = baseClaims(all).at(-1) ?? 0;
    return { base, sign: best === null ? null : { place: best, chance: signClaims(all, best).at(-1) ?? base } };
  });
}

/** Each cut told from the other seasons; of one season alone, from its other fruits. Of equals the first. */
function bestSign(cuts: readonly CutFruit[]): number | null {
  const isOne = new Set(cuts.map(({ season }) => season)).size < 2;
  if (isOne && cuts.length < 2) return null;
  const apart = isOne ? cuts.map((one, at) => ({ ...one, season: `${at}` })) : cuts;
  const scores = (cuts[0]?.signs ?? []).map((_, place) => {
    const chances = signClaims(apart, place);
    const score = brierScore(chances.map((chance, at) => ({ chance, came: apart[at]?.answer === true }))) ?? 1;
    return { place, score };
  });
  return scores.toSorted((a, b) => a.score - b.score)[0]?.place ?? null;
}
