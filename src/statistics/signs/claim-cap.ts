/**
 * The most a card may claim. No claim goes above 8 in 10 before it has been judged on fruits it had not seen: of claims
 * that would have read 9 or 10, at least 60 from at least 3 seasons, and the lower end of the 90 % range of how many
 * held, the season being the replicate, at 8 in 10 or above. All figures decided by the makers; a claim of 10 is never
 * made.
 */
import { groupedShare } from '../beta-binomial.ts';

const CAP = 8;
const HIGHER_CAP = 9;
const FEWEST_CLAIMS = 60;
const FEWEST_SEASONS = 3;
const LEVEL = 0.9;

export interface HeldOutClaim {
  readonly season: string;
  /** The chance reckoned without that season, 0 to 1, not yet cut off at a cap. */
  readonly claimed: number;
  readonly held: boolean;
}

export interface ClaimCap {
  /** Of ten. */
  readonly cap: 8 | 9;
  /** Claims that would have read 9 or more, how many held, and from how many seasons. */
  readonly claims: number;
  readonly held: number;
  readonly seasons: number;
  /** Lower end of the range of the share that holds; null where the claims or seasons are too few to ask. */
  readonly lower: number | null;
}

/** Of ten, rounded and never above the cap. Throws RangeError for a chance outside 0 to 1. */
export function claimOfTen(chance: number, cap: ClaimCap['cap']): number {
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`invalid chance: ${chance}`);
  return Math.min(Math.round(10 * chance), cap);
}

/** Throws RangeError for a claim outside 0 to 1. */
export function claimCap(heldOut: readonly HeldOutClaim[]): ClaimCap {
  const bold = heldOut.filter(({ claimed }) => claimOfTen(claimed, HIGHER_CAP) === HIGHER_CAP);
  const seasons = [...new Set(bold.map(({ season }) => season))];
  const held = bold.filter((one) => one.held).length;
  const counted = { claims: bold.length, held, seasons: seasons.length };
  if (bold.length < FEWEST_CLAIMS || seasons.length < FEWEST_SEASONS) return { cap: CAP, ...counted, lower: null };
  const groups = seasons.map((season) => {
    const own = bold.filter((one) => one.season === season);
    return { hits: own.filter((one) => one.held).length, units: own.length };
  });
  const lower = groupedShare(groups, LEVEL).interval.low;
  return { cap: lower >= CAP / 10 ? HIGHER_CAP : CAP, ...counted, lower };
}
