import type { SugarReading } from './reading.ts';

/** A variety in a season: what is compared with rain is compared within it. */
export const cellOf = ({ season, variety }: SugarReading): string => `${season} ${variety}`;

/** A value of each reading less its mean in the reading's cell. */
export function withinCells(readings: readonly SugarReading[], of: (one: SugarReading) => number): number[] {
  const cells = new Map<string, number[]>();
  for (const one of readings) cells.set(cellOf(one), [...(cells.get(cellOf(one)) ?? []), of(one)]);
  const means = new Map(
    [...cells].map(([cell, values]) => [cell, values.reduce((sum, value) => sum + value, 0) / values.length]),
  );
  return readings.map((one) => of(one) - (means.get(cellOf(one)) ?? 0));
}
