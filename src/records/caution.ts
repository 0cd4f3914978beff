import { z } from 'zod';
import { choice } from './field/choice.ts';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { text } from './field/text.ts';

/** The steps of the year at which a caution may print. */
export const STEPS = [
  'sowing',
  'ground',
  'planting',
  'mulching',
  'feeding',
  'watering',
  'tank',
  'walking',
  'flowering',
  'scouting',
  'picking',
  'weighing',
  'cutting',
  'keeping',
  'sharing',
  'seed',
  'away',
] as const;

/** A safety text, printed at the steps it names. */
export const cautionSchema = record({
  id: id('Caution'),
  topic: text('Topic', 60),
  says: text('Text', 800),
  at: z.array(choice(STEPS, { title: 'Step' })).meta({ title: 'Printed at' }),
  ask: text('Whom to ask', 120),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
  checked_by: text('Checked by', 80).optional(),
});

export type CautionRecord = z.output<typeof cautionSchema>;
