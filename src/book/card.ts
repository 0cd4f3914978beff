import type { SeedRow } from './seed-row.ts';

/** How many of ten ripe and of ten unripe fruits showed a sign. */
export interface SeedPair {
  readonly ripe: SeedRow;
  readonly unripe: SeedRow;
}

/** One thing to look at and tick. */
export interface CardRow {
  /** Name of a drawing in layouts/drawings. */
  readonly drawing: string;
  /** The sign in words; null for the days row, whose words the frame makes from `days`. */
  readonly sign: string | null;
  readonly help: string | null;
  /** Days from set, and for untagged fruit from planting out where that is known; null for a sign to look at. */
  readonly days: { readonly set: number; readonly planted: number | null } | null;
  /** Null is left blank, for the grower's own count. */
  readonly seeds: SeedPair | null;
  /** Looked at when the fruit is picked, not on the vine. */
  readonly at_picking: boolean;
}

/** A pocket card: one question, at most six rows. The words around them stand in the chapter's template. */
export interface Card {
  readonly rows: readonly CardRow[];
  /** Of ten fruits judged, whatever they showed; null where there are too few. */
  readonly base: SeedRow | null;
}
