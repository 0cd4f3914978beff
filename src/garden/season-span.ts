import type { Season } from './garden.ts';

/** Labels of the first and the last of some seasons, the first first. */
export interface SeasonSpan {
  readonly first: string;
  readonly last: string;
}

/** Null without a season. */
export function seasonSpan(seasons: readonly Season[]): SeasonSpan | null {
  const [first, last] = [seasons[0]?.label, seasons.at(-1)?.label];
  return first && last ? { first, last } : null;
}
