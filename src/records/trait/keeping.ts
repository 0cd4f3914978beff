import { record } from '../field/record.ts';
import { measure, sources, span, words } from './trait.ts';

/** How a fruit is taken off, and how long it keeps whole. */
export const keepingTraitSchema = record({
  taking_off: words('How to take it off', 160),
  ...span('store', '_c', 'Where it keeps, °C', 40),
  ...span('keeps_days', '', 'Days it keeps whole', 400),
  cure_days: measure('Days in the warm and dry before it is stored', 60).optional(),
  sources,
});
