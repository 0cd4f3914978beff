import type { Chance } from '../chance.ts';
import { type Design, laidOut, type Mound } from '../design.ts';
import { normal } from '../normal.ts';
import type { Levels } from './levels.ts';
import { added, drawn, type Traits } from './traits.ts';
import type { TrueVariety } from './true-variety.ts';

/** A mound in one season. */
export interface TrueMound extends Mound {
  readonly planting: string;
  /** The mound's own effect. */
  readonly effect: Traits;
  /** All a fruit of it can expect: variety, season, the two together, block and mound. */
  readonly traits: Traits;
  /** Drought or sickness that ages the signs of all its fruits but not the fruits, in units of its standard deviation. */
  readonly stress: number;
}

/** What a season adds, alone and to each variety. */
export interface SeasonEffects {
  readonly season: Traits;
  /** By variety id: what this season does to this variety more than to others. */
  readonly variety_by_season: Readonly<Record<string, Traits>>;
}

export const seasonEffects = (varieties: readonly TrueVariety[], levels: Levels, chance: Chance): SeasonEffects => ({
  season: drawn(levels.season, chance),
  variety_by_season: Object.fromEntries(
    varieties.map(({ id }) => [id, drawn(levels.variety_by_season, chance)] as const),
  ),
});

/** What a variety is in this season, in an average block and mound. */
export const thisSeason = ({ id, traits }: TrueVariety, { season, variety_by_season }: SeasonEffects): Traits =>
  added(traits, season, variety_by_season[id] ?? NOTHING);

const NOTHING: Traits = { brix: 0, log_mass: 0, log_heat: 0 };

/** The mounds of a season, varieties given to spots by lot anew each season. */
export function groundOf(
  design: Design,
  year: number,
  expected: Readonly<Record<string, Traits>>,
  blocks: Readonly<Record<string, Traits>>,
  levels: Levels,
  chance: Chance,
): TrueMound[] {
  return laidOut(design, chance).map((mound) => {
    const effect = drawn(levels.mound, chance);
    const block = mound.block === null ? NOTHING : (blocks[mound.block] ?? NOTHING);
    const traits = added(expected[mound.variety] ?? NOTHING, block, effect);
    const planting = `${mound.spot}-${String(year).slice(2)}`;
    return { ...mound, planting, effect, traits, stress: normal(chance) };
  });
}
