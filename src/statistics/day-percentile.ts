/**
 * The day by which so many of some years had seen their last (or from which, their first) of something, as a count of
 * years. Plain order statistics: nothing is fitted and nothing read between the years.
 */

/**
 * The earliest day after which the thing came in at most `atMost` of the years: with 10 years and 1, "in 9 of 10 years
 * the last frost was by this day". `days` has the last one of each year as a number of days from the same date; null for
 * a year without one. Null when no day is needed, because no more than `atMost` years had one at all.
 * Throws RangeError for no years, a day that is not finite, or an `atMost` that is not whole from 0.
 */
export function daysAfterWhich(days: readonly (number | null)[], atMost: number): number | null {
  if (days.length === 0) throw new RangeError('invalid days: no years');
  for (const day of days) if (day !== null && !Number.isFinite(day)) throw new RangeError(`invalid day: ${day}`);
  if (!(Number.isInteger(atMost) && atMost >= 0)) throw new RangeError(`invalid atMost: ${atMost}`);
  const latestFirst = days.filter((day) => day !== null).sort((a, b) => b - a);
  return latestFirst[atMost] ?? null;
}

/**
 * The latest day before which the thing came in at most `atMost` of the years, from the first one of each year: "in 9 of
 * 10 years the first frost was no earlier than this day". Null and errors as above.
 */
export function daysBeforeWhich(days: readonly (number | null)[], atMost: number): number | null {
  const turned = daysAfterWhich(
    days.map((day) => (day === null ? null : -day)),
    atMost,
  );
  return turned === null ? null : -turned;
}
