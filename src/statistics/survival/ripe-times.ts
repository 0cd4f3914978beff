/** When a kind of fruit is ripe, from fruits seen ripe to the day, between two looks, or never. */
import { because } from '../../figure.ts';
import { type KaplanMeierRow, kaplanMeier } from './kaplan-meier.ts';
import { type MedianInterval, medianInterval } from './median-interval.ts';
import { ends, type Quantile, quantileOf, type Seen } from './quantile.ts';
import { countKinds, type RipeTime, type RipeTimeCounts } from './ripe-time.ts';
import { type Mass, turnbull } from './turnbull.ts';

export interface Step extends Seen {
  /** Share still to come after this span; where inside the span it falls cannot be told. */
  readonly remaining: number;
  /** Greenwood's variance of `remaining`; null when none remains, and for the Turnbull estimate. */
  readonly variance: number | null;
}

export interface RipeTimes {
  /** Kaplan-Meier when every time is exact or cut off, Turnbull otherwise. */
  readonly method: 'kaplan-meier' | 'turnbull';
  readonly n: number;
  readonly counts: RipeTimeCounts;
  /** In order of time; with `unseen` they hold all. */
  readonly steps: readonly Step[];
  /** The share whose time lies beyond the last look, and that look; null when all were seen. */
  readonly unseen: { readonly after: number; readonly share: number } | null;
  readonly median: Quantile;
  /** 90 %, for Kaplan-Meier; both ends null with a reason for Turnbull, which no such formula fits. */
  readonly median_interval: MedianInterval;
  readonly earliest: Quantile;
  readonly latest: Quantile;
  /** The time by which a share (above 0, at most 1) is ripe. */
  readonly quantile: (share: number) => Quantile;
}

/**
 * The estimate, or the refusal when there is nothing to estimate from. All observations are taken as independent:
 * with several fruits to a mound the interval is too short. Throws RangeError for an observation `countKinds` refuses.
 */
export function ripeTimes(
  observations: readonly RipeTime[],
): RipeTimes | { readonly cannot: { readonly code: 'no-observations' } } {
  if (observations.length === 0) return { cannot: { code: 'no-observations' } };
  const counts = countKinds(observations);
  const method = counts.between + counts.before === 0 ? 'kaplan-meier' : 'turnbull';
  const rows = method === 'kaplan-meier' ? kaplanMeier(observations) : null;
  const steps = rows ? stepsOfRows(rows) : stepsOfMasses(turnbull(observations));
  return {
    method,
    n: observations.length,
    counts,
    steps,
    unseen: unseenAfter(steps, observations),
    median: quantileOf(steps, 0.5),
    median_interval: rows ? medianInterval(rows) : { low: null, high: null, level: 0.9, reason: because('looks-only') },
    ...ends(steps),
    quantile: (share) => quantileOf(steps, share),
  };
}

function stepsOfRows(rows: readonly KaplanMeierRow[]): Step[] {
  return rows.map(({ time, remaining, log_variance }, index) => ({
    span: { low: time, high: time },
    share: (rows[index - 1]?.remaining ?? 1) - remaining,
    remaining,
    variance: log_variance === null ? null : remaining ** 2 * log_variance,
  }));
}

function stepsOfMasses(masses: readonly Mass[]): Step[] {
  const all = masses.at(-1)?.place.high !== null;
  let seen = 0;
  return masses.flatMap(({ place: { low, high }, share }, index) => {
    if (high === null) return [];
    seen += share;
    // A sum of all shares would leave a rounding where nothing is left.
    const remaining = all && index === masses.length - 1 ? 0 : 1 - seen;
    return [{ span: { low, high }, share, remaining, variance: null }];
  });
}

function unseenAfter(steps: readonly Step[], observations: readonly RipeTime[]): RipeTimes['unseen'] {
  const share = steps.at(-1)?.remaining ?? 1;
  const lastLooks = observations.flatMap(({ low, high }) => (low !== null && high === null ? [low] : []));
  return share === 0 ? null : { after: Math.max(...lastLooks), share };
}
