/**
 * What was made before from the same inputs, so that it need not be made again. A kept value is plain data (what JSON
 * can hold to the last bit), is never changed, and is the value that would be made now: keeping changes no result.
 */
export interface Kept {
  /** Undefined when nothing is kept of these inputs. `kind` says what is made of them: two makers never share one. */
  readonly find: (kind: string, inputs: string) => unknown;
  readonly keep: (kind: string, inputs: string, value: unknown) => void;
}

export const NOTHING_KEPT: Kept = { find: () => undefined, keep: () => {} };

/** Keeps everything as long as the process runs. */
export function keptInMemory(): Kept {
  const values = new Map<string, unknown>();
  const keyOf = (kind: string, inputs: string): string => `${kind}\n${inputs}`;
  return {
    find: (kind, inputs) => values.get(keyOf(kind, inputs)),
    keep: (kind, inputs, value) => void values.set(keyOf(kind, inputs), value),
  };
}

/** The value kept of these inputs, or made now and kept. */
export function keptOr<T>(kept: Kept, kind: string, inputs: string, make: () => T): T {
  const before = kept.find(kind, inputs) as T | undefined;
  if (before !== undefined) return before;
  const value = make();
  kept.keep(kind, inputs, value);
  return value;
}
