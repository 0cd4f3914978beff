import { type Day, earlierOf } from '../../day.ts';
import type { Crop, Fruit, Planting, Season } from '../../garden/garden.ts';
import type { RipeState, SeenFruit } from '../../statistics/ripe-states/seen-fruit.ts';
import { type SetDay, setDayOf } from '../maturity/set-day.ts';
import { type Clock, timeBetween } from './clock.ts';
import { type SettingSpan, setFromPlanting } from './set-from-planting.ts';

const STATES: Readonly<Record<string, RipeState>> = { unripe: 'U', 'just-ripe': 'J', prime: 'P', over: 'O' };

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

/** The cut fruits of a crop with a state and both days; left out are those cut young to thin the vine, which anybody can see are unripe. */
export const cutFruits = (seasons: readonly Season[], crop: Crop, span: SettingSpan | null): CutFruit[] =>
  seasons.flatMap(({ plantings }) =>
    plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap((planting) => planting.fruits.flatMap((fruit) => cutFruit(planting, fruit, span))),
  );

function cutFruit(planting: Planting, fruit: Fruit, span: SettingSpan | null): CutFruit[] {
  const { cut, pick, fate } = fruit;
  const state = STATES[cut?.state ?? ''];
  const off = pick?.picked_on ?? cut?.cut_on ?? null;
  const own = setDayOf(fruit);
  const set = own ?? setFromPlanting(planting, span);
  if (!state || !off?.first || !set || fate === 'thinned' || cut?.why === 'thinned') return [];
  // It cannot have set after it came off.
  const last = earlierOf(set.last, off.last);
  if (set.first >= off.last) return [];
  return [
    {
      variety: planting.variety?.id ?? '',
      fruit,
      state,
      set: { ...set, last },
      by: own ? 'fruit' : 'planting',
      off: { first: off.first, last: off.last },
    },
  ];
}

/** In the time of a clock; a fruit whose time it does not tell is left out. */
export const seenFruits = (fruits: readonly CutFruit[], clock: Clock): SeenFruit[] =>
  fruits.flatMap(({ variety, state, set, off }) => {
    const grown = timeBetween(clock, set, off);
    return grown ? [{ variety, state, ...grown }] : [];
  });
