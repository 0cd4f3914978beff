import { z } from 'zod';
import { choice } from './field/choice.ts';
import { reference } from './field/id.ts';
import { record } from './field/record.ts';
import { text } from './field/text.ts';
import { ROOFS } from './tank.ts';
import { measure } from './trait/trait.ts';

/** A kind of roof, with the part of the rain that sources say runs off it. */
export const roofSchema = record({
  id: choice(ROOFS, { title: 'Roof' }),
  name: text('Name', 40),
  runoff_low: measure('Share of the rain that runs off, least', 1),
  runoff_high: measure('Share of the rain that runs off, most', 1),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

export type RoofRecord = z.output<typeof roofSchema>;
