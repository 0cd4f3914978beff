import { z } from 'zod';
import { choice } from '../field/choice.ts';
import { count } from '../field/count.ts';
import { reference } from '../field/id.ts';
import { record } from '../field/record.ts';
import { text } from '../field/text.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** A look for trouble: how many plants were looked at, how many had it, how bad. Looked and found none is a record too. */
export const scoutingSchema = record({
  id: entryId,
  looked_on: when({ title: 'Looked' }),
  spots: z.array(reference('Spot')).optional().meta({ title: 'Spots' }),
  found: choice(
    ['none', 'spots-on-leaves', 'mildew', 'wilt', 'insects', 'slugs', 'gnawing', 'fruit-rot', 'fruit-end-rot', 'other'],
    { title: 'Found', description: 'None: looked, and nothing there.' },
  ),
  what: text('What it was', 80).optional(),
  checked: count({ title: 'Plants looked at', max: 1000 }).optional(),
  affected: count({ title: 'Of them with it', max: 1000 }).optional(),
  severity: count({
    title: 'How bad, 0 to 9, 9 worst',
    description: '0 none, 9 dead.',
    max: 9,
    about: false,
  }).optional(),
  ...written,
});
