import type { Chance } from '../chance.ts';
import { type Bearing, setsOf } from './bearing.ts';
import type { TrueMound } from './ground.ts';
import type { Levels } from './levels.ts';
import { residual } from './residual.ts';
import { type Ratios, type Ripening, type Stages, stagesOf, turningDays } from './ripening.ts';
import { type Latents, latentsOf, type SignRule } from './signs.ts';
import { added, type Traits } from './traits.ts';
import type { Year } from './year.ts';

/** A fruit as its mound and its own lot made it, whatever becomes of it. */
export interface FruitLife {
  readonly id: string;
  readonly planting: string;
  readonly variety: string;
  /** Its plant on the mound, from 1. */
  readonly plant: number;
  readonly set: number;
  readonly traits: Traits;
  /** Heats since set at which it turns, and the first days in each state. */
  readonly heats: Stages<number>;
  readonly turns: Stages<number | null>;
  readonly latents: Latents;
}

export interface Rules {
  readonly levels: Levels;
  readonly bearing: Bearing;
  readonly ripening: Ripening;
  readonly signs: SignRule;
}

/** All fruits a mound sets before a day, in the order they are tagged in. */
export function fruitsOf(
  mound: TrueMound,
  ratios: Ratios,
  planted: number,
  closes: number,
  year: Year,
  rules: Rules,
  chance: Chance,
): FruitLife[] {
  const sets = Array.from({ length: mound.plants }, (_, plant) =>
    setsOf(rules.bearing, chance).map((days) => ({ plant: plant + 1, set: planted + days })),
  );
  return sets
    .flat()
    .filter(({ set }) => set < closes)
    .sort((a, b) => a.set - b.set)
    .map(({ plant, set }, index) => {
      const traits = traitsOf(mound.traits, set - planted, rules, chance);
      const heats = stagesOf(traits.log_heat, ratios, rules.ripening, chance);
      return {
        id: `${mound.planting}-F${index + 1}`,
        planting: mound.planting,
        variety: mound.variety,
        plant,
        set,
        traits,
        heats,
        turns: turningDays(heats, set, year),
        latents: latentsOf(mound.stress, rules.signs, chance),
      };
    });
}

function traitsOf(mound: Traits, days: number, { levels, bearing }: Rules, chance: Chance): Traits {
  const { fruit, fruit_shape } = levels;
  const late = bearing.late_log_mass_per_day * (days - bearing.first_set_days.mean);
  return added(mound, {
    brix: fruit.brix * residual(fruit_shape.brix, chance),
    log_mass: late + fruit.log_mass * residual(fruit_shape.log_mass, chance),
    log_heat: fruit.log_heat * residual('normal', chance),
  });
}

const FULL_AT = 0.85;

/** Mass, kg, at a heat since set: full grown a little before ripe. */
export const massAt = (heat: number, { heats, traits }: Pick<FruitLife, 'heats' | 'traits'>): number =>
  Math.exp(traits.log_mass) * Math.min(1, heat / (FULL_AT * heats.just_ripe)) ** 2.5;
