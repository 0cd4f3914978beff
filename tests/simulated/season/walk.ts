import type { Chance } from '../chance.ts';
import { wholeBetween } from '../chance.ts';
import { weekdayOf } from './calendar.ts';
import { type Forecast, saysRain } from './forecast.ts';
import type { Observer } from './observer.ts';
import type { Year } from './year.ts';

/** One walk through the plot. */
export interface Walk {
  readonly day: number;
  readonly observer: Observer;
  /** Whether the keeper expects rain tomorrow and picks for it. */
  readonly before_rain: boolean;
  /** Why it is the last of the season; null where it is not. */
  readonly closing: 'frost' | 'season-end' | null;
}

export interface Walking {
  /** 0 for Sunday to 6 for Saturday. */
  readonly weekdays: readonly number[];
  readonly forecast: Forecast;
}

/** The day a season closes: of the first frost of autumn, else the last. */
export function closingOf(year: Year, autumn: number, ends: number): { day: number; why: 'frost' | 'season-end' } {
  const frost = year.days.find(({ day, tmin_c }) => day >= autumn && day < ends && tmin_c <= 0);
  return frost ? { day: frost.day, why: 'frost' } : { day: ends, why: 'season-end' };
}

/** Walks on the set weekdays but those skipped, on the eves of told rain, and on the day the season closes. */
export function walksOf(
  from: number,
  closing: { readonly day: number; readonly why: 'frost' | 'season-end' },
  { weekdays, forecast }: Walking,
  skipped: number,
  observers: readonly Observer[],
  year: Year,
  chance: Chance,
): Walk[] {
  return Array.from({ length: closing.day - from + 1 }, (_, index) => from + index).flatMap((day) => {
    const before_rain = saysRain(day, year, forecast, chance) && chance() < forecast.heed;
    const held = weekdays.includes(weekdayOf(day)) && chance() >= skipped;
    const observer = observers[wholeBetween(chance, 0, observers.length - 1)];
    const closes = day === closing.day ? closing.why : null;
    if (!observer || !(held || before_rain || closes)) return [];
    return [{ day, observer, before_rain, closing: closes }];
  });
}
