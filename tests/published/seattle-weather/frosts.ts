/**
 * Last frost before 1 July and first after it in the daily weather of Seattle (NOAA), at or below each threshold in °C;
 * null where there was none. No publisher printed these: found with R 4.2.2 by frosts.R, and by the line of awk it holds.
 */
interface FrostDays {
  readonly year: string;
  readonly last: string | null;
  readonly first: string | null;
}

export const AT_0_C: readonly FrostDays[] = [
  { year: '2012', last: '2012-03-19', first: '2012-11-10' },
  { year: '2013', last: '2013-03-04', first: '2013-11-21' },
  { year: '2014', last: '2014-02-09', first: '2014-11-12' },
  { year: '2015', last: '2015-03-04', first: '2015-11-23' },
];

export const AT_MINUS_2_C: readonly FrostDays[] = [
  { year: '2012', last: '2012-02-27', first: null },
  { year: '2013', last: '2013-01-17', first: '2013-12-04' },
  { year: '2014', last: '2014-02-07', first: '2014-11-14' },
  { year: '2015', last: '2015-01-01', first: '2015-11-28' },
];

/** Days from 1 July at 0 °C: the day after (before) which 0, 1, 2 and 3 of the four years had frost, by quantile type 1. */
export const FROM_JULY = { last: [-104, -119, -119, -142], first: [132, 134, 143, 145] };
