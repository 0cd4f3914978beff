/** What is known of when one thing happened: to the day, only between two looks, or not yet when it was last seen. */

/**
 * After `low` and at or before `high`, in any one unit of time. Equal: exactly then. `low` null: nobody looked before
 * (over-ripe when cut: ripe at or before `high`). `high` null: not yet at `low`, and not seen since (lost, unfinished).
 * A thing last seen at the time another happened is taken to have happened later, as survival tables do.
 */
export interface RipeTime {
  readonly low: number | null;
  readonly high: number | null;
}

/** How many observations are of each kind. */
export interface RipeTimeCounts {
  readonly exact: number;
  /** Between two looks (interval-censored). */
  readonly between: number;
  /** At or before the first look (left-censored). */
  readonly before: number;
  /** Not yet when last seen (right-censored). */
  readonly unseen: number;
}

/** Counts the kinds. Throws RangeError for a time that is not finite, low above high, or neither known. */
export function countKinds(observations: readonly RipeTime[]): RipeTimeCounts {
  const kinds = observations.map(kindOf);
  const count = (kind: keyof RipeTimeCounts): number => kinds.filter((one) => one === kind).length;
  return { exact: count('exact'), between: count('between'), before: count('before'), unseen: count('unseen') };
}

function kindOf({ low, high }: RipeTime): keyof RipeTimeCounts {
  const known = [low, high].filter((one) => one !== null);
  const possible = known.length > 0 && known.every(Number.isFinite) && (low === null || high === null || low <= high);
  if (!possible) throw new RangeError(`invalid time: after ${low}, at or before ${high}`);
  if (high === null) return 'unseen';
  if (low === null) return 'before';
  return low === high ? 'exact' : 'between';
}
