/**
 * A mixed model with its fixed part projected out, M = I - X(XᵗX)⁻¹Xᵗ: all that restricted likelihood looks at
 * (Patterson & Thompson 1971, Biometrika 58:545-554; from memory). Work is then by levels, not by observations, and
 * only where levels meet.
 */
import { type CrossedEquations, crossedEquations } from '../crossed/crossed-equations.ts';
import { type FixedPart, withoutFixed } from '../crossed/fixed-part.ts';
import type { Places } from '../crossed/random-factor.ts';
import type { Vector } from '../linear/cholesky.ts';

export interface ReducedModel {
  readonly fixed: FixedPart;
  readonly places: Places;
  readonly observations: number;
  /** Observations less fixed columns. */
  readonly df: number;
  /** M y, in the values' unit. */
  readonly values: Vector;
  /** Henderson's equations of M y. */
  readonly equations: CrossedEquations;
}

/** Takes the fixed part out of values and lays out the equations. */
export function reducedModel(y: readonly number[], fixed: FixedPart, places: Places): ReducedModel {
  const values = withoutFixed(fixed, Float64Array.from(y));
  return {
    fixed,
    places,
    observations: y.length,
    df: y.length - fixed.names.length,
    values,
    equations: crossedEquations(values, fixed, places),
  };
}
