import { choice } from '../field/choice.ts';
import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** A picked fruit laid by: where, until when, and how it ended. */
export const keepingSchema = record({
  id: entryId,
  ended_on: when({ title: 'Ended' }),
  fruit: reference('Fruit'),
  place: choice(['kitchen', 'cool-room', 'cellar', 'shed', 'fridge'], { title: 'Kept in' }).optional(),
  ...quantity('temperature')('store', { min: -10, max: 50 }, { title: 'Warmth there' }),
  ended: choice(['eaten-sound', 'eaten-soft', 'rotted', 'given-away'], { title: 'How it ended' }),
  ...written,
});
