/**
 * How much is written down. Little: what was planted, what came off, one word of taste, rain in words.
 * Some: each fruit, or each day's gauge, by itself. Full: weighed, measured and looked over as well.
 */
export const LEVELS = ['little', 'some', 'full'] as const;
export type Level = (typeof LEVELS)[number];

export interface RecordLevel {
  /** The least with which the page can answer its question. */
  readonly needs: Level;
  /** What this garden kept of it; null when not even a little. */
  readonly kept: Level | null;
  /** What the page would gain next; null when everything is kept. */
  readonly next: Level | null;
}

/** The highest level whose condition holds together with all below it. */
export function recordLevel(needs: Level, holds: Readonly<Record<Level, boolean>>): RecordLevel {
  const missing = LEVELS.findIndex((level) => !holds[level]);
  const count = missing < 0 ? LEVELS.length : missing;
  return { needs, kept: LEVELS[count - 1] ?? null, next: LEVELS[count] ?? null };
}
