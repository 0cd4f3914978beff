import type { TopLevelSpec } from 'vega-lite';

/** What the bare process is to do. All paths absolute. */
export interface BareJob {
  /** Folder of records to parse; null for none. */
  readonly garden: string | null;
  /** For each page the length of its text and what is drawn on it. */
  readonly pages: readonly { readonly characters: number; readonly charts: readonly TopLevelSpec[] }[];
  /** An empty folder to work in. */
  readonly empty: string;
  readonly out: string;
}
