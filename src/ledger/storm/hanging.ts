import type { Dated } from '../../dated.ts';
import { addDays, type Day, dayNumber, daysBetween } from '../../day.ts';
import type { Crop, Fruit, Planting, Season } from '../../garden/garden.ts';
import { setDayOf, spanOf } from '../maturity/set-day.ts';
import type { Storm } from './storm.ts';

/** Of the fewest days to ripe. A judgement of the makers, no source: younger skins give. */
const OLD_ENOUGH = 2 / 3;
/** A fruit found split so many days after a storm is put down to it. A judgement of the makers, no source. */
export const SPLITS_WITHIN_DAYS = 3;

/** A fruit that hung in a storm near enough to ripe to split. */
export interface Hanging {
  readonly planting: Planting;
  readonly fruit: Fruit;
  readonly split: boolean;
}

/**
 * The fruits of a crop that hung in a storm: on the vine on its first day, and past two thirds of the fewest days to ripe,
 * counted from the middle of the days on which each may have set, else from planting out. A split is put down to the last
 * storm that began before it. Left out: a fruit whose age, or whose last day on the vine, nobody knows.
 */
export const hangingIn = (storm: Storm, later: readonly Storm[], crop: Crop): Hanging[] =>
  storm.season.plantings
    .filter(({ variety }) => variety?.crop.id === crop.id)
    .flatMap((planting) =>
      planting.fruits.flatMap((fruit) => {
        const off = offDay(fruit);
        if (off === 'unknown' || !isOldEnough(planting, fruit, crop, storm.first)) return [];
        if (off !== null && off.last < storm.first) return [];
        return [{ planting, fruit, split: off !== null && isSplit(fruit) && isOf(storm, later, storm.season, off) }];
      }),
    );

type Off = { readonly first: Day; readonly last: Day };

/** When it came off; null for one still growing. */
function offDay({ fate, pick, end, cut }: Fruit): Off | null | 'unknown' {
  if (fate === 'growing') return null;
  const date: Dated | null = pick?.picked_on ?? end?.ended_on ?? cut?.cut_on ?? null;
  return date?.first ? { first: date.first, last: date.last } : 'unknown';
}

function isOldEnough(planting: Planting, fruit: Fruit, { ripe_days }: Crop, day: Day): boolean {
  const set = setDayOf(fruit);
  const from = set ?? spanOf(planting.planted_on);
  const needed = set ? ripe_days?.set_days_low : ripe_days?.planted_days_low;
  if (!from || needed === undefined || needed === null) return false;
  const middle = (dayNumber(from.first) + dayNumber(from.last)) / 2;
  return dayNumber(day) - middle >= OLD_ENOUGH * needed;
}

const isSplit = ({ pick, end }: Fruit): boolean => end?.lost_to === 'split' || pick?.condition === 'split';

/** Whether a day on which a fruit was found split falls to this storm and to no later one. */
function isOf(storm: Storm, later: readonly Storm[], season: Season, off: Off): boolean {
  const reaches = ({ first, last }: Storm): boolean =>
    off.last >= first && daysBetween(addDays(last, SPLITS_WITHIN_DAYS), off.first) <= 0;
  return reaches(storm) && !later.some((one) => one.season === season && one.first > storm.first && reaches(one));
}
