import { type ClaimCap, claimOfTen } from '../../statistics/signs/claim-cap.ts';
import { brierScore, type ClaimBin, claimBins } from '../../statistics/signs/claim-score.ts';
import type { RipeQuestion } from '../../statistics/signs/likelihood-ratio.ts';
import { baseClaims, signClaims } from '../../statistics/signs/plain-claims.ts';
import type { JudgedFruit } from './judged-fruit.ts';
import { cutFor, type KnownFruit, type QuestionNumbers } from './together-numbers.ts';

/** What would have been claimed of a cut fruit by one who had not seen its season. */
export interface HeldClaim {
  readonly judged: JudgedFruit;
  readonly question: RipeQuestion;
  /** 0 to 1, not cut off at the cap. */
  readonly chance: number;
  /** As it would have been printed. */
  readonly of_ten: number;
  readonly came: boolean;
  /** It spoke for one answer (6 of ten and more, 4 and less) and the knife found the other. */
  readonly missed: boolean;
}

/** Claims of one question, each told without its season. */
export interface HeldClaims {
  readonly question: RipeQuestion;
  /** The furthest from what came first, so misses before hits. */
  readonly claims: readonly HeldClaim[];
  readonly bins: readonly ClaimBin[];
  /** Mean squared distance: 0 is never wrong, 0.25 a coin's. */
  readonly scores: {
    readonly together: number;
    /** Saying of every fruit what share of all is ripe. */
    readonly base: number;
    /** The one sign that did best, with hindsight; null where the crop has none on the vine. */
    readonly best_sign: { readonly place: number; readonly score: number } | null;
  };
}

/** A claim at least so far from even speaks for an answer. */
const SPEAKS = 6;

/** Null before a second season, or where the cuts are too few. `judged` and `known` are the same fruits. */
export function heldClaims(
  judged: readonly JudgedFruit[],
  known: readonly KnownFruit[],
  { question, held_out }: QuestionNumbers,
  { cap }: Pick<ClaimCap, 'cap'>,
): HeldClaims | null {
  if (held_out === null) return null;
  const cut = cutFor(known, question);
  const asked = judged.flatMap((one, index) => {
    const chance = held_out[index] ?? null;
    return chance === null ? [] : [{ judged: one, chance }];
  });
  const claims = asked.map(({ judged: one, chance }, index): HeldClaim => {
    const came = cut[index]?.answer === true;
    const of_ten = claimOfTen(chance, cap);
    return { judged: one, question, chance, of_ten, came, missed: came ? of_ten <= 10 - SPEAKS : of_ten >= SPEAKS };
  });
  const scored = (chances: readonly number[]): number =>
    brierScore(chances.map((chance, index) => ({ chance, came: cut[index]?.answer === true }))) ?? 0;
  const signs = (cut[0]?.signs ?? []).map((_, place) => ({ place, score: scored(signClaims(cut, place)) }));
  return {
    question,
    claims: claims.toSorted((a, b) => distance(b) - distance(a)),
    bins: claimBins(claims),
    scores: {
      together: scored(asked.map(({ chance }) => chance)),
      base: scored(baseClaims(cut)),
      best_sign: signs.toSorted((a, b) => a.score - b.score)[0] ?? null,
    },
  };
}

const distance = ({ chance, came }: HeldClaim): number => Math.abs(chance - Number(came));
