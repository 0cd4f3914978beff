import type { z } from 'zod';
import { amount } from './field/amount.ts';
import { choice, coded, yesNo } from './field/choice.ts';
import { id, reference } from './field/id.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { exactDay, when } from './field/when.ts';
import { PARTED } from './sign.ts';

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
  ...quantity('length')('girth', { min: 1, max: 500 }, { title: 'Girth', description: 'String round the middle.' }),
  size: choice(['small', 'middling', 'big'], {
    title: 'Size for its kind',
    description: 'For a garden without a scale.',
  }).optional(),
  condition: choice(['whole', 'split', 'rotten', 'gnawed'], {
    title: 'Condition',
    description: 'Whole fruit is sound, whatever its ripeness.',
  }).optional(),
  looks: coded({ title: 'How it looks', codes: { 1: 'poor', 2: 'plain', 3: 'good', 4: 'handsome' } }).optional(),
  parted: coded({ ...PARTED, description: 'Blank where it was cut off and nobody tried.' }).optional(),
  ...written,
});

const cutSchema = record({
  cut_on: when({ title: 'Cut' }),
  why: choice(['ripe', 'damaged', 'thinned', 'lot', 'season-end', 'curious'], { title: 'Why cut' }).optional(),
  state: coded({ title: 'State inside', codes: { U: 'unripe', J: 'just-ripe', P: 'prime', O: 'over' } }).optional(),
  brix_centre: brix('at the centre'),
  brix_spot_side: brix('towards the ground spot'),
  brix_upper_side: brix('towards the upper side'),
  sweet: coded({ title: 'How sweet', codes: { 1: 'flat', 2: 'faint', 3: 'sweet', 4: 'very-sweet' } }).optional(),
  crisp: coded({ title: 'How crisp', codes: { 1: 'mushy', 2: 'soft', 3: 'firm', 4: 'crisp' } }).optional(),
  juicy: coded({ title: 'How juicy', codes: { 1: 'dry', 2: 'moist', 3: 'juicy', 4: 'running' } }).optional(),
  liked: coded({ title: 'Liked', codes: { 1: 'no', 2: 'so-so', 3: 'yes', 4: 'very' } }).optional(),
  seeds: coded({ title: 'Seeds', codes: { 0: 'none', 1: 'few', 2: 'some', 3: 'in-the-way' } }).optional(),
  than_last: coded({
    title: 'Than the last of this kind',
    codes: { 1: 'less', 2: 'same', 3: 'sweeter' },
  }).optional(),
  bitter: yesNo({ title: 'Bitter' }).optional(),
  keep_seed: yesNo({ title: 'Keep seed?' }).optional(),
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
