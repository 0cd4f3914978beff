import { coded } from '../field/choice.ts';
import { reference } from '../field/id.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** Two fruits tasted side by side by one person: the first against the second. The fruit is the replicate. */
export const tastingSchema = record({
  id: entryId,
  tasted_on: when({ title: 'Tasted' }),
  fruit: reference('Fruit'),
  against: reference('Against'),
  sweeter: coded({ title: 'How sweet, the first', codes: { 1: 'less', 2: 'same', 3: 'sweeter' } }).optional(),
  better: coded({ title: 'How liked, the first', codes: { 1: 'less', 2: 'same', 3: 'better' } }).optional(),
  ...written,
});
