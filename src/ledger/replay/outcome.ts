import { addDays, type Day } from '../../day.ts';
import type { Fruit, Season } from '../../garden/garden.ts';
import type { StateInside } from '../../statistics/signs/likelihood-ratio.ts';
import { LOOK_HOLDS_DAYS } from '../ripeness/judged-fruit.ts';

/** What the knife found of a fruit, and when it came off, as the whole garden knows it now. */
export interface Outcome {
  readonly fruit: Fruit;
  readonly state: StateInside;
  readonly off: { readonly first: Day; readonly last: Day };
}

/** By fruit id. Left out: fruit without a state or a day, and fruit cut young to thin the vine. */
export function outcomesOf({ plantings }: Season): ReadonlyMap<string, Outcome> {
  const found = plantings.flatMap(({ fruits }) =>
    fruits.flatMap((fruit): [string, Outcome][] => {
      const { cut, pick, fate, id } = fruit;
      const off = pick?.picked_on ?? cut?.cut_on ?? null;
      if (!cut?.state || !off?.first || fate === 'thinned' || cut.why === 'thinned') return [];
      return [[id, { fruit, state: cut.state, off: { first: off.first, last: off.last } }]];
    }),
  );
  return new Map(found);
}

/** Whether a look of a day still held when the fruit came off: only then does the knife judge it. */
export const holdsUntil = (looked_on: Day, { off }: Outcome): boolean =>
  off.first >= looked_on && off.first <= addDays(looked_on, LOOK_HOLDS_DAYS);
