import { brierScore, type ClaimBin, claimBins } from '../../statistics/signs/claim-score.ts';
import type { StateInside } from '../../statistics/signs/likelihood-ratio.ts';
import { holdsUntil, type Outcome } from './outcome.ts';
import type { WeekClaim } from './week-claims.ts';

/** A claim and what the knife found. */
export interface JudgedClaim extends WeekClaim {
  /** Null, as is `came`, where it was not cut while the look held. */
  readonly state: StateInside | null;
  readonly came: boolean | null;
  /** It spoke for one answer (6 of ten and more, 4 and less) and the other came. */
  readonly missed: boolean;
}

export interface ClaimScore {
  readonly judged: number;
  readonly missed: number;
  /** Claims of 6 in 10 and more, and how many of them came. */
  readonly bold: { readonly claims: number; readonly came: number };
  readonly bins: readonly ClaimBin[];
  /** Mean squared distance from what came, beside the two plain ways: 0 is never wrong, 0.25 a coin's. */
  readonly scores: { readonly book: number; readonly base: number; readonly sign: number | null };
}

/** A claim at least so far from even speaks for an answer. */
export const SPEAKS = 6;

export function judgeClaim(claim: WeekClaim, outcome: Outcome | undefined): JudgedClaim {
  const state = outcome && holdsUntil(claim.looked_on, outcome) ? outcome.state : null;
  const came = state === null ? null : state !== 'unripe';
  const missed = came === true ? claim.of_ten <= 10 - SPEAKS : came === false && claim.of_ten >= SPEAKS;
  return { ...claim, state, came, missed };
}

/** Null where no claim was judged. */
export function scoreClaims(claims: readonly JudgedClaim[]): ClaimScore | null {
  const judged = claims.flatMap(({ came, ...claim }) => (came === null ? [] : [{ ...claim, came }]));
  if (judged.length === 0) return null;
  const scored = (chance: (one: (typeof judged)[number]) => number): number =>
    brierScore(judged.map((one) => ({ chance: chance(one), came: one.came }))) ?? 0;
  const bold = judged.filter(({ of_ten }) => of_ten >= SPEAKS);
  const isSigned = judged.every(({ sign_chance }) => sign_chance !== null);
  return {
    judged: judged.length,
    missed: judged.filter(({ missed }) => missed).length,
    bold: { claims: bold.length, came: bold.filter(({ came }) => came).length },
    bins: claimBins(judged),
    scores: {
      book: scored(({ chance }) => chance),
      base: scored(({ base_chance }) => base_chance),
      sign: isSigned ? scored(({ sign_chance, base_chance }) => sign_chance ?? base_chance) : null,
    },
  };
}

/** The furthest from what came first, so misses before hits; those never judged last. */
export const missesFirst = (claims: readonly JudgedClaim[]): JudgedClaim[] =>
  claims.toSorted((a, b) => Number(b.missed) - Number(a.missed) || away(b) - away(a));

const away = ({ chance, came }: JudgedClaim): number => (came === null ? -1 : Math.abs(chance - Number(came)));
