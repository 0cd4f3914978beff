import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Crop, Garden } from '../../garden/garden.ts';
import { yearsAhead } from '../window/calendar-years.ts';
import { type Clock, DAY_CLOCK, heatClock } from '../window/clock.ts';
import { growingIn, vineFruit } from '../window/crop-window.ts';
import { type Band, fruitWindow, type WindowFit } from '../window/fruit-window.ts';
import { wrongCalls } from '../window/wrong-calls.ts';
import type { ReplayWeek } from './weeks.ts';

/** Days between which something was to come; an end null where it lay beyond the season. */
export interface DayBand {
  readonly from: Day | null;
  readonly to: Day | null;
}

/** When the book of a Saturday had a growing fruit become ripe. */
export interface WeekWindow {
  readonly season: string;
  readonly week: Day;
  readonly crop: string;
  readonly fruit: string;
  /** 5 times and 9 times in 10. */
  readonly half: DayBand;
  readonly most: DayBand;
  /** When it is over, 9 times in 10; null where too few were cut over till then. */
  readonly over: DayBand | null;
}

export interface WeekWindows {
  readonly growing: number;
  readonly undated: number;
  readonly windows: readonly WeekWindow[];
}

/**
 * Of every fruit on the vine in the book of a Saturday. `states` were learned from an earlier book, no later one; ages,
 * calls and the weather are the Saturday's own.
 */
export function weekWindows(
  book: Garden,
  crop: Crop,
  slug: string,
  week: ReplayWeek,
  learned: WindowFit | null,
): WeekWindows {
  const season = book.seasons.find((one) => one.slug === slug);
  const growing = season ? growingIn(season, crop) : [];
  const clock = learned && clockOf(book, crop, learned.clock.unit);
  const wrong = wrongCalls(book.seasons, crop).chance;
  const vines = season
    ? growing.map(({ planting, fruit }) => ({ fruit, vine: vineFruit(season, fruit, planting, wrong) }))
    : [];
  const undated = vines.filter(({ vine }) => vine === null).length;
  if (!season || !learned || !clock || growing.length === 0) return { growing: growing.length, undated, windows: [] };
  const years = yearsAhead(clock, week.day, season.ends_on);
  const windows = vines.flatMap(({ fruit, vine }): WeekWindow[] => {
    if (!vine || daysBetween(vine.set.first, week.day) <= 0) return [];
    const found = fruitWindow({ clock, states: learned.states }, vine, week.day, years);
    if ('cannot' in found) return [];
    const { ripe, over } = found.called ?? found.line;
    const days = (band: Band): DayBand => bandFrom(week.day, band);
    return [
      {
        season: slug,
        week: week.day,
        crop: crop.id,
        fruit: fruit.id,
        half: days(ripe.half),
        most: days(ripe.most),
        over: over && days(over.most),
      },
    ];
  });
  return { growing: growing.length, undated, windows };
}

/** The time the states were learned in, as read up to the book's day. */
const clockOf = (book: Garden, crop: Crop, unit: Clock['unit']): Clock | null =>
  unit === 'days' ? DAY_CLOCK : heatClock(book, crop);

const bandFrom = (day: Day, { low, high }: Band): DayBand => ({
  from: low === null ? null : addDays(day, low),
  to: high === null ? null : addDays(day, high),
});
