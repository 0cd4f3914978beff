/**
 * In what order to take the unknowns of a sparse set of equations away, and which stay tied to which on the way: always
 * the one with the fewest ties next, so that a mound, tied to its own variety only, costs next to nothing. Minimum
 * degree: George & Liu 1981, Computer Solution of Large Sparse Positive Definite Systems, chapter 5 (from memory).
 */

/** Unknowns by the places of their elimination, 0 first. */
export interface Elimination {
  /** The unknown at each place. */
  readonly unknown: readonly number[];
  /** For each place the later places it is tied to when its turn comes, ascending. */
  readonly later: readonly (readonly number[])[];
}

/**
 * The first `early` unknowns by their ties, the others behind them in their own order. `ties` holds for each unknown
 * the others it has a coefficient with, both ways round, and is used up.
 */
export function eliminationOf(ties: readonly Set<number>[], early: number): Elimination {
  const unknown: number[] = [];
  const met: (readonly number[])[] = [];
  const waiting = new Set(ties.keys());
  while (waiting.size > 0) {
    const next = fewestTies(ties, waiting, early);
    waiting.delete(next);
    const tied = [...(ties[next] ?? [])];
    for (const one of tied) {
      const own = ties[one];
      own?.delete(next);
      for (const other of tied) if (other !== one) own?.add(other);
    }
    unknown.push(next);
    met.push(tied);
  }
  const place = new Map(unknown.map((one, at) => [one, at]));
  const later = met.map((tied) => tied.map((one) => place.get(one) ?? 0).sort((a, b) => a - b));
  return { unknown, later };
}

function fewestTies(ties: readonly Set<number>[], waiting: ReadonlySet<number>, early: number): number {
  let best = -1;
  for (const one of waiting) {
    if (one >= early) return best < 0 ? one : best;
    if (best < 0 || (ties[one]?.size ?? 0) < (ties[best]?.size ?? 0)) best = one;
  }
  return best;
}
