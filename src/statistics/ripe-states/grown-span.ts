/** Between what times a fruit had grown since it set, and what share of a variety's fruits is ripe by then. */
import { normalShare } from './normal-table.ts';

export interface GrownSpan {
  readonly from: number;
  readonly to: number;
  /** Minus infinity at 0. */
  readonly log_from: number;
  readonly log_to: number;
  /** Mean and variance of the log time, for spans that are short beside their end. */
  readonly log_mean: number;
  readonly log_variance: number;
}

/** Spans with less of the variance of log times than this are added to it: the share is then right to 1 in 100,000. */
const NARROW = 0.02;

/** `from` is 0 or more, `to` at least that and above 0. */
export const grownSpan = (from: number, to: number): GrownSpan => {
  const [log_from, log_to] = [Math.log(from), Math.log(to)];
  const log_variance = (log_to - log_from) ** 2 / 12;
  return { from, to, log_from, log_to, log_mean: Math.log((from + to) / 2) - log_variance / 2, log_variance };
};

/** Whether a span is short beside a standard deviation of log times, and can be added to it. */
export const isNarrow = ({ log_variance }: GrownSpan, sd: number): boolean => log_variance < NARROW * sd * sd;

/** The standard deviation of log times less the span's, for a narrow one. */
export const sdWith = ({ log_variance }: GrownSpan, sd: number): number => Math.sqrt(sd * sd + log_variance);

/**
 * Share of fruits that are ripe, averaged over times t spread evenly over the span, when log times have this mean and
 * standard deviation:
 *   ∫ Φ((log t - m) / σ) dt = t Φ(z) - exp(m + σ²/2) Φ(z - σ),   z = (log t - m) / σ,
 * by parts; the second term is the part of a log-normal mean that lies below t.
 */
export function ripeShare(span: GrownSpan, mean: number, sd: number): number {
  if (isNarrow(span, sd)) return normalShare((span.log_mean - mean) / sdWith(span, sd));
  const all = Math.exp(mean + (sd * sd) / 2);
  const area = below(span.to, span.log_to, mean, sd, all) - below(span.from, span.log_from, mean, sd, all);
  return area / (span.to - span.from);
}

/** The same of those not yet ripe, with the digits of a small share. */
export function unripeShare(span: GrownSpan, mean: number, sd: number): number {
  if (isNarrow(span, sd)) return normalShare((mean - span.log_mean) / sdWith(span, sd));
  const all = Math.exp(mean + (sd * sd) / 2);
  const area = above(span.from, span.log_from, mean, sd, all) - above(span.to, span.log_to, mean, sd, all);
  return area / (span.to - span.from);
}

/** Area under the ripe share, from 0 to a time; `all` is the mean time. */
function below(time: number, log: number, mean: number, sd: number, all: number): number {
  if (time === 0) return 0;
  const z = (log - mean) / sd;
  return time * normalShare(z) - all * normalShare(z - sd);
}

/** Area under the unripe share, from a time on. */
function above(time: number, log: number, mean: number, sd: number, all: number): number {
  if (time === 0) return all;
  const z = (log - mean) / sd;
  return all * normalShare(sd - z) - time * normalShare(-z);
}
