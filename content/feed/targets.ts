import type { Facts } from '../../src/book/chapter.ts';
import type { Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Span } from '../../src/ledger/feeding/nitrogen-of.ts';

/** Nitrogen that sources give a crop in a season. */
export interface Target {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  /** g a m²; null where the crop’s file gives none. */
  readonly n_g_per_m2: Span | null;
  readonly figures: readonly Figure[];
}

/** kg a hectare in one g a m². */
const KG_HA_PER_G_M2 = 10;

export const targetsOf = ({ garden, ledger }: Facts): Target[] =>
  ledger.years.map(({ crop }) => {
    const { feeding } = crop;
    const n = feeding && { low: feeding.n_low_kg_ha / KG_HA_PER_G_M2, high: feeding.n_high_kg_ha / KG_HA_PER_G_M2 };
    const figure = (name: string, value: number): Figure => ({
      id: `feed.${crop.id}.${name}`,
      value,
      unit: 'g_per_m2',
      interval: null,
      n: 0,
      replicate: null,
      reach: 'next-summer-here',
      method: 'nitrogen-given',
      source: feeding?.sources[0] ?? null,
      basis: ledger.bases.of([]),
      reason: null,
    });
    return {
      id: crop.id,
      names: cropNames(crop, garden.about.locale),
      n_g_per_m2: n,
      figures: n ? [figure('wanted_n_least', n.low), figure('wanted_n_most', n.high)] : [],
    };
  });
