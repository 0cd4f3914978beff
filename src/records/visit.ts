import { z } from 'zod';
import { choice } from './field/choice.ts';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay } from './field/when.ts';

/** What a fruit showed and what its keeper called, written before any cutting. */
const lookSchema = record({
  fruit: reference('Fruit'),
  tendril: choice(['green', 'wilting', 'half-brown', 'dry'], { title: 'Tendril at the fruit' }).optional(),
  ground_spot: choice(['none', 'white', 'cream', 'butter', 'deep'], { title: 'Ground spot' }).optional(),
  sound: choice(['ringing', 'hollow', 'dull', 'unsure'], { title: 'Sound' }).optional(),
  rind: choice(['glossy', 'matte'], { title: 'Rind' }).optional(),
  nail: choice(['marks', 'resists'], { title: 'Thumbnail' }).optional(),
  slip: choice(['none', 'half', 'full'], { title: 'Slip' }).optional(),
  call: choice(['ripe', 'not-yet', 'unsure'], { title: 'Call' }).optional(),
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
