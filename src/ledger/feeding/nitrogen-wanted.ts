import type { Crop } from '../../garden/garden.ts';
import type { Span } from './span.ts';

/** kg a hectare in one g a m². */
const KG_HA_PER_G_M2 = 10;

/** Nitrogen that sources give a crop in a season, g a m²; null where its file gives none. */
export const nitrogenWanted = ({ feeding }: Crop): Span | null =>
  feeding && { low: feeding.n_low_kg_ha / KG_HA_PER_G_M2, high: feeding.n_high_kg_ha / KG_HA_PER_G_M2 };
