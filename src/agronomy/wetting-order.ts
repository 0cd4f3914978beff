/** A day of one layer of soil: whether its water comes before or after what is drawn from it. */

/**
 * `early`: the day's water comes first, what the layer cannot hold runs through, and the plants draw on the rest (the
 * table of example 38 of FAO Irrigation and Drainage Paper 56). `late`: the plants draw first, and only what is then too
 * much runs through (the paper's Eq. 88 as it is written). The paper has both, and after a soaking they differ by a
 * day's draught.
 */
export type WettingOrder = 'early' | 'late';

/** Depletions below the full layer, mm. */
export interface LayerDay {
  /** What the plants meet. */
  readonly seen_mm: number;
  readonly end_mm: number;
  /** Water the layer could not hold. */
  readonly through_mm: number;
}

/** The layer's day; `draw` gives the mm drawn from a layer this far depleted, and keeps within what it can give. */
export function layerDay(
  start_mm: number,
  water_mm: number,
  order: WettingOrder,
  draw: (seen_mm: number) => number,
): LayerDay {
  if (order === 'early') {
    const seen_mm = Math.max(start_mm - water_mm, 0);
    return { seen_mm, end_mm: seen_mm + draw(seen_mm), through_mm: Math.max(water_mm - start_mm, 0) };
  }
  const drawn_mm = start_mm + draw(start_mm);
  return {
    seen_mm: start_mm,
    end_mm: Math.max(drawn_mm - water_mm, 0),
    through_mm: Math.max(water_mm - drawn_mm, 0),
  };
}
