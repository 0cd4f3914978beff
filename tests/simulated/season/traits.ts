import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';

/** What every level of the garden, from variety down to fruit, adds to or spreads by. */
export interface Traits {
  /** Sugar at prime, °Brix at the centre. */
  readonly brix: number;
  /** Natural logarithm of the mass when full grown, kg. */
  readonly log_mass: number;
  /** Natural logarithm of the heat from set to just ripe, °C days. */
  readonly log_heat: number;
}

export const added = (...parts: readonly Traits[]): Traits => ({
  brix: parts.reduce((sum, part) => sum + part.brix, 0),
  log_mass: parts.reduce((sum, part) => sum + part.log_mass, 0),
  log_heat: parts.reduce((sum, part) => sum + part.log_heat, 0),
});

/** An effect of mean 0, normal, each trait by itself. */
export const drawn = (sd: Traits, chance: Chance): Traits => ({
  brix: sd.brix * normal(chance),
  log_mass: sd.log_mass * normal(chance),
  log_heat: sd.log_heat * normal(chance),
});
