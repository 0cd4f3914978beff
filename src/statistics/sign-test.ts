/** Is the one more often above the other than below? From paired judgements such as "sweeter, the same, less". */
import type { Interval } from '../figure.ts';
import { clopperPearson } from './clopper-pearson.ts';
import { binomialCdf } from './distributions.ts';

const LEVEL = 0.9;

export interface Signs {
  readonly above: number;
  readonly below: number;
  /** Pairs judged the same; they say nothing of direction and are left out, but told. */
  readonly tied: number;
}

export interface SignTest extends Signs {
  /** Share above among the pairs that differ, and its 90 % Clopper-Pearson interval. */
  readonly share: number;
  readonly interval: Interval;
  /** Chance of a split at least as uneven, either way, if above and below were equally likely. */
  readonly p: number;
}

/**
 * The exact sign test: Dixon & Mood 1946, J. Amer. Statist. Assoc. 41:557-566; two-sided, ties dropped. Assumes
 * independent pairs: several fruits of one mound, or one taster's evening, are one pair. Refused when no pair differs.
 * Throws RangeError for a count that is not a whole number from 0.
 */
export function signTest(signs: Signs): SignTest | { readonly cannot: { readonly code: 'no-pair-differs' } } {
  const { above, below, tied } = signs;
  for (const count of [above, below, tied]) {
    if (!(Number.isInteger(count) && count >= 0)) throw new RangeError(`invalid count: ${count}`);
  }
  const n = above + below;
  if (n === 0) return { cannot: { code: 'no-pair-differs' } };
  const p = Math.min(1, 2 * binomialCdf(Math.min(above, below), n, 0.5));
  return { above, below, tied, share: above / n, interval: clopperPearson(above, n, LEVEL), p };
}

/** Counts the signs of paired differences; only 0 is a tie. Throws RangeError for one that is not finite. */
export function signsOf(differences: readonly number[]): Signs {
  for (const one of differences) if (!Number.isFinite(one)) throw new RangeError(`invalid difference: ${one}`);
  return {
    above: differences.filter((one) => one > 0).length,
    below: differences.filter((one) => one < 0).length,
    tied: differences.filter((one) => one === 0).length,
  };
}
