import type { CropSignRecord } from '../../records/trait/sign.ts';
import type { JudgedFruit } from './judged-fruit.ts';
import { lookOf } from './look.ts';
import { shownBy } from './sign-shown.ts';
import type { KnownFruit } from './together-numbers.ts';

/** A cut fruit that was looked over for at least one of some signs, with what it showed. */
export interface KnownCut {
  readonly judged: JudgedFruit;
  readonly look: KnownFruit;
}

/** Of the judged fruits those that were looked over, in their order. */
export const knownCuts = (judged: readonly JudgedFruit[], signs: readonly CropSignRecord[]): KnownCut[] =>
  judged
    .filter((one) => signs.some((sign) => shownBy(sign)(one) !== null))
    .map((one) => ({
      judged: one,
      look: { ...lookOf(signs, one, one.planting, one.days_set), season: one.season.slug, state: one.state },
    }));
