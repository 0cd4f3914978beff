import { groupedShare } from '../../statistics/beta-binomial.ts';
import { FEWEST_MOUNDS, LEVEL } from '../comparison.ts';
import { moundsOf } from '../mounds.ts';
import type { SeasonAccount } from '../season-account.ts';
import type { Spanned } from './trait-numbers.ts';

/** Fruits of one mound whose condition was written down, and how many were whole: those of a mound are alike. */
export interface SoundMound {
  readonly variety: string;
  readonly hits: number;
  readonly units: number;
  readonly key: string;
}

export function soundMounds(account: SeasonAccount, crop: string): SoundMound[] {
  return moundsOf(account, crop, 'fruits').mounds.flatMap(({ planting, variety }) => {
    const sound = account.harvestOf(planting)?.sound;
    return sound && sound.told > 0 ? [{ variety, hits: sound.sum, units: sound.told, key: planting.key }] : [];
  });
}

/** How many of a variety’s fruits are sound. */
export interface SoundShare {
  readonly variety: string;
  readonly mounds: number;
  readonly fruits: number;
  /** Of 1; null below three mounds. */
  readonly share: Spanned | null;
}

/** By variety, in the order given; the mound is the replicate. */
export const soundShares = (mounds: readonly SoundMound[], varieties: readonly string[]): SoundShare[] =>
  varieties.flatMap((variety) => {
    const own = mounds.filter((mound) => mound.variety === variety);
    if (own.length === 0) return [];
    const found = own.length >= FEWEST_MOUNDS ? groupedShare(own, LEVEL) : null;
    return [
      {
        variety,
        mounds: own.length,
        fruits: own.reduce((sum, { units }) => sum + units, 0),
        share: found && { value: found.share, interval: found.interval },
      },
    ];
  });
