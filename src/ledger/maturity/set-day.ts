import type { Dated } from '../../dated.ts';
import { addDays, type Day } from '../../day.ts';
import type { Fruit } from '../../garden/garden.ts';

/** The days between which a fruit set. */
export interface SetDay {
  readonly first: Day;
  readonly last: Day;
  /** Written down as about then, or reckoned from a size. */
  readonly about: boolean;
}

/**
 * Days a fruit may have been growing when it is seen at a size: fewest, most. A judgement of the makers, no source;
 * wide on purpose, since varieties differ.
 */
const AGE_AT_SIZE = { pea: [0, 3], walnut: [2, 7], egg: [4, 11], fist: [7, 17], head: [14, 30] } as const;

/** From the day it set, else from the day and size at which it was first seen; null when neither is known. */
export function setDayOf({ set }: Fruit): SetDay | null {
  if (!set) return null;
  if (set.set_on?.first) return spanOf(set.set_on);
  const seen = set.first_seen_on;
  if (!seen?.first) return null;
  if (set.first_seen_size === null) return null;
  const [fewest, most] = AGE_AT_SIZE[set.first_seen_size];
  return { first: addDays(seen.first, -most), last: addDays(seen.last, -fewest), about: true };
}

/** A date as the days it lies between; null when it is unknown. */
export const spanOf = (date: Dated | null): SetDay | null =>
  date?.first ? { first: date.first, last: date.last, about: date.kind === 'about' } : null;
