import type { Garden } from '../garden/garden.ts';
import type { CautionRecord } from '../records/caution.ts';
import type { Reference } from './chapter.ts';

/** The cautions that bear on a garden: those of a tank alone only where there is one. */
export const cautionsOf = (
  { cautions }: Pick<Reference, 'cautions'>,
  { about }: Pick<Garden, 'about'>,
): CautionRecord[] => cautions.filter(({ at }) => about.tank !== null || at.some((step) => step !== 'tank'));
