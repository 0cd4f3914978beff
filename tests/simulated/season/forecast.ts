import type { Chance } from '../chance.ts';
import { weatherOn, type Year } from './year.ts';

/** What the keeper hears of tomorrow's rain, and makes of it. */
export interface Forecast {
  /** Rain that counts, mm in a day. */
  readonly from_mm: number;
  /** Share of forecasts that know; the others say rain as often as `says`, whatever comes. At 0 they tell nothing. */
  readonly accuracy: number;
  readonly says: number;
  /** Share of told rains on whose eve the keeper goes out to pick. */
  readonly heed: number;
  /** How much less than ripe a fruit may feel to be picked then. */
  readonly daring: number;
}

export function saysRain(day: number, year: Year, { from_mm, accuracy, says }: Forecast, chance: Chance): boolean {
  const knows = chance() < accuracy;
  const guess = chance() < says;
  return knows ? weatherOn(year, day + 1).rain_mm >= from_mm : guess;
}
