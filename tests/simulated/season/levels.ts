import type { ResidualShape } from './residual.ts';
import type { Traits } from './traits.ts';

/** Where the traits of a fruit come from: the mean over all varieties, and the standard deviation of each level's effect. */
export interface Levels {
  readonly mean: Traits;
  readonly variety: Traits;
  readonly season: Traits;
  readonly variety_by_season: Traits;
  /** Of blocks, the same in all seasons; unused without blocks. */
  readonly block: Traits;
  /** Of mounds within a season. */
  readonly mound: Traits;
  readonly fruit: Traits;
  readonly fruit_shape: { readonly brix: ResidualShape; readonly log_mass: ResidualShape };
}
