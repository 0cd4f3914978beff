import { choice } from '../field/choice.ts';
import { count } from '../field/count.ts';
import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** Seed put into a tray, a pot or the ground, and how much of it came up. The tray is the replicate, not the seed. */
export const sowingSchema = record({
  id: entryId,
  sown_on: when({ title: 'Sown' }),
  lot: reference('Seed lot').optional(),
  variety: reference('Variety', ['unknown']).optional(),
  planting: reference('Planting').optional(),
  place: choice(['tray', 'pots', 'ground'], { title: 'Sown in' }).optional(),
  seeds: count({ title: 'Seeds', max: 10_000 }),
  ...quantity('temperature')('soil', { min: -5, max: 60 }, { title: 'Warmth of the soil' }),
  emerged: count({ title: 'Came up', max: 10_000 }).optional(),
  emerged_on: when({ title: 'Half of them up' }).optional(),
  ...written,
});
