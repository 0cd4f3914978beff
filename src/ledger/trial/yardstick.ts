import type { Variety } from '../../garden/garden.ts';
import type { TraitValue } from './trait-value.ts';

/** The variety the others are held against, and why this one. */
export interface Yardstick {
  readonly variety: Variety;
  readonly by: 'marked' | 'longest';
}

/**
 * The variety marked as yardstick, where it was ever harvested; else the one harvested in most seasons, of equals the
 * one with most spots, of these the first in the alphabet. Null before any harvest.
 */
export function yardstickOf(varieties: readonly Variety[], values: readonly TraitValue[]): Yardstick | null {
  const grown = varieties
    .map((variety) => {
      const own = values.filter((one) => one.variety === variety.id);
      return {
        variety,
        seasons: new Set(own.map(({ season }) => season)).size,
        mounds: new Set(own.map(({ season, spot }) => `${season} ${spot}`)).size,
      };
    })
    .filter(({ seasons }) => seasons > 0);
  const marked = grown.find(({ variety }) => variety.yardstick === true);
  if (marked) return { variety: marked.variety, by: 'marked' };
  const [longest] = grown.sort((a, b) => b.seasons - a.seasons || b.mounds - a.mounds);
  return longest ? { variety: longest.variety, by: 'longest' } : null;
}
