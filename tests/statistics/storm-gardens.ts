/** Invented storms: fruits of one storm share an effect of their own besides what the dry spell before it does. */
import type { MeasuredStorm } from '../../src/statistics/storms.ts';
import { chanceOf, wholeBetween } from '../simulated/chance.ts';
import { normal } from '../simulated/normal.ts';

export interface StormSetting {
  readonly storms: number;
  /** Standard deviation of a storm's own effect, in log odds. */
  readonly storm_sd: number;
  /** Log odds for one standard deviation of the dry spell. */
  readonly slope: number;
}

/** About 1 fruit in 7 splits after a middling dry spell; 4 to 15 are exposed. */
const USUAL_LOG_ODDS = -1.8;

export function stormGarden({ storms, storm_sd, slope }: StormSetting, seed: number): MeasuredStorm[] {
  const chance = chanceOf(seed);
  return Array.from({ length: storms }, () => {
    const measure = normal(chance);
    const odds = USUAL_LOG_ODDS + slope * measure + storm_sd * normal(chance);
    const exposed = wholeBetween(chance, 4, 15);
    const split = Array.from({ length: exposed }, () => chance() < 1 / (1 + Math.exp(-odds))).filter(Boolean).length;
    return { exposed, split, measure };
  });
}

/** Chance of a fresh fruit in a fresh storm: the mean over dry spells and storms, by the midpoint rule. */
export function trueChance({ storm_sd, slope }: StormSetting): number {
  const sd = Math.hypot(storm_sd, slope);
  let [sum, whole] = [0, 0];
  for (let z = -7.95; z < 8; z += 0.1) {
    sum += Math.exp((-z * z) / 2) / (1 + Math.exp(-USUAL_LOG_ODDS - sd * z));
    whole += Math.exp((-z * z) / 2);
  }
  return sum / whole;
}
