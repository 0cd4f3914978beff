import { z } from 'zod';
import { record } from '../field/record.ts';
import { text } from '../field/text.ts';
import { measure, sources, span } from './trait.ts';

/** How long the four stages of growth last, in one published setting. */
const stagesSchema = record({
  initial_days: measure('First stage, days', 100),
  development_days: measure('Growing stage, days', 100),
  middle_days: measure('Full stage, days', 100),
  late_days: measure('Last stage, days', 100),
  where: text('Where and when', 60),
});

/** What plastic over the whole ground takes off; a cut below nothing is a gain. */
const plasticSchema = record({
  evaporation_cut_low: measure('Share off the soil’s evaporation, least', 1),
  evaporation_cut_high: measure('Share off the soil’s evaporation, most', 1),
  transpiration_cut_low: measure('Share off what the plants drink, least', 1, -1),
  transpiration_cut_high: measure('Share off what the plants drink, most', 1, -1),
});

/** What a crop drinks against grass (crop coefficients), how deep it roots, and how far its ground may dry. */
export const waterTraitSchema = record({
  kc_initial: measure('Coefficient, first stage', 2),
  kc_middle: measure('Coefficient, full stage', 2),
  kc_end: measure('Coefficient, at the end', 2),
  kcb_initial: measure('Basal coefficient, first stage', 2),
  kcb_middle: measure('Basal coefficient, full stage', 2),
  kcb_end: measure('Basal coefficient, at the end', 2),
  height_m: measure('Height, m', 5),
  ...span('root', '_m', 'Depth of roots, m', 5),
  depletion: measure('Share of the soil water a plant can use up unharmed', 1),
  stages: z.array(stagesSchema).meta({ title: 'Stages of growth' }),
  plastic: plasticSchema.optional().meta({ title: 'Under plastic' }),
  sources,
});
