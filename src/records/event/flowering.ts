import { choice } from '../field/choice.ts';
import { count } from '../field/count.ts';
import { reference } from '../field/id.ts';
import { record } from '../field/record.ts';
import { text } from '../field/text.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** A first flower, flowers tagged, pollinated by hand or closed for seed, or the insects of ten minutes. */
export const floweringSchema = record({
  id: entryId,
  seen_on: when({ title: 'Seen' }),
  planting: reference('Planting').optional(),
  what: choice(['first-male', 'first-female', 'tagged', 'hand-pollinated', 'closed-for-seed', 'insects-counted'], {
    title: 'What',
  }),
  tag: text('Tag', 20).optional(),
  flowers: count({ title: 'Flowers', max: 1000 }).optional(),
  took: count({ title: 'Of them set', description: 'Known a week later.', max: 1000 }).optional(),
  insects: count({ title: 'Insects on the flowers in ten minutes', max: 10_000 }).optional(),
  ...written,
});
