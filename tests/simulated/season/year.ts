import type { WeatherDay } from './weather.ts';

/** The weather of one year, to be asked by day. Days outside it throw RangeError. */
export interface Year {
  readonly first: number;
  readonly days: readonly WeatherDay[];
  /** Heat of all days before each day of the year, °C days; one number more than days. */
  readonly heat_before: readonly number[];
}

/** A day's heat: the mean of its highest and lowest temperature above the base, nothing below it, °C days. */
export const dailyHeat = ({ tmax_c, tmin_c }: WeatherDay, base_c: number): number =>
  Math.max(0, (tmax_c + tmin_c) / 2 - base_c);

export function yearOf(days: readonly WeatherDay[], base_c: number): Year {
  let sum = 0;
  const sums = days.map((day) => {
    sum += dailyHeat(day, base_c);
    return sum;
  });
  return { first: days[0]?.day ?? 0, days, heat_before: [0, ...sums] };
}

export function weatherOn({ first, days }: Year, day: number): WeatherDay {
  const found = days[day - first];
  if (!found) throw new RangeError(`invalid day: ${day} is outside the weather`);
  return found;
}

/** Heat of the days from the first, its own with it, up to the eve of the second: what a fruit set on one has by the other. */
export function heatBetween({ first, heat_before }: Year, from: number, until: number): number {
  const [low, high] = [heat_before[from - first], heat_before[until - first]];
  if (low === undefined || high === undefined) throw new RangeError(`invalid days: ${from} to ${until}`);
  return high - low;
}

/** The first day by whose morning a heat has come together since a day; null where the year ends before. */
export function dayReached({ first, heat_before }: Year, from: number, heat: number): number | null {
  const goal = (heat_before[from - first] ?? Number.POSITIVE_INFINITY) + heat;
  const found = heat_before.findIndex((sum) => sum >= goal);
  return found < 0 || found >= heat_before.length - 1 ? null : first + found;
}

const WINDOW_DAYS = 3;

/** Rain of the three days that end on the eve of a day, mm. */
export const rainBefore = (year: Year, day: number): number =>
  Array.from({ length: WINDOW_DAYS }, (_, index) => weatherOn(year, day - 1 - index).rain_mm).reduce(
    (a, b) => a + b,
    0,
  );
