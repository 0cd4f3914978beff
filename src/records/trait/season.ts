import { record } from '../field/record.ts';
import { sources, span } from './trait.ts';

/** Days from planting or sowing in place to the end of the harvest, as sources give them. */
export const seasonTraitSchema = record({
  ...span('days', '', 'Days the crop stands', 250),
  sources,
});
