import type { z } from 'zod';
import { choice, yesNo } from './field/choice.ts';
import { count } from './field/count.ts';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';

export const varietySchema = record({
  id: id('Variety'),
  name: text('Name', 60),
  crop: reference('Crop'),
  seed: choice(['open-pollinated', 'hybrid', 'unknown'], {
    title: 'Seed',
    description: 'Seed of a hybrid does not come true.',
  }),
  stated_size: choice(['icebox', 'small', 'medium', 'large', 'giant'], { title: 'Size on the packet' }).optional(),
  stated_days: count({ title: 'Days on the packet', max: 250 }).optional(),
  stated_days_from: choice(['sowing', 'planting', 'unknown'], { title: 'Days counted from' }).optional(),
  slip: choice(['full', 'forced', 'none', 'unknown'], {
    title: 'Slip',
    description: 'Whether the ripe fruit parts from its stalk.',
  }).optional(),
  yardstick: yesNo({ title: 'Yardstick', description: 'The known variety the others are held against.' }).optional(),
  note,
});

export type VarietyRecord = z.output<typeof varietySchema>;
