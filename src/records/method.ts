import { z } from 'zod';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { text } from './field/text.ts';

/** The words for one way of computing, named by figures. */
export const methodSchema = record({
  id: id('Method'),
  name: text('Name', 80),
  says: text('Text', 1500),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

export type MethodRecord = z.output<typeof methodSchema>;
