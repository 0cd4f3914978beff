import type { z } from 'zod';
import { count } from './field/count.ts';
import { id, reference } from './field/id.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay, when } from './field/when.ts';

/** Fruits picked from one planting on a day or over a span, counted but not told apart. */
export const pickingSchema = record({
  id: id('Picking').optional(),
  planting: reference('Planting'),
  picked_on: when({ title: 'Picked' }),
  count: count({ title: 'Fruits' }),
  sound_count: count({ title: 'Of them sound', description: 'Whole, unsplit, unrotted, ungnawed.' }).optional(),
  ...quantity('mass')('mass', { min: 0, max: 10_000 }, { title: 'Mass of all' }),
  ...quantity('mass')('sound_mass', { min: 0, max: 10_000 }, { title: 'Mass of the sound' }),
  recorded_on: exactDay({ title: 'Written down' }).optional(),
  by: text('By', 40).optional(),
  note,
});

export type PickingRecord = z.output<typeof pickingSchema>;
