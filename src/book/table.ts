import type { FigureUnit } from '../figure.ts';

export type Cell = string | number | null;

export interface Column {
  /** Machine name: the CSV's heading. Units in the name, SI. */
  readonly key: string;
  /** Printed heading. */
  readonly title: string;
  /** Unit of its numbers, for print; null for words and plain counts. */
  readonly unit: FigureUnit | null;
}

/** A table as it is downloaded: full precision, SI, null where nothing is known. */
export interface Table {
  /** Also its file name: `<id>.csv`. */
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}
