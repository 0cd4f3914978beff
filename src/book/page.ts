import type { Figure } from '../figure.ts';
import type { CalendarEvent } from './calendar-event.ts';
import type { Chart } from './chart.ts';
import type { RecordLevel } from './record-level.ts';
import type { Table } from './table.ts';

export interface Page {
  /** Folder of the page below the site, ending in "/"; empty for the first page. */
  readonly path: string;
  /** Id of its chapter: the folder below content. */
  readonly chapter: string;
  /** Template below content, for instance `yield/index.njk`. */
  readonly template: string;
  /** The question or name at its head. */
  readonly title: string;
  /** Template of the finding alone, for the contents; null for pages that have none. */
  readonly finding: string | null;
  /** What its templates read: plain data. */
  readonly model: object;
  readonly charts: readonly Chart[];
  readonly tables: readonly Table[];
  readonly figures: readonly Figure[];
  /** How much record its question needs, and how much there is; null for front and back matter. */
  readonly level: RecordLevel | null;
  /** Ids of the cautions printed on it. */
  readonly cautions: readonly string[];
  /** False for a page that the contents list under another, such as an earlier season. */
  readonly listed: boolean;
  /** Tells what another page tells, of an earlier season: a home book on paper does without it. */
  readonly earlier?: boolean;
  /** For the book's calendar file; absent for most pages. */
  readonly events?: readonly CalendarEvent[];
  /** A paper of its own to carry out; absent for a page of the book. */
  readonly form?: 'sheet' | 'card';
  /** For one person alone: printed, never on the website. Its figures and tables would be, so it has none. */
  readonly private?: true;
}
