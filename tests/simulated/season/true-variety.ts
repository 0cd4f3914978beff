import type { Chance } from '../chance.ts';
import { varietyOf } from '../variety.ts';
import type { Levels } from './levels.ts';
import { type Ratios, type Ripening, ratiosOf } from './ripening.ts';
import { added, drawn, type Traits } from './traits.ts';

/** A variety in an average season, mound and block. */
export interface TrueVariety {
  readonly id: string;
  readonly name: string;
  readonly traits: Traits;
  readonly ratios: Ratios;
}

export const trueVariety = (initial: string, levels: Levels, ripening: Ripening, chance: Chance): TrueVariety => ({
  ...varietyOf(initial),
  traits: added(levels.mean, drawn(levels.variety, chance)),
  ratios: ratiosOf(ripening, chance),
});
