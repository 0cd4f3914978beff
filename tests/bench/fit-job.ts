import type { PosteriorData } from '../../src/statistics/posterior/posterior-data.ts';
import type { Mark } from './watched.ts';

/** What the process that fits is to do. */
export interface FitJob {
  readonly data: PosteriorData;
  /** Draws of the posterior; 0 for none. */
  readonly draws: number;
}

/** What one fit took, in seconds, and what it found; components in the data's order. */
export interface Fitted {
  /** The least of the repeats, each measure by itself. */
  readonly took: Mark;
  readonly components: readonly number[];
  readonly residual_variance: number;
  readonly reml_criterion: number;
}

/** What the process tells. */
export interface FitTold extends Fitted {
  /** Null when no draws were asked for. */
  readonly posterior_took: Mark | null;
}
