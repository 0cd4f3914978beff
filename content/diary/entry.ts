import type { Dated } from '../../src/dated.ts';

/** The rows of the strip, in the order of the year. */
export const LANES = ['sown', 'planted', 'ground', 'watered', 'flowers', 'looked', 'picked', 'cut'] as const;
export type Lane = (typeof LANES)[number];

/** Something that happened on a day: what of one kind happened that day is one entry. */
export interface Entry {
  readonly lane: Lane;
  /** Which sentence of the page's template tells it. */
  readonly code: string;
  /** A word that entries of one code differ in, such as a material; null where none. */
  readonly word: string | null;
  readonly date: Dated;
  /** How many of what the sentence counts; null where nobody counted. */
  readonly count: number | null;
  /** Spots, fruits or varieties, each once, in their natural order; empty for the whole garden. */
  readonly names: readonly string[];
  /** What else the sentence needs, in SI. */
  readonly more: Readonly<Record<string, string | number | null>>;
}

export type Told = Pick<Entry, 'lane' | 'code' | 'date'> & Partial<Pick<Entry, 'word' | 'count' | 'names' | 'more'>>;

export const entry = ({ word = null, count = null, names = [], more = {}, ...told }: Told): Entry => ({
  ...told,
  word,
  count,
  names,
  more,
});
