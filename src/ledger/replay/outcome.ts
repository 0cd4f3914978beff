import { addDays, type Day } from '../../day.ts';
import type { Fruit, Season } from '../../garden/garden.ts';
import { LOOK_HOLDS_DAYS } from '../ripeness/judged-fruit.ts';
import { type Opened, openedOf } from '../ripeness/opened.ts';

/** What the knife found of a fruit, and when it came off, as the whole garden knows it now. */
export interface Outcome extends Opened {
  readonly fruit: Fruit;
}

/** By fruit id. */
export function outcomesOf({ plantings }: Season): ReadonlyMap<string, Outcome> {
  const found = plantings.flatMap(({ fruits }) =>
    fruits.flatMap((fruit): [string, Outcome][] => {
      const opened = openedOf(fruit);
      return opened ? [[fruit.id, { fruit, ...opened }]] : [];
    }),
  );
  return new Map(found);
}

/** Whether a look of a day still held when the fruit came off: only then does the knife judge it. */
export const holdsUntil = (looked_on: Day, { off }: Outcome): boolean =>
  off.first >= looked_on && off.first <= addDays(looked_on, LOOK_HOLDS_DAYS);
