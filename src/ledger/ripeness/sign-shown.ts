import { SIGN_KEYS } from '../../records/sign.ts';
import type { CropSignRecord } from '../../records/trait/sign.ts';
import type { JudgedFruit } from './judged-fruit.ts';

/** Whether a fruit showed something; null where nobody looked, or the records do not tell it. */
export type Shown = (fruit: JudgedFruit) => boolean | null;

/** The same of a fruit that is not cut yet. */
export type ShownBefore = (look: Pick<JudgedFruit, 'signs' | 'parted'>) => boolean | null;

/** How a fruit parts is told at picking, once it is off, and not on the vine. */
export const isAtPicking = ({ shown }: CropSignRecord): boolean => shown !== null && shown.parted !== null;

const FIELDS = [...SIGN_KEYS, 'parted'] as const;

/** A sign shows when any of its fields stands at one of the steps that count. */
export const shownBy =
  ({ shown }: CropSignRecord): ShownBefore =>
  ({ signs, parted }) => {
    if (!shown) return null;
    const told = FIELDS.flatMap((field) => {
      const steps: readonly string[] | null = shown[field];
      const step = field === 'parted' ? parted : signs[field];
      return steps === null || step === null ? [] : [steps.includes(step)];
    });
    return told.length === 0 ? null : told.includes(true);
  };

/** Old enough by its day of set; null where that day leaves it open. */
export const daysReached =
  (least: number): Shown =>
  ({ days_set }) => {
    if (days_set === null) return null;
    if (days_set.fewest >= least) return true;
    return days_set.most < least ? false : null;
  };
