import type { Figure, FigureUnit } from '../../src/figure.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';

/** Each season left out and told from the others: how often it came as said, the misses before the hits. */
export interface HeldModel {
  readonly said: number;
  readonly hits: number;
  readonly rows: readonly HeldRow[];
  /** Hits not printed; the table to download has them. */
  readonly more: number;
}

interface HeldRow {
  readonly trait: string;
  readonly unit: FigureUnit;
  readonly season: string;
  readonly name: string;
  readonly said: Figure;
  readonly came: number;
  readonly hit: boolean;
}

/** Every miss is printed, and hits up to so many rows. */
const MOST_ROWS = 10;

/** Null when no season could be told from another. */
export function heldModel({ held_out }: CropTrial): HeldModel | null {
  if (held_out.length === 0) return null;
  const misses = held_out.filter(({ told }) => !told.hit);
  const hits = held_out.filter(({ told }) => told.hit);
  const shown = [...misses, ...hits.slice(0, Math.max(MOST_ROWS - misses.length, 0))];
  return {
    said: held_out.length,
    hits: hits.length,
    more: held_out.length - shown.length,
    rows: shown.map(({ trait, season, variety, said, told }) => ({
      trait: trait.id,
      unit: said.unit,
      season: season.label,
      name: variety.name,
      said,
      came: told.came,
      hit: told.hit,
    })),
  };
}
