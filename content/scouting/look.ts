import type { EventOf } from '../../src/garden/event.ts';

export type Look = EventOf<'scouting'>;

/** What a look can find, none left out. */
export type Trouble = Exclude<Look['found'], 'none'>;
