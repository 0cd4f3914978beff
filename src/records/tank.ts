import type { z } from 'zod';
import { choice } from './field/choice.ts';
import { count } from './field/count.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note } from './field/text.ts';

/** Kinds of roof in data/reference/roofs.yaml. */
export const ROOFS = ['metal', 'tiles', 'shingle', 'tar-and-gravel', 'unknown'] as const;

const inside = { min: 5, max: 1000 };

/** The garden's water tank or butt, measured inside, and the roof that fills it. */
export const tankSchema = record({
  shape: choice(['upright', 'lying', 'box'], {
    title: 'Shape',
    description: 'A drum that stands, a drum on its side, or a box.',
  }).optional(),
  ...quantity('length')('diameter', inside, { title: 'Across, inside', about: false }),
  ...quantity('length')('length', inside, { title: 'Length, inside', about: false }),
  ...quantity('length')('width', inside, { title: 'Width, inside', about: false }),
  ...quantity('length')('height', inside, { title: 'Height, inside', about: false }),
  ...quantity('volume')('holds', { min: 20, max: 100_000 }, { title: 'Holds' }),
  count: count({ title: 'How many alike, joined below', max: 20, about: false }).optional(),
  ...quantity('length')('tap', { min: 0, max: 500 }, { title: 'Tap above the floor', about: false }),
  ...quantity('area')('roof', { min: 0.5, max: 2000 }, { title: 'Roof, seen from above' }),
  roof_of: choice(ROOFS, { title: 'Roof of' }).optional(),
  ...quantity('volume')('first_flush', { min: 0, max: 500 }, { title: 'Thrown away first, each rain' }),
  ...quantity('flow')('flow', { min: 0.01, max: 200 }, { title: 'Flow at the open tap' }),
  note,
});

export type TankRecord = z.output<typeof tankSchema>;
