/**
 * What is held likely before any fruit is cut. All of it is on the scale of log time, so it is the same in days and in
 * heat, and for a fruit that takes thirty days as for one that takes ninety.
 */

export interface RipePriors {
  /** Half-normal scale of the spread of fruits within a variety. */
  readonly spread: number;
  /** Half-normal scale of the spread of variety means. */
  readonly variety: number;
  /** Log-normal: the median width, and the standard deviation of its log. */
  readonly just: WidthPrior;
  readonly prime: WidthPrior;
}

export interface WidthPrior {
  readonly median: number;
  readonly log_sd: number;
}

/**
 * Decided by the makers; nothing here is from a source. Spread 0.15: in nine of ten gardens fruits of a variety differ by
 * less than a quarter of the time they take, about ten days of forty, and in half of them by less than a tenth. Varieties
 * of one kind of fruit differ as much again. Just ripe lasts a twentieth of the time, two days of forty, and in nine of
 * ten gardens between half a day and seven; prime lasts an eighth, five days of forty, and between a day and a half and
 * eighteen. The mean itself is left open: no time is favoured on the log scale.
 */
export const WEAK_RIPE_PRIORS: RipePriors = {
  spread: 0.15,
  variety: 0.15,
  just: { median: 0.05, log_sd: 0.7 },
  prime: { median: 0.12, log_sd: 0.7 },
};

/** Throws RangeError unless all numbers are above 0 and finite. */
export function checkPriors({ spread, variety, just, prime }: RipePriors): void {
  for (const [name, value] of Object.entries({
    spread,
    variety,
    just: just.median,
    'just log_sd': just.log_sd,
    prime: prime.median,
    'prime log_sd': prime.log_sd,
  })) {
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`invalid prior: ${name} ${value}`);
  }
}

/** Log density of a spread and two widths, but for a constant. */
export const logPrior = (priors: RipePriors, spread: number, just: number, prime: number): number =>
  -((spread / priors.spread) ** 2) / 2 + logWidth(priors.just, just) + logWidth(priors.prime, prime);

const logWidth = ({ median, log_sd }: WidthPrior, width: number): number => {
  const log = Math.log(width);
  return -log - ((log - Math.log(median)) / log_sd) ** 2 / 2;
};
