import { z } from 'zod';
import { choice } from '../field/choice.ts';
import { count } from '../field/count.ts';
import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** Mulch laid down or taken off. Without spots it is the whole garden's. */
export const mulchingSchema = record({
  id: entryId,
  laid_on: when({ title: 'Laid' }),
  spots: z.array(reference('Spot')).optional().meta({ title: 'Spots' }),
  work: choice(['laid', 'topped-up', 'taken-off'], { title: 'Work' }).optional(),
  material: choice(
    ['straw', 'hay', 'grass', 'leaves', 'compost', 'wood-chips', 'cardboard', 'cloth', 'plastic', 'other'],
    {
      title: 'Material',
    },
  ),
  cover_of_ten: count({ title: 'Ground covered, of ten', max: 10 }).optional(),
  ...quantity('length')('depth', { min: 0, max: 60 }, { title: 'Depth' }),
  ...written,
});
