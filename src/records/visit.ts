import { z } from 'zod';
import { coded } from './field/choice.ts';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay } from './field/when.ts';
import { SIGNS } from './sign.ts';

/** What a fruit showed and what its keeper called, written before any cutting. */
const lookSchema = record({
  fruit: reference('Fruit'),
  tendril: coded(SIGNS.tendril).optional(),
  ground_spot: coded(SIGNS.ground_spot).optional(),
  sound: coded(SIGNS.sound).optional(),
  rind: coded(SIGNS.rind).optional(),
  nail: coded(SIGNS.nail).optional(),
  stalk: coded(SIGNS.stalk).optional(),
  ground_colour: coded(SIGNS.ground_colour).optional(),
  smell: coded(SIGNS.smell).optional(),
  slip: coded(SIGNS.slip).optional(),
  call: coded({ title: 'Call', codes: { R: 'ripe', N: 'not-yet', U: 'unsure' } }).optional(),
  note,
});

/** One walk through the plot: which fruits were looked over, sign by sign. */
export const visitSchema = record({
  id: id('Visit'),
  visited_on: exactDay({ title: 'Visited' }),
  fruits: z.array(lookSchema).meta({ title: 'Fruits' }),
  recorded_on: exactDay({ title: 'Written down' }).optional(),
  by: text('By', 40).optional(),
  note,
});

export type VisitRecord = z.output<typeof visitSchema>;
