import { z } from 'zod';
import { choice } from '../field/choice.ts';
import { reference } from '../field/id.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

const FEEL = ['dry', 'damp', 'wet'] as const;

/** A finger in the ground before water was given: the top, and a hand's length below. Without spots it is the whole garden's. */
export const soilFeelSchema = record({
  id: entryId,
  felt_on: when({ title: 'Felt' }),
  spots: z.array(reference('Spot')).optional().meta({ title: 'Spots' }),
  top: choice(FEEL, { title: 'Top, a finger’s length' }).optional(),
  below: choice(FEEL, { title: 'Below, a hand’s length' }).optional(),
  ...written,
});
