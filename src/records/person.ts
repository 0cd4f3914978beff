import type { z } from 'zod';
import { id } from './field/id.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay } from './field/when.ts';

/** Somebody who writes records, and whether their name may be printed. Id, dates and note never leave the garden. */
export const personSchema = record({
  id: id('Person', 'What records write after "by".'),
  code: id('Code', 'Printed where the name may not be, so it should tell nobody who it is.'),
  name: text('Name', 80),
  agreed_on: exactDay({ title: 'Agreed to be named' }).optional(),
  withdrawn_on: exactDay({ title: 'Took that back' }).optional(),
  note,
});

export type PersonRecord = z.output<typeof personSchema>;
