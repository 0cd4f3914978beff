import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Crop, Fruit, Planting, Season, Visit } from '../../garden/garden.ts';
import { SIGN_KEYS, type SignKey } from '../../records/sign.ts';
import type { StateInside } from '../../statistics/signs/likelihood-ratio.ts';
import { setDayOf } from '../maturity/set-day.ts';
import { openedOf } from './opened.ts';

/** A look counts for a fruit picked at most so many days later: signs move on. A judgement of the makers, no source. */
export const LOOK_HOLDS_DAYS = 3;

type Look = Visit['fruits'][number];

/** A fruit whose inside was seen, with what it had shown from outside. */
export interface JudgedFruit {
  readonly season: Season;
  readonly planting: Planting;
  readonly fruit: Fruit;
  /** What the knife found. */
  readonly state: StateInside;
  /** Just ripe, prime or over when cut, against unripe; of a crop eaten young, over is past being ready. */
  readonly is_ripe: boolean;
  /** The last step written down for each sign within the days a look holds; null where nobody looked. */
  readonly signs: Readonly<Record<SignKey, string | null>>;
  /** How it came off; null where nobody tried. */
  readonly parted: string | null;
  /** Fewest and most days from set to picking; null where either day is not known. */
  readonly days_set: { readonly fewest: number; readonly most: number } | null;
}

/** The fruits of a crop that were cut and told apart, from all seasons. */
export const judgedFruits = (seasons: readonly Season[], crop: Crop): JudgedFruit[] =>
  seasons.flatMap((season) =>
    season.plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap((planting) => planting.fruits.flatMap((fruit) => judged(season, planting, fruit))),
  );

function judged(season: Season, planting: Planting, fruit: Fruit): JudgedFruit[] {
  const opened = openedOf(fruit);
  if (!opened) return [];
  const { state, off } = opened;
  return [
    {
      season,
      planting,
      fruit,
      state,
      is_ripe: isReady(planting, state),
      signs: signsBefore(season, fruit.id, off.first),
      parted: fruit.pick?.parted ?? null,
      days_set: daysSet(fruit, off.first, off.last),
    },
  ];
}

/** The last step written down for each sign of a fruit within the days a look holds before a day, that day counted. */
export function signsBefore(season: Season, fruit: string, day: Day): JudgedFruit['signs'] {
  const looks = looksAt(season, fruit, day);
  return Object.fromEntries(SIGN_KEYS.map((key) => [key, lastStep(looks, key)])) as JudgedFruit['signs'];
}

/** From its set to a day somewhere between two; null where the set is not known. */
export function daysSet(fruit: Fruit, first: Day, last: Day): JudgedFruit['days_set'] {
  const set = setDayOf(fruit);
  return (
    set && {
      fewest: Math.max(daysBetween(set.last, first), 0),
      most: Math.max(daysBetween(set.first, last), 0),
    }
  );
}

const isReady = ({ variety }: Planting, state: string): boolean =>
  state !== 'unripe' && !(state === 'over' && variety?.crop.eaten === 'young');

/** Looks at a fruit in the days before it came off, the last first. */
const looksAt = ({ visits }: Season, fruit: string, off: Day): Look[] =>
  visits
    .filter(({ visited_on }) => visited_on <= off && visited_on >= addDays(off, -LOOK_HOLDS_DAYS))
    .flatMap(({ fruits }) => fruits.filter((look) => look.fruit === fruit))
    .reverse();

const lastStep = (looks: readonly Look[], key: SignKey): string | null =>
  looks.find((look) => look[key] !== null)?.[key] ?? null;
