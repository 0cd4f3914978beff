import type { Chance } from '../chance.ts';
import type { Mound } from '../design.ts';
import { poisson } from '../poisson.ts';
import type { Ground } from './ground.ts';
import { unitError } from './mound-error.ts';
import type { Bearing } from './setting.ts';
import type { TrueMound } from './truth.ts';

const HUNDREDTHS = 100;

/** A season of one mound. Throws RangeError for a mass below zero: the setting's spread is then too wide for its means. */
export function borne(mound: Mound, bearing: Bearing, ground: Ground, chance: Chance): TrueMound {
  const variety = ground.varieties.get(mound.variety);
  if (!variety) throw new RangeError(`invalid variety: ${mound.variety}`);
  const expected = variety.mean + (mound.block === null ? 0 : (ground.blocks.get(mound.block) ?? 0));
  if (bearing.measure === 'sound_fruits') {
    // A Poisson count over the mound's plants has the variance of its mean; divided by the plants it has this sd.
    const sd = Math.sqrt(expected / mound.plants);
    return { ...mound, expected, sd, bore: poisson(chance, expected * mound.plants) };
  }
  const sd = variety.sd ?? 0;
  const bore = Math.round((expected + sd * unitError(bearing.error, chance)) * mound.plants * HUNDREDTHS);
  if (bore <= 0) throw new RangeError(`invalid setting: ${mound.spot} bore ${bore / HUNDREDTHS} kg`);
  return { ...mound, expected, sd, bore };
}
