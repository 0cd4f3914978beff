import type { Facts } from '../../src/book/chapter.ts';

/** A paper tape measure in pieces, true to size: ticks by place along the piece, numbered in print units. */
export interface GirthStripModel {
  readonly unit: 'cm' | 'in';
  /** Length of one piece, mm. */
  readonly piece_mm: number;
  readonly pieces: readonly { readonly ticks: readonly Tick[] }[];
}

interface Tick {
  readonly at_mm: number;
  /** Written at whole units alone; null at halves. */
  readonly label: string | null;
}

const CM = { unit: 'cm', unit_mm: 10, per_piece: 16 } as const;
const INCHES = { unit: 'in', unit_mm: 25.4, per_piece: 6 } as const;
const PIECES = 6;

/** Six pieces glued end to end go round a fruit of 96 cm, or of 36 inches. */
export function girthStripModel({ garden: { about } }: Facts): GirthStripModel {
  const { unit, unit_mm, per_piece } = about.units === 'us' ? INCHES : CM;
  return {
    unit,
    piece_mm: unit_mm * per_piece,
    pieces: Array.from({ length: PIECES }, (_, piece) => ({
      ticks: Array.from({ length: 2 * per_piece }, (_tick, half) => ({
        at_mm: (half * unit_mm) / 2,
        label: half % 2 === 0 ? String(piece * per_piece + half / 2) : null,
      })),
    })),
  };
}
