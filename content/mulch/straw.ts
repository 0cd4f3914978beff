import { boxVolume } from '../../src/agronomy/heap-volume.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, type FigureUnit, reckoned } from '../../src/figure.ts';
import type { Spot } from '../../src/garden/garden.ts';
import { measuresOf } from '../../src/garden/measures.ts';

/** Depth of a layer of loose straw as it is laid: common practice, no source. */
export const STRAW_CM = { low: 5, high: 8 };

/** Straw for spots alike in area, at the least and at the full depth. */
export interface StrawLine {
  /** Null for a square metre, where no spot has an area. */
  readonly spots: readonly string[] | null;
  readonly area_m2: number;
  readonly l: { readonly low: number; readonly high: number };
  readonly barrows: { readonly low: number; readonly high: number };
  readonly figures: readonly Figure[];
}

/** Straw for the garden's spots by printed area, the commonest area first; for a square metre where none is known. */
export function strawLines({ garden, ledger, format }: Facts): StrawLine[] {
  const { barrow_l } = measuresOf(garden.about);
  const lineOf = (spots: readonly string[] | null, area_m2: number): StrawLine => {
    const litres = (deep_cm: number): number => boxVolume({ length_m: area_m2, width_m: 1, height_m: deep_cm / 100 });
    const l = { low: litres(STRAW_CM.low), high: litres(STRAW_CM.high) };
    const barrows = { low: l.low / barrow_l, high: l.high / barrow_l };
    const name = `mulch.${spots?.[0] ?? 'square_metre'}`;
    const figure = (part: string, value: number, unit: FigureUnit): Figure =>
      reckoned({ id: `${name}.${part}`, value, unit, method: 'mulch-litres', basis: ledger.bases.of([]) });
    return {
      spots,
      area_m2,
      l,
      barrows,
      figures: [
        figure('l_least', l.low, 'l'),
        figure('l_most', l.high, 'l'),
        figure('barrows_least', barrows.low, 'barrows'),
        figure('barrows_most', barrows.high, 'barrows'),
      ],
    };
  };
  const alike = new Map<string, Spot[]>();
  for (const spot of garden.spots) {
    if (spot.share_m2 === null) continue;
    const key = format.digits(spot.share_m2, 'm2');
    alike.set(key, [...(alike.get(key) ?? []), spot]);
  }
  const groups = [...alike.values()].sort((a, b) => b.length - a.length);
  const lines = groups.flatMap((spots) => {
    const area = spots[0]?.share_m2;
    return area
      ? [
          lineOf(
            spots.map(({ id }) => id),
            area,
          ),
        ]
      : [];
  });
  return lines.length > 0 ? lines : [lineOf(null, 1)];
}
