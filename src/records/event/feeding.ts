import { z } from 'zod';
import { amount } from '../field/amount.ts';
import { choice, yesNo } from '../field/choice.ts';
import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { MATERIALS } from '../material-id.ts';
import { entryId, written } from './written.ts';

const label = (what: string) =>
  amount({ min: 0, max: 100 })
    .meta({ title: `${what} on the label, of 100` })
    .optional();

/** Manure, compost or feed put on the ground. Without spots it was spread evenly over the whole garden. */
export const feedingSchema = record({
  id: entryId,
  given_on: when({ title: 'Given' }),
  spots: z.array(reference('Spot')).optional().meta({ title: 'Spots' }),
  material: choice(MATERIALS, { title: 'Material' }),
  ...quantity('mass')('mass', { min: 0, max: 10_000 }, { title: 'Mass of all' }),
  ...quantity('volume')('volume', { min: 0, max: 20_000 }, { title: 'Volume of all' }),
  barrows: amount({ min: 0, max: 500 }).meta({ title: 'Barrows' }).optional(),
  cups: amount({ min: 0, max: 500 }).meta({ title: 'Cups' }).optional(),
  roughly: choice(['some', 'little', 'plenty'], { title: 'How much, in a word' }).optional(),
  label_n: label('N'),
  label_p2o5: label('P2O5'),
  label_k2o: label('K2O'),
  worked_in: yesNo({ title: 'Worked in' }).optional(),
  ...written,
});

export type FeedingRecord = z.output<typeof feedingSchema>;
