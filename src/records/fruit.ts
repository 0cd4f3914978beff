import type { z } from 'zod';
import { amount } from './field/amount.ts';
import { choice, yesNo } from './field/choice.ts';
import { id, reference } from './field/id.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay, when } from './field/when.ts';

const written = { recorded_on: exactDay({ title: 'Written down' }).optional(), by: text('By', 40).optional(), note };

const brix = (place: string) =>
  amount({ min: 0, max: 40 })
    .meta({ title: `Sugar, °Brix, ${place}` })
    .optional();

const setSchema = record({
  set_on: when({ title: 'Set', description: 'Flower closed, fruit the size of a pea.' }).optional(),
  first_seen_on: when({ title: 'First seen' }).optional(),
  first_seen_size: choice(['pea', 'walnut', 'egg', 'fist', 'head'], { title: 'Size when first seen' }).optional(),
  ...written,
});

const pickSchema = record({
  picked_on: when({ title: 'Picked' }),
  reason: choice(['ripe', 'forecast', 'frost', 'damage', 'season-end', 'other'], { title: 'Why then' }).optional(),
  ...quantity('mass')('mass', { min: 0, max: 400 }, { title: 'Mass' }),
  ...quantity('girth')('girth', { min: 1, max: 500 }, { title: 'Girth', description: 'String round the middle.' }),
  size: choice(['small', 'middling', 'big'], {
    title: 'Size for its kind',
    description: 'For a garden without a scale.',
  }).optional(),
  condition: choice(['whole', 'split', 'rotten', 'gnawed'], {
    title: 'Condition',
    description: 'Whole fruit is sound, whatever its ripeness.',
  }).optional(),
  ...written,
});

const cutSchema = record({
  cut_on: when({ title: 'Cut' }),
  why: choice(['ripe', 'damaged', 'thinned', 'lot', 'season-end', 'curious'], { title: 'Why cut' }).optional(),
  state: choice(
    ['unripe', 'just-ripe', 'prime', 'over'],
    { title: 'State inside' },
    { U: 'unripe', J: 'just-ripe', P: 'prime', O: 'over' },
  ).optional(),
  brix_centre: brix('at the centre'),
  brix_spot_side: brix('towards the ground spot'),
  brix_upper_side: brix('towards the upper side'),
  sweet: choice(['flat', 'faint', 'sweet', 'very-sweet'], { title: 'How sweet' }).optional(),
  crisp: choice(['mushy', 'soft', 'firm', 'crisp'], { title: 'How crisp' }).optional(),
  juicy: choice(['dry', 'moist', 'juicy', 'running'], { title: 'How juicy' }).optional(),
  liked: choice(['no', 'so-so', 'yes', 'very'], { title: 'Liked' }).optional(),
  seeds: choice(['none', 'few', 'some', 'in-the-way'], { title: 'Seeds' }).optional(),
  than_last: choice(['sweeter', 'same', 'less'], { title: 'Than the last of this kind' }).optional(),
  bitter: yesNo({ title: 'Bitter' }).optional(),
  ...written,
});

const endSchema = record({
  ended_on: when({ title: 'Ended' }),
  lost_to: choice(['animal', 'theft', 'rot', 'split', 'frost', 'unknown'], { title: 'Lost to' }).optional(),
  ...written,
});

/** One fruit from set to table. It stays in the register whatever became of it. */
export const fruitSchema = record({
  id: id('Fruit'),
  planting: reference('Planting'),
  plant: text('Plant', 20).optional(),
  fate: choice(['growing', 'picked', 'thinned', 'aborted', 'lost', 'left'], { title: 'Fate' }),
  set: setSchema.optional().meta({ title: 'Set' }),
  pick: pickSchema.optional().meta({ title: 'Pick' }),
  cut: cutSchema.optional().meta({ title: 'Cut' }),
  end: endSchema.optional().meta({ title: 'End', description: 'For a fruit thinned, aborted, lost or left.' }),
  note,
});

export type FruitRecord = z.output<typeof fruitSchema>;
