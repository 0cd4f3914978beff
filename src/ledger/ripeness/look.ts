import type { Day } from '../../day.ts';
import type { Crop, Fruit, Planting, Season } from '../../garden/garden.ts';
import type { CropSignRecord } from '../../records/trait/sign.ts';
import type { LookedFruit } from '../../statistics/signs/ripe-chance.ts';
import { daysSet, type JudgedFruit, signsBefore } from './judged-fruit.ts';
import { isAtPicking, shownBy } from './sign-shown.ts';

/** A fruit that sets and is looked at on one day has not grown no time at all. */
const LEAST_DAYS = 0.5;

/** Signs that a record tells on the vine: how a fruit parts is known only once it is off. */
export const vineSigns = ({ signs }: Crop): readonly CropSignRecord[] =>
  (signs ?? []).filter((sign) => sign.shown !== null && !isAtPicking(sign));

export const lookOf = (
  signs: readonly CropSignRecord[],
  seen: Pick<JudgedFruit, 'signs'>,
  { variety }: Planting,
  days: JudgedFruit['days_set'],
): LookedFruit => ({
  days_since_set: days && Math.max((days.fewest + days.most) / 2, LEAST_DAYS),
  signs: signs.map((sign) => shownBy(sign)({ signs: seen.signs, parted: null })),
  variety: variety?.id ?? null,
});

/** Null when nobody looked for any of the signs in the days before. */
export function lookOn(
  signs: readonly CropSignRecord[],
  season: Season,
  planting: Planting,
  fruit: Fruit,
  day: Day,
): LookedFruit | null {
  const look = lookOf(signs, { signs: signsBefore(season, fruit.id, day) }, planting, daysSet(fruit, day, day));
  return look.signs.some((one) => one !== null) ? look : null;
}
