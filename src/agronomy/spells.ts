/** Runs of days in a row that share a property, such as days without rain, in a series with gaps. */

export interface Run {
  /** Place of its first day in the series. */
  readonly first: number;
  /** Days, at least one. */
  readonly length: number;
  /** Whether a day nobody looked at touches either end, so that the run is at least this long. */
  readonly open: boolean;
}

export interface LongestRun {
  /** The longest run seen, the earliest of equals; null when no day is known to have the property. */
  readonly run: Run | null;
  /** Days the longest run would have if every unknown day had the property; the run's own length when none hides more. */
  readonly at_most: number;
}

/**
 * The runs of true days, in the order of the days. null is a day nobody looked at: it ends a run and leaves it open.
 * The ends of the series are no such days: a run that reaches them is only as long as the series shows.
 */
export function runsOf(days: readonly (boolean | null)[]): Run[] {
  const runs: Run[] = [];
  for (let first = 0; first < days.length; first++) {
    if (days[first] !== true) continue;
    let end = first;
    while (days[end] === true) end += 1;
    runs.push({ first, length: end - first, open: days[first - 1] === null || days[end] === null });
    first = end;
  }
  return runs;
}

/** The longest run seen, and how long it could be at most: an unknown day may join two runs or hide a longer one. */
export function longestRun(days: readonly (boolean | null)[]): LongestRun {
  const hopeful = longestOf(runsOf(days.map((day) => day ?? true)));
  return { run: longestOf(runsOf(days)), at_most: hopeful?.length ?? 0 };
}

const longestOf = (runs: readonly Run[]): Run | null =>
  runs.reduce<Run | null>((longest, run) => (longest === null || run.length > longest.length ? run : longest), null);
