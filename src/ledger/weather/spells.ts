import { runsOf } from '../../agronomy/spells.ts';
import { addDays, type Day } from '../../day.ts';
import type { Thresholds } from '../../garden/weather-settings.ts';
import { isWet } from './measure.ts';
import type { Window } from './window.ts';

/** Days in a row without a wet one. */
export interface Spell {
  readonly first: Day;
  readonly last: Day;
  readonly days: number;
  /** An unread day touches it, so it may have been longer. */
  readonly open: boolean;
}

/** The dry spells of a window that are long enough, the first first. */
export function spellsOf({ first, days }: Window, thresholds: Thresholds): Spell[] {
  const dry = days.map((day) => {
    const wet = isWet(day, thresholds);
    return wet === null ? null : !wet;
  });
  return runsOf(dry)
    .filter(({ length }) => length >= thresholds.dry_spell_days)
    .map(({ first: index, length, open }) => ({
      first: addDays(first, index),
      last: addDays(first, index + length - 1),
      days: length,
      open,
    }));
}
