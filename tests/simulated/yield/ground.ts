import { between, type Chance } from '../chance.ts';
import { initialsOf, type Mound } from '../design.ts';
import { varietyOf } from '../variety.ts';
import type { YieldSetting } from './setting.ts';

/** What is fixed of a garden before its mounds bear, in the measure's unit per plant. */
export interface Ground {
  readonly varieties: ReadonlyMap<string, { readonly mean: number; readonly sd: number | null }>;
  /** What each block adds; they need not add up to zero. Empty without blocks. */
  readonly blocks: ReadonlyMap<string, number>;
}

/** `sd` is null where the measure's own count decides how far mounds stray. */
export function groundOf({ design, means, bearing }: YieldSetting, mounds: readonly Mound[], chance: Chance): Ground {
  const initials = initialsOf(design);
  const varieties = initials.map((initial, index) => {
    const sd = bearing.measure === 'sound_fruits' ? null : sdOf(bearing.sd_kg, index);
    return [varietyOf(initial).id, { mean: between(chance, means.low, means.high), sd }] as const;
  });
  const reach = bearing.measure === 'sound_fruits' ? 0 : bearing.block_reach_kg;
  const blocks = [...new Set(mounds.flatMap(({ block }) => block ?? []))].sort();
  return {
    varieties: new Map(varieties),
    blocks: new Map(blocks.map((block) => [block, between(chance, -reach, reach)])),
  };
}

function sdOf(sds: number | readonly number[], index: number): number {
  const sd = typeof sds === 'number' ? sds : sds[index];
  if (sd === undefined) throw new RangeError(`invalid sd_kg: none for variety ${index + 1}`);
  return sd;
}
