import { z } from 'zod';
import { amount } from '../field/amount.ts';
import { choice } from '../field/choice.ts';
import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/**
 * Water given: counted for each spot or for all of them together, in cans, by volume or as minutes at a flow. Without
 * spots it went to the whole garden, in equal parts.
 */
export const wateringSchema = record({
  id: entryId,
  watered_on: when({ title: 'Watered' }),
  spots: z.array(reference('Spot')).optional().meta({ title: 'Spots' }),
  cans_each: amount({ min: 0, max: 100 }).meta({ title: 'Cans for each spot' }).optional(),
  cans: amount({ min: 0, max: 2000 }).meta({ title: 'Cans for all' }).optional(),
  ...quantity('volume')('volume', { min: 0, max: 20_000 }, { title: 'Volume for all' }),
  minutes: amount({ min: 0, max: 1440 }).meta({ title: 'Minutes for all' }).optional(),
  ...quantity('flow')('flow', { min: 0.01, max: 200 }, { title: 'Flow, measured' }),
  roughly: choice(['some', 'little', 'plenty'], { title: 'How much, in a word' }).optional(),
  how: choice(['can', 'hose', 'drip', 'sprinkler'], { title: 'How' }).optional(),
  from: choice(['tank', 'mains', 'other'], { title: 'Water from' }).optional(),
  ...written,
});
