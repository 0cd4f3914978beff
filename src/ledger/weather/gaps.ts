import { addDays, type Day } from '../../day.ts';
import type { WeatherDay } from '../../garden/garden.ts';
import type { Window } from './window.ts';

/** A stretch of days in a row without a reading. */
export interface Gap {
  readonly first: Day;
  readonly last: Day;
  readonly days: number;
  readonly lacks: 'all' | 'rain' | 'temperature';
}

/** The stretches of a window in which something was not read, the first first. */
export function gapsOf({ first, days }: Window): Gap[] {
  const gaps: Gap[] = [];
  const hasThermometer = days.some((day) => day !== null && (day.tmax_c !== null || day.tmin_c !== null));
  for (const [index, day] of days.entries()) {
    const lacks = lackOf(day, hasThermometer);
    if (lacks === null) continue;
    const date = addDays(first, index);
    const before = gaps.at(-1);
    const goesOn = before !== undefined && before.lacks === lacks && addDays(before.last, 1) === date;
    if (goesOn) gaps[gaps.length - 1] = { ...before, last: date, days: before.days + 1 };
    else gaps.push({ first: date, last: date, days: 1, lacks });
  }
  return gaps;
}

/** A garden without a thermometer lacks no temperature. */
function lackOf(day: WeatherDay | null, hasThermometer: boolean): Gap['lacks'] | null {
  const rain = day !== null && (day.rain_mm !== null || day.rain !== null);
  const temperature = day !== null && (!hasThermometer || (day.tmax_c !== null && day.tmin_c !== null));
  if (rain && temperature) return null;
  if (!rain && !temperature) return 'all';
  return rain ? 'temperature' : 'rain';
}
