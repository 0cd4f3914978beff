import { createHash } from 'node:crypto';

/** The sets of records under the book's figures, each listed once. */
export interface Bases {
  /** The id of a set of record keys: the first 8 hex digits of the SHA-256 of the sorted keys. */
  readonly of: (keys: readonly string[]) => string;
  /** Every set asked for so far, by id, ids sorted. */
  readonly all: () => Readonly<Record<string, readonly string[]>>;
}

/** Throws Error when two different sets share an id: 1 in 2³² for any two. */
export function createBases(): Bases {
  const sets = new Map<string, readonly string[]>();
  return {
    of: (keys) => {
      const sorted = [...new Set(keys)].sort();
      const id = createHash('sha256').update(sorted.join('\n')).digest('hex').slice(0, 8);
      const known = sets.get(id);
      if (known && known.join('\n') !== sorted.join('\n'))
        throw new Error(`invalid basis: two sets of records share the id ${id}`);
      sets.set(id, sorted);
      return id;
    },
    all: () => Object.fromEntries([...sets].sort(([a], [b]) => (a < b ? -1 : 1))),
  };
}
