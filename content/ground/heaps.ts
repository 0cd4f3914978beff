import { bowlVolume, boxVolume, capVolume, frustumVolume, ridgeVolume } from '../../src/agronomy/heap-volume.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, type FigureUnit, reckoned } from '../../src/figure.ts';
import type { Spot } from '../../src/garden/garden.ts';
import { measuresOf } from '../../src/garden/measures.ts';

/** A heap of common size, in loose earth. Sizes are common practice, no source. */
export interface Heap {
  readonly kind: Spot['kind'];
  /** Across the round, or along a ridge or bed. */
  readonly long_cm: number;
  /** Across a ridge or bed; null for what is round. */
  readonly wide_cm: number | null;
  readonly high_cm: number;
  readonly l: Figure;
  readonly barrows: Figure;
}

/** A bowl pressed into the top of a mound for water. */
export interface Bowl {
  readonly across_cm: number;
  readonly deep_cm: number;
  readonly l: Figure;
  /** Bowls that one can of this garden fills to the brim; 0 for a can smaller than the bowl. */
  readonly from_one_can: number;
}

export interface Heaps {
  /** Of the kinds of spot this garden has, the usual size of each kind first. */
  readonly lines: readonly Heap[];
  /** The usual size of the kind most spots here are. */
  readonly usual: Heap;
  /** Null where nothing grows on a mound. */
  readonly bowl: Bowl | null;
}

type Size = readonly [long_cm: number, wide_cm: number | null, high_cm: number];

const SIZES: Readonly<Record<Spot['kind'], readonly [Size, ...Size[]]>> = {
  mound: [
    [90, null, 25],
    [60, null, 25],
    [120, null, 30],
  ],
  row: [
    [100, 60, 25],
    [100, 90, 30],
  ],
  bed: [
    [100, 100, 15],
    [100, 100, 25],
  ],
  tub: [
    [45, null, 40],
    [60, null, 45],
  ],
};

const BOWL = { across_cm: 30, deep_cm: 8 };

const metres = (cm: number): number => cm / 100;

function litresOf(kind: Spot['kind'], [long_cm, wide_cm, high_cm]: Size): number {
  const [across_m, height_m] = [metres(long_cm), metres(high_cm)];
  const width_m = metres(wide_cm ?? long_cm);
  switch (kind) {
    case 'mound':
      return capVolume({ across_m, height_m });
    case 'row':
      return ridgeVolume({
        base_length_m: across_m,
        base_width_m: width_m,
        top_length_m: across_m,
        top_width_m: 0,
        height_m,
      });
    case 'bed':
      return boxVolume({ length_m: across_m, width_m, height_m });
    case 'tub':
      return frustumVolume({ base_across_m: across_m, top_across_m: across_m, height_m });
  }
}

/** Heaps for the kinds of spot of this garden, mounds where it has no spot at all, in its own barrows and cans. */
export function heapsOf({ garden, ledger }: Facts): Heaps {
  const { can_l, barrow_l } = measuresOf(garden.about);
  const figure = (id: string, value: number, unit: FigureUnit): Figure =>
    reckoned({ id: `ground.${id}`, value, unit, method: 'heap-litres', basis: ledger.bases.of([]) });
  const heap = (kind: Spot['kind'], size: Size): Heap => {
    const [long_cm, wide_cm, high_cm] = size;
    const name = `${kind}_${[long_cm, wide_cm, high_cm].filter((cm) => cm !== null).join('x')}_cm`;
    const l = litresOf(kind, size);
    return {
      kind,
      long_cm,
      wide_cm,
      high_cm,
      l: figure(`${name}.l`, l, 'l'),
      barrows: figure(`${name}.barrows`, l / barrow_l, 'barrows'),
    };
  };
  const kinds = kindsByNumber(garden.spots);
  const [usualKind] = kinds;
  const bowl_l = bowlVolume({ across_m: metres(BOWL.across_cm), depth_m: metres(BOWL.deep_cm) });
  return {
    lines: kinds.flatMap((kind) => SIZES[kind].map((size) => heap(kind, size))),
    usual: heap(usualKind, SIZES[usualKind][0]),
    bowl: kinds.includes('mound')
      ? { ...BOWL, l: figure('bowl.l', bowl_l, 'l'), from_one_can: Math.floor(can_l / bowl_l) }
      : null,
  };
}

/** Kinds of the garden's spots, that of most spots first; mounds alone where there is no spot. */
function kindsByNumber(spots: readonly Spot[]): readonly [Spot['kind'], ...Spot['kind'][]] {
  const count = (kind: Spot['kind']): number => spots.filter((spot) => spot.kind === kind).length;
  const order = Object.keys(SIZES) as Spot['kind'][];
  const [first, ...others] = order.filter((kind) => count(kind) > 0).sort((a, b) => count(b) - count(a));
  return [first ?? 'mound', ...others];
}
