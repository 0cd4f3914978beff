import type { TraitId } from './trait.ts';

/** One value of one trait: of a fruit or of a mound in a season. */
export interface TraitValue {
  readonly trait: TraitId;
  /** In the trait's unit. */
  readonly value: number;
  readonly variety: string;
  readonly season: string;
  readonly block: string | null;
  readonly spot: string;
  /** Picking day of a fruit; null for a mound, and where it is not known to the day. */
  readonly day: string | null;
  /** Of the record it was read from. */
  readonly key: string;
}
