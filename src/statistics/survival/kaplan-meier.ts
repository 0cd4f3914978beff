/** The share still to come after each time, when every time is exact or cut off: Kaplan & Meier 1958, JASA 53:457-481. */
import type { RipeTime } from './ripe-time.ts';

export interface KaplanMeierRow {
  /** A time at which something happened; rows in order of time. */
  readonly time: number;
  /** Not yet happened and still watched just before. */
  readonly at_risk: number;
  readonly events: number;
  /** Share still to come after this time. */
  readonly remaining: number;
  /**
   * Greenwood's variance of log(remaining): the sum of d / (n (n - d)) over the rows so far. Greenwood 1926, Reports
   * on Public Health 33:1-26, as in Kalbfleisch & Prentice 2002, eq. 1.12 (from memory). Null once none remains: the
   * formula then divides by zero.
   */
  readonly log_variance: number | null;
}

/**
 * One row per time at which something happened. Assumes independent observations, and that what cut an observation
 * off had nothing to do with how near it was (a thief who takes the ripest breaks this).
 * Throws RangeError for an observation that is neither exact nor cut off.
 */
export function kaplanMeier(observations: readonly RipeTime[]): KaplanMeierRow[] {
  const ends = observations.map(({ low, high }) => {
    if (low === null || (high !== null && high !== low)) throw new RangeError(`invalid time: ${low} to ${high}`);
    return { time: low, seen: high !== null };
  });
  const times = [...new Set(ends.flatMap(({ time, seen }) => (seen ? [time] : [])))].sort((a, b) => a - b);
  let remaining = 1;
  let logVariance = 0;
  return times.map((time) => {
    const atRisk = ends.filter((one) => one.time >= time).length;
    const events = ends.filter((one) => one.seen && one.time === time).length;
    remaining *= (atRisk - events) / atRisk;
    logVariance += events / (atRisk * (atRisk - events));
    return { time, at_risk: atRisk, events, remaining, log_variance: atRisk > events ? logVariance : null };
  });
}
