import type { CautionRecord, STEPS } from '../records/caution.ts';
import type { Reference } from './chapter.ts';

export type Step = (typeof STEPS)[number];

/** Ids of the cautions for some steps of the work, each once, in the order of the reference facts. */
export const cautionsAt = ({ cautions }: Reference, ...steps: readonly Step[]): string[] =>
  cautions.filter(({ at }: CautionRecord) => at.some((step) => steps.includes(step))).map(({ id }) => id);
