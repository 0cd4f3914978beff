import { choice } from '../field/choice.ts';
import { count } from '../field/count.ts';
import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** Fruit that went to somebody: to what kind of place, never to whom. */
export const shareSchema = record({
  id: entryId,
  shared_on: when({ title: 'Given' }),
  to: choice(['home', 'members', 'neighbours', 'food-bank', 'stall', 'other'], { title: 'To' }),
  planting: reference('Planting').optional(),
  fruits: count({ title: 'Fruits', max: 10_000 }).optional(),
  ...quantity('mass')('mass', { min: 0, max: 10_000 }, { title: 'Mass of all' }),
  ...written,
});
