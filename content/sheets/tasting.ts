import { blankColumn } from '../../src/book/blank-sheet.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { blindCodes } from './blind-codes.ts';
import { seasonOf } from './plot.ts';

/** A tasting with codes in place of names: a key for the host, a line for each taster. */
export interface TastingSheet {
  readonly id: 'tasting';
  readonly title: string;
  /** How to fill it, in a sentence or two. */
  readonly rule: string;
  readonly landscape: false;
  /** For the plates, in the order of the key. */
  readonly codes: readonly string[];
  /** Headings of the orders, as the record's schema has them; each with a box for every code. */
  readonly orders: readonly string[];
  /** Lines for tasters, by number from 1. */
  readonly lines: readonly number[];
  /** Ids of the cautions of that work. */
  readonly cautions: readonly string[];
}

/** The most one entry of tastings.yaml puts in order. */
const PLATES = 6;
const TASTERS = 12;

/** Codes differ from season to season, so that nobody learns them by heart. */
export const tastingSheet = (facts: Facts): TastingSheet => ({
  id: 'tasting',
  title: 'Which do we like?',
  rule: 'Two to six fruits, ripe and equally cool, one code a plate. Taste without talking, each beginning at another plate, with a sip of water between. Then write codes, a box each.',
  landscape: false,
  codes: blindCodes(seasonOf(facts)?.label ?? '', PLATES),
  orders: ['best_first', 'sweetest_first'].map((key) => blankColumn('tastings', [], key, 1).title),
  lines: Array.from({ length: TASTERS }, (_, index) => index + 1),
  cautions: cautionsAt(facts.reference, 'cutting'),
});
