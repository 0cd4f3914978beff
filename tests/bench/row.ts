import type { Mark } from './watched.ts';

/** One line of the table: what was measured, run by run, against what is wanted. */
export interface Row {
  readonly what: string;
  readonly unit: '×' | 's';
  /** By the clock and by the processor's time, which other work on the machine hardly touches; one value a run. */
  readonly clock: readonly number[];
  readonly processor: readonly number[];
  readonly first: string;
  readonly aim: string;
}

/** Both measures of every run. */
export const both = <T>(
  runs: readonly T[],
  of: (run: T, by: (mark: Mark) => number) => number,
): Pick<Row, 'clock' | 'processor'> => ({
  clock: runs.map((run) => of(run, ({ clock }) => clock)),
  processor: runs.map((run) => of(run, ({ processor }) => processor)),
});

export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] ?? Number.NaN) + (sorted[Math.ceil(half)] ?? Number.NaN)) / 2;
}

const HEAD = ['what', 'clock', 'processor', 'least to most', 'first', 'aim', 'n'];

/** A plain table with aligned columns; medians, and of the processor's time the least and the most of the runs. */
export function tableText(rows: readonly Row[]): string {
  const cells = [HEAD, ...rows.map(cellsOf)];
  const widths = HEAD.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)));
  const lineOf = (row: readonly string[]): string =>
    row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ');
  return cells.map((row) => lineOf(row).trimEnd()).join('\n');
}

function cellsOf({ what, unit, clock, processor, first, aim }: Row): string[] {
  const shown = (value: number): string => (unit === 's' ? `${value.toFixed(2)} s` : value.toFixed(2));
  const told = (values: readonly number[]): string => (values.length === 0 ? '' : shown(medianOf(values)));
  const spread = processor.length < 2 ? '' : `${shown(Math.min(...processor))} to ${shown(Math.max(...processor))}`;
  return [what, told(clock), told(processor), spread, first, aim, String(clock.length)];
}
