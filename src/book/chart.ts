import type { TopLevelSpec } from 'vega-lite';
import type { Table } from './table.ts';

/** A chart as data: drawn at build, told in words, and its numbers given as a table. */
export interface Chart {
  /** Unique in the book; names its file and its parts. */
  readonly id: string;
  readonly title: string;
  /** What a person who cannot see it should know. */
  readonly description: string;
  /** Vega-Lite, its data inside. */
  readonly spec: TopLevelSpec;
  /** Id of the table that holds its numbers. */
  readonly table: Table;
}
