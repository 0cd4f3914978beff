import { z } from 'zod';
import { amount } from './field/amount.ts';
import { choice, yesNo } from './field/choice.ts';
import { id, reference } from './field/id.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { feedingTraitSchema } from './trait/feeding.ts';
import { floweringTraitSchema } from './trait/flowering.ts';
import { keepingTraitSchema } from './trait/keeping.ts';
import { roomTraitSchema } from './trait/room.ts';
import { seasonTraitSchema } from './trait/season.ts';
import { seedTraitSchema } from './trait/seed.ts';
import { cropSignSchema, ripeDaysSchema } from './trait/sign.ts';
import { sowingTraitSchema } from './trait/sowing.ts';
import { troubleSchema } from './trait/trouble.ts';
import { waterTraitSchema } from './trait/water.ts';

const bound = amount({ min: 0, max: 1_000_000, about: false });

/** Values outside a bound are warned of, never refused. */
const boundsSchema = record({
  mass_kg_low: bound.meta({ title: 'Lightest likely fruit, kg' }),
  mass_kg_high: bound.meta({ title: 'Heaviest likely fruit, kg' }),
  girth_cm_high: bound.meta({ title: 'Widest likely girth, cm' }),
  brix_low: bound.meta({ title: 'Lowest likely sugar, °Brix' }),
  brix_high: bound.meta({ title: 'Highest likely sugar, °Brix' }),
  days_set_to_pick_low: bound.meta({ title: 'Fewest likely days from set to pick' }),
  days_set_to_pick_high: bound.meta({ title: 'Most likely days from set to pick' }),
  source: reference('Source'),
});

/** What heat counts for the crop. Sources disagree on the base: `base_c` is a setting inside their range, not a fact. */
const heatSchema = record({
  base_c: amount({ min: -10, max: 30, about: false }).meta({ title: 'Base, °C' }),
  base_low_c: amount({ min: -10, max: 30, about: false }).meta({ title: 'Lowest base of the sources, °C' }),
  base_high_c: amount({ min: -10, max: 30, about: false }).meta({ title: 'Highest base of the sources, °C' }),
  cap_c: amount({ min: 10, max: 60, about: false }).meta({ title: 'Cap, °C' }),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

/** Traits of a crop. Code asks for traits, never for a name. One map. */
export const cropSchema = record({
  id: id('Crop'),
  names: z.record(z.string(), text('Name', 40)).meta({ title: 'Names by language' }),
  plurals: z.record(z.string(), text('Name of many', 40)).meta({ title: 'Plural names by language' }),
  slip: choice(['full', 'forced', 'none', 'varies'], { title: 'Slip' }),
  fruit_on_ground: yesNo({ title: 'Fruit lies on the ground' }),
  eaten: choice(['ripe', 'young'], { title: 'Eaten', description: 'Ripe, or young and tender.' }).optional(),
  ripe_days: ripeDaysSchema.optional().meta({ title: 'Days to ripe' }),
  signs: z
    .array(cropSignSchema)
    .optional()
    .meta({ title: 'Signs', description: 'In the order of looking; how it parts stands last.' }),
  too_late: z.record(z.string(), text('Signs of too late', 90)).optional().meta({ title: 'Too late, by language' }),
  heat: heatSchema.optional().meta({ title: 'Heat' }),
  sowing: sowingTraitSchema.optional().meta({ title: 'Sowing' }),
  room: roomTraitSchema.optional().meta({ title: 'Room' }),
  season: seasonTraitSchema.optional().meta({ title: 'Season' }),
  water: waterTraitSchema.optional().meta({ title: 'Water' }),
  feeding: feedingTraitSchema.optional().meta({ title: 'Feeding' }),
  flowering: floweringTraitSchema.optional().meta({ title: 'Flowering' }),
  troubles: z.array(troubleSchema).optional().meta({ title: 'Troubles' }),
  keeping: keepingTraitSchema.optional().meta({ title: 'Keeping' }),
  seed: seedTraitSchema.optional().meta({ title: 'Seed' }),
  bounds: boundsSchema.optional().meta({ title: 'Plausibility bounds' }),
  note,
});

export type CropRecord = z.output<typeof cropSchema>;
