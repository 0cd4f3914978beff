import type { Reference } from './chapter.ts';
import { sourceOf } from './source-of.ts';

/** Sources by the names that stand for them where there is little room, each once, in the order they are first named. */
export const shortCites = (reference: Reference, ids: readonly string[]): string[] => [
  ...new Set(
    ids.map((id) => {
      const { short, cite } = sourceOf(reference, id);
      return short ?? cite;
    }),
  ),
];
