import { z } from 'zod';
import { choice, yesNo } from './field/choice.ts';
import { count } from './field/count.ts';
import { id, reference } from './field/id.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note } from './field/text.ts';
import { when } from './field/when.ts';

/** Some seeds laid out damp and counted. */
const germinationTestSchema = record({
  tested_on: when({ title: 'Tested' }),
  seeds: count({ title: 'Seeds tested', max: 10_000 }),
  sprouted: count({ title: 'Sprouted', max: 10_000 }),
  days: count({ title: 'Counted after days', max: 60 }).optional(),
  ...quantity('temperature')('warmth', { min: -5, max: 60 }, { title: 'Warmth' }),
  note,
});

/** Seed of one variety from one source and one year: a packet, or a jar of one's own. */
export const lotSchema = record({
  id: id('Seed lot'),
  variety: reference('Variety'),
  from: choice(['bought', 'saved', 'swapped', 'gift', 'unknown'], { title: 'From' }),
  year: count({ title: 'Year of harvest', max: 2199, about: false }).optional(),
  parents: count({ title: 'Plants it was saved from', max: 1000 }).optional(),
  isolation: choice(['under-150-m', '150-to-800-m', 'over-800-m', 'closed-by-hand', 'unknown'], {
    title: 'Distance to the next of its kind',
    description: 'A class, not a measure: how far bees carry is not known to the metre.',
  }).optional(),
  treated: yesNo({ title: 'Treated', description: 'Coloured or coated seed is not food.' }).optional(),
  tests: z.array(germinationTestSchema).optional().meta({ title: 'Germination tests' }),
  note,
});

export type LotRecord = z.output<typeof lotSchema>;
