import { addDays, type Day, dateOf, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';

/** Days in a row as places on an axis: the first day is 0. Ticks stand on the first of each month. */
export interface DayAxis {
  readonly domain: readonly [number, number];
  readonly values: readonly number[];
  /** Vega expression that prints a tick: the month as a word. */
  readonly labelExpr: string;
}

const FEWEST_DAYS_FOR_MONTHS = 45;

/** Counting days keeps a southern season whole and knows no time zone. */
export function dayAxis(first: Day, last: Day, format: Format): DayAxis {
  const length = daysBetween(first, last);
  const ticks = length < FEWEST_DAYS_FOR_MONTHS ? weekStarts(length) : monthStarts(first, length);
  const labels = ticks.map((tick) =>
    length < FEWEST_DAYS_FOR_MONTHS ? format.day(addDays(first, tick)) : format.month(addDays(first, tick)),
  );
  return {
    domain: [-0.5, length + 0.5],
    values: ticks,
    labelExpr: `${JSON.stringify(labels)}[indexof(${JSON.stringify(ticks)}, datum.value)]`,
  };
}

const weekStarts = (length: number): number[] =>
  Array.from({ length: Math.floor(length / 7) + 1 }, (_, index) => 7 * index);

const monthStarts = (first: Day, length: number): number[] =>
  Array.from({ length: length + 1 }, (_, index) => index).filter((index) => dateOf(addDays(first, index)) === 1);
