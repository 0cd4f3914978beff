/** What a list costs its grower in the season after, against other ways to make one of that length. */

export interface ListChoice {
  readonly listed: readonly string[];
  /** All that could have been listed. */
  readonly able: readonly string[];
  /** By variety: raw means, what goes on to every summer, and what the next one brought. */
  readonly raw: ReadonlyMap<string, number>;
  readonly lasting: ReadonlyMap<string, number>;
  readonly next: ReadonlyMap<string, number>;
}

/**
 * How far the next season's worth falls short of that of the list of one who knows all but the season to come: of the
 * list's members on average, and of its best.
 */
export interface Regret {
  readonly length: number;
  readonly ours: Short;
  readonly raw: Short;
  /** Expected of a list drawn by lot. */
  readonly lot: Short;
}

export interface Short {
  readonly average: number;
  readonly best: number;
}

/** Null when nothing is listed, or everything. */
export function regretOf({ listed, able, raw, lasting, next }: ListChoice): Regret | null {
  const length = listed.length;
  if (length === 0 || length >= able.length) return null;
  const top = (by: ReadonlyMap<string, number>): string[] =>
    [...able].sort((a, b) => (by.get(b) ?? 0) - (by.get(a) ?? 0)).slice(0, length);
  const brought = (list: readonly string[]): Short => {
    const own = list.map((variety) => next.get(variety) ?? Number.NaN);
    return { average: own.reduce((sum, one) => sum + one, 0) / own.length, best: Math.max(...own) };
  };
  const known = brought(top(lasting));
  const short = ({ average, best }: Short): Short => ({ average: known.average - average, best: known.best - best });
  return {
    length,
    ours: short(brought(listed)),
    raw: short(brought(top(raw))),
    lot: short({
      average: brought(able).average,
      best: bestByLot(
        able.map((one) => next.get(one) ?? 0),
        length,
      ),
    }),
  };
}

/** Expected highest of some drawn without putting back: the one at place i (from 0) of n is it in C(n-1-i, k-1) of C(n, k) draws. */
function bestByLot(values: readonly number[], length: number): number {
  const sorted = values.toSorted((a, b) => b - a);
  const all = choose(sorted.length, length);
  return sorted.reduce((sum, value, at) => sum + (value * choose(sorted.length - 1 - at, length - 1)) / all, 0);
}

function choose(n: number, k: number): number {
  if (k > n) return 0;
  return Array.from({ length: k }, (_, at) => (n - at) / (at + 1)).reduce((product, one) => product * one, 1);
}
