import { record } from '../field/record.ts';
import { measure, sources, span } from './trait.ts';

/** Nutrients a crop is given in a season, as elements: N, P and K, in kg a hectare (10 are 1 g a m²). */
export const feedingTraitSchema = record({
  ...span('n', '_kg_ha', 'Nitrogen, kg a hectare', 600),
  p_low_kg_ha: measure('Phosphorus, kg a hectare, least', 600).optional(),
  p_high_kg_ha: measure('Phosphorus, kg a hectare, most', 600).optional(),
  k_low_kg_ha: measure('Potassium, kg a hectare, least', 600).optional(),
  k_high_kg_ha: measure('Potassium, kg a hectare, most', 600).optional(),
  sources,
});
