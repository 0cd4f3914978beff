/**
 * How far claims lay from what came: the mean squared distance of a chance from 1 where it came true and 0 where not
 * (Brier 1950, Monthly Weather Review 78:1-3, for two outcomes and one chance; from memory). 0 is never wrong, 0.25 a
 * coin's. And a table of claims by what they said: a claim is good when as many come true as it says.
 */

export interface ScoredClaim {
  /** 0 to 1. */
  readonly chance: number;
  readonly came: boolean;
}

/** Null without claims. Throws RangeError for a chance outside 0 to 1. */
export function brierScore(claims: readonly ScoredClaim[]): number | null {
  if (claims.length === 0) return null;
  const squares = claims.map(({ chance, came }) => {
    if (!(chance >= 0 && chance <= 1)) throw new RangeError(`invalid chance: ${chance}`);
    return (chance - Number(came)) ** 2;
  });
  return squares.reduce((sum, one) => sum + one, 0) / claims.length;
}

export interface ClaimBin {
  /** Claims of so many to so many of ten. */
  readonly from: number;
  readonly to: number;
  readonly claims: number;
  readonly came: number;
  /** So many of ten on average; null without claims. */
  readonly said: number | null;
}

/** Three: hardly, perhaps, likely. */
const BINS = [
  { from: 0, to: 3 },
  { from: 4, to: 6 },
  { from: 7, to: 10 },
] as const;

/** Claims of ten, whole numbers as they would have been printed. Throws RangeError for any other. */
export function claimBins(claims: readonly { readonly of_ten: number; readonly came: boolean }[]): ClaimBin[] {
  for (const { of_ten } of claims)
    if (!(Number.isInteger(of_ten) && of_ten >= 0 && of_ten <= 10)) throw new RangeError(`invalid claim: ${of_ten}`);
  return BINS.map(({ from, to }) => {
    const own = claims.filter(({ of_ten }) => of_ten >= from && of_ten <= to);
    const said = own.reduce((sum, { of_ten }) => sum + of_ten, 0);
    return {
      from,
      to,
      claims: own.length,
      came: own.filter(({ came }) => came).length,
      said: own.length === 0 ? null : said / own.length,
    };
  });
}
