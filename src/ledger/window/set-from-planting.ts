import { addDays, daysBetween } from '../../day.ts';
import type { Crop, Planting, Season } from '../../garden/garden.ts';
import { type SetDay, setDayOf, spanOf } from '../maturity/set-day.ts';

/** Days from planting out to set, fewest and most. */
export interface SettingSpan {
  readonly fewest: number;
  readonly most: number;
  /** By the garden's own tagged fruits, else by the crop's file. */
  readonly from: 'own' | 'crop';
}

/** Fruits with both days known from which the garden's own span is taken. A judgement of the makers, no source. */
const ENOUGH_OWN = 6;
/** Vines go on setting so many days after the soonest. A judgement of the makers, no source; wide on purpose. */
const GOES_ON_DAYS = 28;

/**
 * From the first to the last of the garden's own fruits, else by the crop's file: the days from planting to ripe less the
 * most from set to ripe, until four weeks after the same less the fewest. Null where neither tells.
 */
export function settingSpan(seasons: readonly Season[], crop: Crop): SettingSpan | null {
  const own = seasons.flatMap(({ plantings }) =>
    plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap((planting) => {
        const planted = spanOf(planting.planted_on);
        if (!planted) return [];
        return planting.fruits.flatMap((fruit) => {
          const set = setDayOf(fruit);
          return set && set.last >= planted.first
            ? [{ fewest: daysBetween(planted.last, set.first), most: daysBetween(planted.first, set.last) }]
            : [];
        });
      }),
  );
  if (own.length >= ENOUGH_OWN)
    return {
      fewest: Math.max(0, Math.min(...own.map(({ fewest }) => fewest))),
      most: Math.max(...own.map(({ most }) => most)),
      from: 'own',
    };
  const { planted_days_low: planted = null, set_days_low = 0, set_days_high = 0 } = crop.ripe_days ?? {};
  if (planted === null) return null;
  return {
    fewest: Math.max(0, planted - set_days_high),
    most: planted - set_days_low + GOES_ON_DAYS,
    from: 'crop',
  };
}

/** The days on which a fruit of a planting may have set, by the day of planting out alone. */
export function setFromPlanting({ planted_on }: Planting, span: SettingSpan | null): SetDay | null {
  const planted = spanOf(planted_on);
  if (!planted || !span) return null;
  return { first: addDays(planted.first, span.fewest), last: addDays(planted.last, span.most), about: true };
}
