import type { Place } from './source.ts';

/** What the parser complains of, and where it noticed. */
export interface Fault extends Place {
  readonly code: string;
  readonly message: string;
}

/** The complaint in a grower's words, with what to type instead. */
export interface Explanation {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

/** The slip behind a complaint, where its keeper has to look. */
export type Slip = Explanation & Place;
