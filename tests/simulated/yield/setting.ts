import type { Design } from '../design.ts';
import type { ErrorShape } from './mound-error.ts';

/** What a mound bears: sound mass that strays from its mean by an error, or a Poisson count of sound fruits. */
export type Bearing =
  | {
      readonly measure: 'sound_kg';
      readonly error: ErrorShape;
      /** Of a mound's kg per plant, whatever its plants: one for all varieties, or one each in the initials' order. */
      readonly sd_kg: number | readonly number[];
      /** Blocks differ by up to this much from the varieties' means, either way. */
      readonly block_reach_kg: number;
    }
  | { readonly measure: 'sound_fruits' };

export interface YieldSetting {
  readonly name: string;
  /** Whether mounds stray as the comparison supposes: normally, equally far for all varieties. */
  readonly model: 'right' | 'broken';
  readonly design: Design;
  /** Each variety's mean per plant is spread evenly over this range, in the measure's unit. */
  readonly means: { readonly low: number; readonly high: number };
  readonly bearing: Bearing;
  /** The file the keeper of the garden writes in. */
  readonly written_in: 'fruits' | 'pickings';
}
