import type { SeasonTruth } from './truth.ts';

/** Sums over the true weather, taken day by day from the dates alone. */
export interface ByHand {
  /** °C days above a base of 10 °C, from the first date, its own with it, to the eve of the second. */
  readonly heat: (from: string, until: string) => number;
  /** Rain of the three days that end on the eve of a date, mm. */
  readonly window: (date: string) => number;
  readonly rain: (date: string) => number;
}

const BASE_C = 10;

export function byHand({ weather }: SeasonTruth): ByHand {
  const place = new Map(weather.map(({ date }, index) => [date, index] as const));
  const at = (date: string): number => {
    const index = place.get(date);
    if (index === undefined) throw new RangeError(`invalid date: ${date} has no weather`);
    return index;
  };
  const sums = [0];
  for (const { tmax_c, tmin_c } of weather) sums.push((sums.at(-1) ?? 0) + Math.max(0, (tmax_c + tmin_c) / 2 - BASE_C));
  return {
    heat: (from, until) => (sums[at(until)] ?? Number.NaN) - (sums[at(from)] ?? Number.NaN),
    window: (date) => {
      const today = at(date);
      return weather.slice(today - 3, today).reduce((sum, { rain_mm }) => sum + rain_mm, 0);
    },
    rain: (date) => weather[at(date)]?.rain_mm ?? Number.NaN,
  };
}

/** The date some days later. */
export const later = (date: string, days: number): string =>
  new Date(Date.parse(date) + days * 86_400_000).toISOString().slice(0, 10);
