import type { z } from 'zod';
import { choice } from './field/choice.ts';
import { count } from './field/count.ts';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { note } from './field/text.ts';
import { when } from './field/when.ts';

export const plantingSchema = record({
  id: id('Planting'),
  spot: reference('Spot'),
  block: id('Block', 'Spots that share ground, light and water; each block holds every variety once.').optional(),
  placed: choice(['lot', 'chosen', 'unknown'], {
    title: 'Placed by',
    description: 'How the spot was given its variety.',
  }).optional(),
  variety: reference('Variety', ['unknown']),
  sown_on: when({ title: 'Sown' }).optional(),
  planted_on: when({ title: 'Planted out' }),
  plants_set: count({ title: 'Plants set', max: 500 }),
  plants_alive: count({
    title: 'Plants alive',
    description: 'Alive four weeks after planting out.',
    max: 500,
  }).optional(),
  note,
});

export type PlantingRecord = z.output<typeof plantingSchema>;
