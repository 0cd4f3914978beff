import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, reckoned } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { nitrogenWanted } from '../../src/ledger/feeding/nitrogen-wanted.ts';
import type { Span } from '../../src/ledger/feeding/span.ts';

/** Nitrogen that sources give a crop in a season. */
export interface Target {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  /** g a m²; null where the crop’s file gives none. */
  readonly n_g_per_m2: Span | null;
  readonly figures: readonly Figure[];
}

export const targetsOf = ({ garden, ledger }: Facts): Target[] =>
  ledger.years.map(({ crop }) => {
    const n = nitrogenWanted(crop);
    const figure = (name: string, value: number): Figure =>
      reckoned({
        id: `feed.${crop.id}.${name}`,
        value,
        unit: 'g_per_m2',
        method: 'nitrogen-given',
        source: crop.feeding?.sources[0] ?? null,
        basis: ledger.bases.of([]),
      });
    return {
      id: crop.id,
      names: cropNames(crop, garden.about.locale),
      n_g_per_m2: n,
      figures: n ? [figure('wanted_n_least', n.low), figure('wanted_n_most', n.high)] : [],
    };
  });
