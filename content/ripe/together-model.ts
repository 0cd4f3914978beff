import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import type { Figure } from '../../src/figure.ts';
import type { HeldClaims } from '../../src/ledger/ripeness/held-claims.ts';
import type { CropTogether } from '../../src/ledger/ripeness/together.ts';
import type { ClaimBin } from '../../src/statistics/signs/claim-score.ts';

/** A crop's signs put together, and how that would have done. */
export interface TogetherModel {
  /** Why nothing is claimed; null when something is. */
  readonly cannot: 'not-looked' | 'all-ripe' | 'few' | null;
  readonly looked: number;
  readonly unripe: number;
  readonly seasons: number;
  /** Of them, with a day of set. */
  readonly dated: number;
  /** Middle age of the fruits cut; null where no day of set is known. */
  readonly days: number | null;
  /** With every sign, and with none. */
  readonly every: UsualFruit | null;
  readonly bare: UsualFruit | null;
  readonly cap: 8 | 9;
  /** Claims that would have read 9 or more: how many, from how many seasons, and how many held. */
  readonly bold: { readonly claims: number; readonly seasons: number; readonly held: number };
  readonly growing: number;
  readonly held: HeldModel | null;
}

interface UsualFruit {
  readonly figure: Figure;
  readonly seeds: SeedRow;
  /** It may be more, and no more is claimed. */
  readonly capped: boolean;
  /** Of ten, whole; null for a claim that has no range, as one the cap holds back. */
  readonly range: { readonly low: number; readonly high: number } | null;
}

interface HeldModel {
  readonly claims: number;
  readonly bins: readonly ClaimBin[];
  readonly misses: readonly {
    readonly season: string;
    readonly fruit: string;
    readonly of_ten: number;
    readonly state: string;
  }[];
  /** Misses not printed; the table to download has them. */
  readonly more: number;
  /** Out of 100: 0 is never wrong, 25 a coin. */
  readonly scores: { readonly together: number; readonly base: number; readonly best_sign: number | null };
  /** Place of the best single sign among the vine signs; null where there is none. */
  readonly best_place: number | null;
  /** Signs together came nearer than saying the same of every fruit, and than the best single sign. */
  readonly beats: { readonly base: boolean; readonly best_sign: boolean };
}

const MOST_MISSES = 8;

export function togetherModel(together: CropTogether): TogetherModel {
  const { ripe_yet, known, dated, cap, usual, growing } = together;
  const unripe = ripe_yet.fruits - ripe_yet.yes;
  return {
    cannot: ripe_yet.reason === null ? null : known.length === 0 ? 'not-looked' : unripe === 0 ? 'all-ripe' : 'few',
    looked: known.length,
    unripe,
    seasons: ripe_yet.seasons,
    dated,
    days: usual.days === null ? null : Math.round(usual.days),
    every: usualFruit(usual.all, cap.cap),
    bare: usualFruit(usual.none, cap.cap),
    cap: cap.cap,
    bold: { claims: cap.claims, seasons: cap.seasons, held: cap.held },
    growing: growing.length,
    held: ripe_yet.held && heldModel(ripe_yet.held),
  };
}

function usualFruit(figure: Figure, cap: number): UsualFruit | null {
  const { value, interval } = figure;
  if (value === null) return null;
  return {
    figure,
    seeds: seedRow(value),
    capped: value >= cap,
    range: interval && { low: Math.round(interval.low), high: Math.round(interval.high) },
  };
}

function heldModel({ claims, bins, scores }: HeldClaims): HeldModel {
  const misses = claims.filter(({ missed }) => missed);
  const best = scores.best_sign;
  return {
    claims: claims.length,
    bins,
    misses: misses.slice(0, MOST_MISSES).map(({ judged, of_ten }) => ({
      season: judged.season.label,
      fruit: judged.fruit.id,
      of_ten,
      state: judged.state.replace('-', ' '),
    })),
    more: Math.max(0, misses.length - MOST_MISSES),
    scores: {
      together: 100 * scores.together,
      base: 100 * scores.base,
      best_sign: best && 100 * best.score,
    },
    best_place: best?.place ?? null,
    beats: {
      base: scores.together < scores.base,
      best_sign: best === null || scores.together < best.score,
    },
  };
}
