import type { Standing } from '../ledger/weather/long-record.ts';

/** A place among the years, told from the nearer end. */
export interface StandingPhrase {
  readonly end: 'top' | 'bottom' | 'middle';
  readonly place: number;
  readonly of: number;
  readonly tied: 'yes' | 'no';
}

export function phraseOf(standing: Standing | null): StandingPhrase | null {
  if (!standing) return null;
  const { from_top: top, from_bottom: bottom } = standing;
  const tied = top.tied > 0 ? 'yes' : 'no';
  if (top.place === bottom.place && top.tied === 0) return { end: 'middle', place: top.place, of: top.of, tied };
  return top.place <= bottom.place
    ? { end: 'top', place: top.place, of: top.of, tied }
    : { end: 'bottom', place: bottom.place, of: bottom.of, tied };
}
