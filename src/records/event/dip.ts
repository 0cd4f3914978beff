import type { z } from 'zod';
import { yesNo } from '../field/choice.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** How full the tank was: a stick dipped to its floor, or the litres where somebody reads them off. */
export const dipSchema = record({
  id: entryId,
  dipped_on: when({ title: 'Dipped' }),
  ...quantity('length')('depth', { min: 0, max: 500 }, { title: 'Depth of water' }),
  ...quantity('volume')('volume', { min: 0, max: 100_000 }, { title: 'Water in it' }),
  overflowed: yesNo({ title: 'Ran over since the last dip' }).optional(),
  ...written,
});

export type DipRecord = z.output<typeof dipSchema>;
