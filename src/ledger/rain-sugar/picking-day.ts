import type { SugarReading } from './reading.ts';

/** One reading for each picking day, in the readings' order: all fruits of a day share its rain. */
export const pickingDays = (readings: readonly SugarReading[]): SugarReading[] => [
  ...new Map(readings.map((one) => [one.picked_on, one])).values(),
];
