/** Days are whole numbers here, counted from 1 January 1970; records carry them as text. */
const MILLISECONDS = 86_400_000;

/** The day's number; months count from 1. */
export const dayOf = (year: number, month: number, date: number): number =>
  Date.UTC(year, month - 1, date) / MILLISECONDS;

/** The day as records write it: 2025-08-12. */
export const dayText = (day: number): string => new Date(day * MILLISECONDS).toISOString().slice(0, 10);

/** 0 for Sunday to 6 for Saturday; 1 January 1970 was a Thursday. */
export const weekdayOf = (day: number): number => (((day + 4) % 7) + 7) % 7;
