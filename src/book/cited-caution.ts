import type { CautionRecord } from '../records/caution.ts';
import type { Reference } from './chapter.ts';

/** A caution with the words of its sources, as pages print it. */
export interface CitedCaution extends CautionRecord {
  readonly cites: readonly string[];
}

export const citedCaution = (caution: CautionRecord, { sources }: Reference): CitedCaution => ({
  ...caution,
  cites: caution.sources.map((id) => sources.find((source) => source.id === id)?.cite ?? id),
});
