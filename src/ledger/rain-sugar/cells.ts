import type { SugarReading } from './reading.ts';

/** A variety in a season: what is compared with rain is compared within it. */
export const cellOf = ({ season, variety }: SugarReading): string => `${season} ${variety}`;

/** A value of each reading less its mean in the reading's cell. */
export const withinCells = (readings: readonly SugarReading[], of: (one: SugarReading) => number): number[] =>
  withinGroups(readings, cellOf, of);

/** A value of each row less its mean in the row's group. */
export function withinGroups<T>(rows: readonly T[], groupOf: (row: T) => string, of: (row: T) => number): number[] {
  const groups = new Map<string, number[]>();
  for (const row of rows) groups.set(groupOf(row), [...(groups.get(groupOf(row)) ?? []), of(row)]);
  const means = new Map(
    [...groups].map(([group, values]) => [group, values.reduce((sum, value) => sum + value, 0) / values.length]),
  );
  return rows.map((row) => of(row) - (means.get(groupOf(row)) ?? 0));
}
