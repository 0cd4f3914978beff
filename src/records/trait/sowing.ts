import { z } from 'zod';
import { record } from '../field/record.ts';
import { measure, sources, span } from './trait.ts';

/** Days from sowing to the seedling, at one warmth of the soil. */
const emergenceSchema = record({
  soil_c: measure('Soil, °C', 50),
  days: measure('Days to come up', 100),
});

/** How a crop is raised: warmth for the seed, time in the pot, soil warm enough to plant out. */
export const sowingTraitSchema = record({
  emergence: z.array(emergenceSchema).optional().meta({ title: 'Days to come up', description: 'From cool to warm.' }),
  soil_least_c: measure('Coolest soil a seed comes up in, °C', 50).optional(),
  ...span('soil_best', '_c', 'Best soil for the seed, °C', 50),
  soil_most_c: measure('Warmest soil a seed comes up in, °C', 60).optional(),
  ...span('pot_days', '', 'Days from sowing under cover to planting out', 120),
  plant_out_soil_c: measure('Soil warm enough to plant out, °C', 40),
  sources,
});
