import type { Chance } from '../chance.ts';
import { gamma } from '../gamma.ts';
import { normal } from '../normal.ts';
import { poisson } from '../poisson.ts';

/** How many fruits a plant sets, and when. */
export interface Bearing {
  /** One, and a Poisson count more. */
  readonly sets_per_plant: number;
  /** A plant's first flowers, in days after planting out. */
  readonly first_set_days: { readonly mean: number; readonly sd: number };
  /** Mean wait of a fruit's set after its plant's first flowers: a gamma number of shape 2. */
  readonly spread_days: number;
  /** Added to the logarithm of a fruit's mass for each day it is set after the mean first flowers. */
  readonly late_log_mass_per_day: number;
  /** Share of sets that abort within their first days. */
  readonly aborted: number;
}

const SPREAD_SHAPE = 2;

/** Days after planting out on which one plant sets its fruits. */
export function setsOf({ sets_per_plant, first_set_days, spread_days }: Bearing, chance: Chance): number[] {
  const begins = first_set_days.mean + first_set_days.sd * normal(chance);
  const count = 1 + poisson(chance, sets_per_plant - 1);
  const wait = () => (gamma(chance, SPREAD_SHAPE) * spread_days) / SPREAD_SHAPE;
  return Array.from({ length: count }, () => Math.round(begins + wait()));
}
