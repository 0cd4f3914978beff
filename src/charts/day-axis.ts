import { addDays, type Day, dateOf, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';

/** Days in a row as places on an axis: the first day is 0. Ticks stand on the first of each month, or weeks apart. */
export interface DayAxis {
  readonly domain: readonly [number, number];
  readonly values: readonly number[];
  /** Vega expression that prints a tick: the month as a word, or the day. */
  readonly labelExpr: string;
}

const FEWEST_DAYS_FOR_MONTHS = 45;
/** More days written out would touch. */
const MOST_WEEKS = 7;

/** Counting days keeps a southern season whole and knows no time zone. */
export const dayAxis = (first: Day, last: Day, format: Format): DayAxis =>
  daysBetween(first, last) < FEWEST_DAYS_FOR_MONTHS
    ? weekAxis(first, last, format)
    : axisOf(first, last, monthStarts(first, daysBetween(first, last)), format.month);

/** With a day written out each week, or each few weeks, however long it is. */
export function weekAxis(first: Day, last: Day, format: Format): DayAxis {
  const length = daysBetween(first, last);
  const step = 7 * Math.ceil((length + 1) / (7 * MOST_WEEKS));
  const ticks = Array.from({ length: Math.floor(length / step) + 1 }, (_, index) => step * index);
  return axisOf(first, last, ticks, format.day);
}

function axisOf(first: Day, last: Day, ticks: readonly number[], word: (day: Day) => string): DayAxis {
  const labels = ticks.map((tick) => word(addDays(first, tick)));
  return {
    domain: [-0.5, daysBetween(first, last) + 0.5],
    values: ticks,
    labelExpr: `${JSON.stringify(labels)}[indexof(${JSON.stringify(ticks)}, datum.value)]`,
  };
}

const monthStarts = (first: Day, length: number): number[] =>
  Array.from({ length: length + 1 }, (_, index) => index).filter((index) => dateOf(addDays(first, index)) === 1);
