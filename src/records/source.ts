import type { z } from 'zod';
import { choice } from './field/choice.ts';
import { id } from './field/id.ts';
import { record } from './field/record.ts';
import { text } from './field/text.ts';

/** One citation, written once and named by its id everywhere else. */
export const sourceSchema = record({
  id: id('Source'),
  short: text('Short name', 60).optional(),
  cite: text('Citation', 600),
  how: choice(['read', 'read-second-hand', 'memory', 'judgement'], {
    title: 'How it is known',
    description:
      'Read in the source, read in a copy or quotation, from memory, or a judgement of the makers with no source.',
  }),
});

export type SourceRecord = z.output<typeof sourceSchema>;
