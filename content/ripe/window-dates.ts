import { addDays, type Day } from '../../src/day.ts';
import type { Band, FruitWindow, Spread, WindowLine } from '../../src/ledger/window/fruit-window.ts';

/** A band of days as words can tell it. */
export type BandDates =
  /** Between two days to come. */
  | { readonly kind: 'span'; readonly first: Day; readonly last: Day }
  /** It may be so already, and is by a day. */
  | { readonly kind: 'by'; readonly last: Day }
  | { readonly kind: 'now' }
  /** From a day on, the end beyond the season. */
  | { readonly kind: 'from'; readonly first: Day }
  /** It may be so already, the end beyond the season. */
  | { readonly kind: 'any' }
  | { readonly kind: 'later' };

export function bandDates(day: Day, { low, high }: Pick<Band, 'low' | 'high'>): BandDates {
  if (low === null) return { kind: 'later' };
  if (high === null) return low === 0 ? { kind: 'any' } : { kind: 'from', first: addDays(day, low) };
  if (high === 0) return { kind: 'now' };
  if (low === 0) return { kind: 'by', last: addDays(day, high) };
  return { kind: 'span', first: addDays(day, low), last: addDays(day, high) };
}

/** The line a page prints: with the call, where there was one. */
export const printedLine = ({ line, called }: FruitWindow): WindowLine => called ?? line;

export const dayAt = (day: Day, days: number | null): Day | null => (days === null ? null : addDays(day, days));

export const bandDays = (day: Day, of: Spread, level: 'half' | 'most') => ({
  first: dayAt(day, of[level].low),
  last: dayAt(day, of[level].high),
});
