/** The only places where the likeliest distribution can put anything, and which observation covers which of them. */
import type { RipeTime } from './ripe-time.ts';

/** After `low`, at or before `high`; exactly then when equal; null is without end on that side. */
export type Place = RipeTime;

export interface Innermost {
  /** In order of time; no two overlap. */
  readonly places: readonly Place[];
  /** For each different observation the first and last place it covers (all between too) and how many are alike. */
  readonly covers: readonly Cover[];
}

export interface Cover {
  readonly first: number;
  readonly last: number;
  readonly count: number;
}

/** Order of ends that share a time: an exact time begins and ends there before anything that begins after it. */
const EXACT_BEGIN = 0;
const END = 1;
const OPEN_BEGIN = 2;

interface End {
  readonly time: number;
  readonly kind: typeof EXACT_BEGIN | typeof END | typeof OPEN_BEGIN;
}

const order = (a: End, b: End): number => (a.time === b.time ? a.kind - b.kind : a.time - b.time);

/**
 * Stretches that begin where some observation begins and end where some observation ends, with no other beginning
 * or end inside. Turnbull 1976, J. R. Statist. Soc. B 38:290-295. Every observation covers at least one, every place
 * is the first one of some observation, and so the shares that fit best are never in doubt between two sets.
 */
export function innermost(observations: readonly RipeTime[]): Innermost {
  const spans = observations.map((one) => ({ begin: beginOf(one), end: endOf(one) }));
  const ends = spans.flatMap(({ begin, end }) => [begin, end]).sort(order);
  const inner = ends.flatMap((begin, index) => {
    const end = ends[index + 1];
    return begin.kind !== END && end?.kind === END ? [{ begin, end }] : [];
  });
  const counts = new Map<string, Cover>();
  for (const span of spans) {
    const first = inner.findIndex((one) => order(one.begin, span.begin) >= 0);
    const last = inner.findLastIndex((one) => order(one.end, span.end) <= 0);
    const key = `${first} ${last}`;
    counts.set(key, { first, last, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return {
    places: inner.map(({ begin, end }) => ({ low: finiteOrNull(begin.time), high: finiteOrNull(end.time) })),
    covers: [...counts.values()].sort((a, b) => a.first - b.first || a.last - b.last),
  };
}

const beginOf = ({ low, high }: RipeTime): End => ({
  time: low ?? Number.NEGATIVE_INFINITY,
  kind: low !== null && low === high ? EXACT_BEGIN : OPEN_BEGIN,
});

const endOf = ({ high }: RipeTime): End => ({ time: high ?? Number.POSITIVE_INFINITY, kind: END });

const finiteOrNull = (time: number): number | null => (Number.isFinite(time) ? time : null);
