import { record } from '../field/record.ts';
import { measure, sources, span } from './trait.ts';

/** The room a crop takes: ground to a plant, and plants to one rich mound. */
export const roomTraitSchema = record({
  ...span('plant_area', '_m2', 'Ground to a plant, m²', 50),
  mound_plants_low: measure('Plants to a rich mound, least', 20).optional(),
  mound_plants_high: measure('Plants to a rich mound, most', 20).optional(),
  sources,
});
