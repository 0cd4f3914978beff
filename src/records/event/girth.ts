import { reference } from '../field/id.ts';
import { quantity } from '../field/quantity.ts';
import { record } from '../field/record.ts';
import { when } from '../field/when.ts';
import { entryId, written } from './written.ts';

/** String round the middle of a growing fruit. */
export const girthSchema = record({
  id: entryId,
  measured_on: when({ title: 'Measured' }),
  fruit: reference('Fruit'),
  ...quantity('length')('girth', { min: 1, max: 500 }, { title: 'Girth', description: 'String round the middle.' }),
  ...written,
});
