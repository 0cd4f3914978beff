/** When a given share has happened, as far as the observations can tell. */
import { because, type Reason } from '../../figure.ts';

/** Sums of shares that differ by less are equal. */
const SAME_SHARE = 1e-9;

export interface Span {
  /** Null when nobody looked early enough. */
  readonly low: number | null;
  readonly high: number;
}

/**
 * After `low`, at or before `high`; exactly then when they are equal. When the share is met to the dot, every time
 * up to the next at which something happened serves, and the span reaches that far (R prints its middle). Null when
 * the share was not reached: the reason then has the share `reached`.
 */
export interface Quantile {
  readonly span: Span | null;
  readonly reason: Reason | null;
}

/** A share of all, and where it happened. */
export interface Seen {
  readonly span: Span;
  readonly share: number;
}

/**
 * The time by which `share` (above 0, at most 1) of all had happened, from what was seen in order of time.
 * Throws RangeError for any other share.
 */
export function quantileOf(seen: readonly Seen[], share: number): Quantile {
  if (!(share > 0 && share <= 1)) throw new RangeError(`invalid share: ${share}`);
  let sum = 0;
  for (const [index, { span, share: own }] of seen.entries()) {
    sum += own;
    if (sum < share - SAME_SHARE) continue;
    const met = sum <= share + SAME_SHARE;
    const until = (met ? seen[index + 1] : undefined) ?? { span };
    return { span: { low: span.low, high: until.span.high }, reason: null };
  }
  return { span: null, reason: because('not-reached', { share, reached: sum }) };
}

/** The first and the last place where something happened; null with a reason when nothing was seen to happen. */
export function ends(seen: readonly Seen[]): { readonly earliest: Quantile; readonly latest: Quantile } {
  const at = (index: number): Quantile => {
    const span = seen.at(index)?.span ?? null;
    return { span, reason: span === null ? because('none-seen') : null };
  };
  return { earliest: at(0), latest: at(-1) };
}
