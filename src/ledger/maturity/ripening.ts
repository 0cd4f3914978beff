import type { Dated } from '../../dated.ts';
import type { Day } from '../../day.ts';
import type { Fruit } from '../../garden/garden.ts';

export type Ripeness = 'ripe' | 'over' | 'not-yet';

/** What is known of when a fruit was ripe: only a cut shows it, and a fruit picked as ripe is taken at its keeper's word. */
export interface Ripening {
  /**
   * ripe: just ripe or prime when cut, or picked as ripe and not cut.
   * over: past it when cut, so ripe some time before.
   * not-yet: unripe when cut, or lost, thinned, left or picked for another reason while nobody could know.
   */
  readonly kind: Ripeness;
  /** When it was picked or ended; for a fruit still growing, the day of the book. */
  readonly on: Dated;
}

/** Null when the day of it is not known at all. */
export function ripeningOf(fruit: Fruit, today: Day): Ripening | null {
  const on = endOf(fruit, today);
  if (on === null || on.first === null) return null;
  return { kind: ripenessOf(fruit), on };
}

/** By the knife, else by the reason it was picked for; none written counts as ripe. */
export function ripenessOf({ fate, pick, cut }: Fruit): Ripeness {
  const state = cut?.state ?? null;
  if (state !== null) return KINDS[state];
  return fate === 'picked' && (pick?.reason ?? 'ripe') === 'ripe' ? 'ripe' : 'not-yet';
}

const KINDS = { unripe: 'not-yet', 'just-ripe': 'ripe', prime: 'ripe', over: 'over' } as const;

function endOf({ fate, pick, end, cut }: Fruit, today: Day): Dated | null {
  if (fate === 'growing') return { kind: 'day', first: today, last: today, text: today };
  return pick?.picked_on ?? end?.ended_on ?? cut?.cut_on ?? null;
}
