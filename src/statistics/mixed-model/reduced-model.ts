/**
 * A mixed model with its fixed part projected out, M = I - X(XᵗX)⁻¹Xᵗ: all that restricted likelihood looks at
 * (Patterson & Thompson 1971, Biometrika 58:545-554; from memory). Work is then by levels, not by observations.
 */
import type { Rows, Vector } from './cholesky.ts';
import { type FixedPart, withoutFixed } from './fixed-part.ts';
import { type Places, spread, sumsByLevel } from './random-factor.ts';

export interface ReducedModel {
  readonly fixed: FixedPart;
  readonly places: Places;
  readonly observations: number;
  /** Observations less fixed columns. */
  readonly df: number;
  /** M y, in the values' unit. */
  readonly values: Vector;
  /** Zᵗ M y: its sums by level. */
  readonly sums: Vector;
  /** Zᵗ M Z, levels by levels. */
  readonly crossed: Rows;
}

/** Takes the fixed part out of values and factors. */
export function reducedModel(y: readonly number[], fixed: FixedPart, places: Places): ReducedModel {
  const crossed = Array.from({ length: places.count }, (_, level) => {
    const only = new Float64Array(places.count);
    only[level] = 1;
    return sumsByLevel(places, withoutFixed(fixed, spread(places, only, y.length)));
  });
  const values = withoutFixed(fixed, Float64Array.from(y));
  return {
    fixed,
    places,
    observations: y.length,
    df: y.length - fixed.names.length,
    values,
    sums: sumsByLevel(places, values),
    crossed,
  };
}
