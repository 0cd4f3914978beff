import type { FigureUnit } from '../figure.ts';

export type Cell = string | number | null;

/** What the cells of a column may hold, in the terms of the Table Schema standard. */
export interface Holds {
  readonly type: 'string' | 'number' | 'integer' | 'date' | 'boolean';
  readonly description: string | null;
  /** Whether no cell is blank. */
  readonly required: boolean;
  /** The only words it takes; null for any. */
  readonly words: readonly string[] | null;
  readonly minimum: number | null;
  readonly maximum: number | null;
  /** Suffix of its unit, for instance `kg`. */
  readonly unit: string | null;
}

export interface Column {
  /** Machine name: the CSV's heading. Units in the name, SI. */
  readonly key: string;
  /** Printed heading. */
  readonly title: string;
  /** Unit of its numbers, for print; null for words and plain counts. */
  readonly unit: FigureUnit | null;
  /** Told by columns of records; columns of computed tables are known by their cells. */
  readonly holds?: Holds;
}

/** Columns that name a row of another table by its own columns. */
export interface ForeignKey {
  readonly columns: readonly string[];
  readonly table: string;
  readonly its: readonly string[];
}

/** A column of words, plain counts, or numbers of a unit. */
export const column = (key: string, title: string, unit: FigureUnit | null = null): Column => ({ key, title, unit });

/** A table as it is downloaded: full precision, SI, null where nothing is known. */
export interface Table {
  /** Also its file name: `<id>.csv`. */
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Columns no two rows agree in. */
  readonly primaryKey?: readonly string[];
  readonly foreignKeys?: readonly ForeignKey[];
}
