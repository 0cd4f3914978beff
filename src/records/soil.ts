import { z } from 'zod';
import { choice } from './field/choice.ts';
import { reference } from './field/id.ts';
import { record } from './field/record.ts';
import { SOILS } from './soil-id.ts';
import { span } from './trait/trait.ts';

/** What a texture of soil holds: water a plant can draw on, and what the sun takes from its bare top. */
export const soilSchema = record({
  id: choice(SOILS, { title: 'Soil' }),
  ...span('available', '_m3_m3', 'Water between full and wilting, m³ a m³', 1),
  ...span('readily_evaporated', '_mm', 'Evaporated freely from the top, mm', 100),
  ...span('total_evaporated', '_mm', 'Evaporated from the top in all, mm', 100),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

export type SoilRecord = z.output<typeof soilSchema>;
