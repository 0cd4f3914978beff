import { type Day, earlierOf } from '../../day.ts';
import type { Crop, Fruit, Planting, Season } from '../../garden/garden.ts';
import type { RipeState, SeenFruit } from '../../statistics/ripe-states/seen-fruit.ts';
import type { StateInside } from '../../statistics/signs/likelihood-ratio.ts';
import { type SetDay, setDayOf } from '../maturity/set-day.ts';
import { openedOf } from '../ripeness/opened.ts';
import { type Clock, timeBetween } from './clock.ts';
import { type SettingSpan, setFromPlanting } from './set-from-planting.ts';

const STATES: Readonly<Record<StateInside, RipeState>> = { unripe: 'U', 'just-ripe': 'J', prime: 'P', over: 'O' };

/** A fruit that was cut, and the days between which it set and came off. */
export interface CutFruit {
  readonly variety: string;
  readonly fruit: Fruit;
  readonly state: RipeState;
  readonly set: SetDay;
  /** By its own day of set or first sight, or by the planting alone. */
  readonly by: 'fruit' | 'planting';
  readonly off: { readonly first: Day; readonly last: Day };
}

/** The cut fruits of a crop with a state and both days. */
export const cutFruits = (seasons: readonly Season[], crop: Crop, span: SettingSpan | null): CutFruit[] =>
  seasons.flatMap(({ plantings }) =>
    plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap((planting) => planting.fruits.flatMap((fruit) => cutFruit(planting, fruit, span))),
  );

function cutFruit(planting: Planting, fruit: Fruit, span: SettingSpan | null): CutFruit[] {
  const opened = openedOf(fruit);
  const own = setDayOf(fruit);
  const set = own ?? setFromPlanting(planting, span);
  if (!opened || !set) return [];
  const { state, off } = opened;
  // It cannot have set after it came off.
  const last = earlierOf(set.last, off.last);
  if (set.first >= off.last) return [];
  return [
    {
      variety: planting.variety?.id ?? '',
      fruit,
      state: STATES[state],
      set: { ...set, last },
      by: own ? 'fruit' : 'planting',
      off,
    },
  ];
}

/** In the time of a clock; a fruit whose time it does not tell is left out. */
export const seenFruits = (fruits: readonly CutFruit[], clock: Clock): SeenFruit[] =>
  fruits.flatMap(({ variety, state, set, off }) => {
    const grown = timeBetween(clock, set, off);
    return grown ? [{ variety, state, ...grown }] : [];
  });
