import type { Day } from '../day.ts';

/** A message of the frame, by its code, and the values its words need. */
export interface Words {
  readonly code: string;
  readonly values: Readonly<Record<string, string | number>>;
}

/** Something for a calendar: whole days, in words of the frame. */
export interface CalendarEvent {
  /** Unique in the book, and the same whenever it is built. */
  readonly id: string;
  readonly summary: Words;
  readonly description: Words;
  readonly first: Day;
  /** Itself included. */
  readonly last: Day;
}
