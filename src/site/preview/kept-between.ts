import type { Kept } from '../../kept.ts';

/** Kept values of a process that builds again and again. */
export interface KeptBetween extends Kept {
  /** A whole build is done: what it did not ask for is dropped, so that a day of saves does not fill the memory. */
  readonly turn: () => void;
}

/** Keeps in memory what the last whole build and those since have used, and takes the rest from `base`, where it keeps nothing. */
export function keptBetween(base: Kept): KeptBetween {
  let last = new Map<string, unknown>();
  let now = new Map<string, unknown>();
  const keyOf = (kind: string, inputs: string): string => `${kind}\n${inputs}`;
  return {
    find: (kind, inputs) => {
      const key = keyOf(kind, inputs);
      const value = now.get(key) ?? last.get(key) ?? base.find(kind, inputs);
      if (value !== undefined) now.set(key, value);
      return value;
    },
    keep: (kind, inputs, value) => void now.set(keyOf(kind, inputs), value),
    turn: () => {
      last = now;
      now = new Map();
    },
  };
}
