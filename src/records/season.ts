import type { z } from 'zod';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay } from './field/when.ts';

/** One season. Its folder carries the label with "/" written as "-". One map. */
export const seasonSchema = record({
  label: text('Season', 20),
  starts_on: exactDay({ title: 'Starts' }),
  ends_on: exactDay({ title: 'Ends' }),
  note,
});

export type SeasonRecord = z.output<typeof seasonSchema>;
