/**
 * What a grower would lose, in three words. Each step counts double: the coarsest scale that keeps three words apart,
 * and only ratios matter, so "much" is four times "little" whatever either is worth. Decided by the makers; no source.
 */
export const LOSS = { little: 1, some: 2, much: 4 } as const;

export type LossWord = keyof typeof LOSS;

/** How much is lost by each thing that can go wrong. */
export interface Losses {
  /** Picked before it was ripe. */
  readonly unripe: LossWord;
  /** Burst by the rain. */
  readonly split: LossWord;
  /** Thinned by the rain, yet whole. */
  readonly dilution: LossWord;
  /** Gone over, eaten or stolen before the next look. */
  readonly lost: LossWord;
}

/**
 * Until a grower says otherwise. An unripe fruit does not ripen on the shelf and a lost one is lost: much. A burst one
 * is mostly eaten the same day: some. A thinned one is eaten all the same: little.
 */
export const USUAL_LOSSES: Losses = { unripe: 'much', split: 'some', dilution: 'little', lost: 'much' };
