import { z } from 'zod';
import { coded } from '../field/choice.ts';
import { reference } from '../field/id.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

const order = (title: string) => z.array(reference('Fruit')).optional().meta({ title });

/**
 * What one person tasted side by side: either a pair, the first fruit against the second, or a few fruits put in order,
 * by liking, by sweetness or by both. The fruit is the replicate.
 */
export const tastingSchema = record({
  id: entryId,
  tasted_on: when({ title: 'Tasted' }),
  fruit: reference('Fruit').optional(),
  against: reference('Against').optional(),
  sweeter: coded({ title: 'How sweet, the first', codes: { 1: 'less', 2: 'same', 3: 'sweeter' } }).optional(),
  better: coded({ title: 'How liked, the first', codes: { 1: 'less', 2: 'same', 3: 'better' } }).optional(),
  best_first: order('Liked most first'),
  sweetest_first: order('Sweetest first'),
  ...written,
});
