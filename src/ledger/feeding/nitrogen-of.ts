import { massOfVolume, nutrientsIn } from '../../agronomy/nutrients.ts';
import type { EventOf } from '../../garden/event.ts';
import type { Measures } from '../../garden/measures.ts';
import type { MaterialRecord } from '../../records/material.ts';
import { type Span, spanOf } from './span.ts';

/** Why an entry has no number: nobody weighed or measured it, or neither a label nor a source tells what it holds. */
export type Lacking = 'amount-untold' | 'content-untold';

/** Nitrogen of one entry of feeding. */
export interface FedNitrogen {
  /** All of it, kg; null when `lacks` tells why. */
  readonly kg: Span | null;
  /** What the first year has of it, kg; null also where nobody tells the share. */
  readonly first_year_kg: Span | null;
  readonly lacks: Lacking | null;
}

type Feeding = Pick<EventOf<'feeding'>, 'material' | 'mass_kg' | 'volume_l' | 'barrows' | 'label_n'>;

const GRAMS_PER_KG = 1000;
const ALL: Span = { low: 100, high: 100 };
const NOTHING: Span = { low: 0, high: 0 };

/** Whether what was given holds nitrogen: by its label, else by the sources; `perhaps` where neither tells. */
export function bearsNitrogen(
  { label_n }: Pick<Feeding, 'label_n'>,
  material: MaterialRecord,
): 'yes' | 'perhaps' | 'no' {
  const most = label_n ?? material.n_of_100_high;
  if (most !== null) return most > 0 ? 'yes' : 'no';
  return material.kind === 'lime-or-ash' ? 'no' : 'perhaps';
}

/**
 * Nitrogen by the label, else by what sources tell of the material, times its mass; a volume is weighed by the
 * sources. Null for an amount in words or cups, and for a litre of which nobody tells the weight.
 */
export function nitrogenOf(feeding: Feeding, material: MaterialRecord, measures: Measures): FedNitrogen {
  if (bearsNitrogen(feeding, material) === 'no') return { kg: NOTHING, first_year_kg: NOTHING, lacks: null };
  const content = contentOf(feeding, material);
  if (!content) return { kg: null, first_year_kg: null, lacks: 'content-untold' };
  const mass = massOf(feeding, material, measures);
  if (!mass) return { kg: null, first_year_kg: null, lacks: 'amount-untold' };
  const kg = { low: nitrogenIn(mass.low, content.low), high: nitrogenIn(mass.high, content.high) };
  const share = firstYearOf(material);
  return {
    kg,
    first_year_kg: share && { low: (kg.low * share.low) / 100, high: (kg.high * share.high) / 100 },
    lacks: null,
  };
}

const contentOf = ({ label_n }: Feeding, { n_of_100_low, n_of_100_high }: MaterialRecord): Span | null =>
  label_n === null ? spanOf(n_of_100_low, n_of_100_high) : { low: label_n, high: label_n };

function massOf(
  { mass_kg, volume_l, barrows }: Feeding,
  material: MaterialRecord,
  { barrow_l }: Measures,
): Span | null {
  if (mass_kg !== null) return { low: mass_kg, high: mass_kg };
  const litres = volume_l ?? (barrows === null ? null : barrows * barrow_l);
  const weighs = spanOf(material.kg_per_l_low, material.kg_per_l_high);
  if (litres === null || !weighs) return null;
  const weigh = (kg_per_l: number): number => massOfVolume(litres, kg_per_l * GRAMS_PER_KG);
  return { low: weigh(weighs.low), high: weigh(weighs.high) };
}

/** Bought and liquid feeds are taken as used up within the year: common practice, no source. */
function firstYearOf({ kind, state, first_year_n_of_100_low, first_year_n_of_100_high }: MaterialRecord): Span | null {
  const told = spanOf(first_year_n_of_100_low, first_year_n_of_100_high);
  if (told) return told;
  return state === 'none' && (kind === 'bought-feed' || kind === 'liquid-feed') ? ALL : null;
}

const nitrogenIn = (mass_kg: number, n_percent: number): number =>
  nutrientsIn(mass_kg, { n_percent, p_percent: null, k_percent: null, as: 'oxides' }).n_kg ?? 0;
