import { id } from '../field/id.ts';
import { note, text } from '../field/text.ts';
import { exactDay } from '../field/when.ts';

/** What every entry of the season's diary may carry beside what happened. */
export const written = {
  recorded_on: exactDay({ title: 'Written down' }).optional(),
  by: text('By', 40).optional(),
  note,
};

/** An entry needs no name of its own; its day and kind tell it apart. */
export const entryId = id('Entry').optional();
