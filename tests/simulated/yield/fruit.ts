import { between, type Chance } from '../chance.ts';
import type { Bearing } from './setting.ts';

/** A fruit that was picked; mass in hundredths of a kg, null in a garden without a scale. */
export interface PickedFruit {
  readonly sound: boolean;
  readonly mass: number | null;
}

const USUAL_MASS = 350;
const CHANCE_OF_SPLIT = 0.25;

/** The fruits of a mound: the sound ones make up exactly what it bore, and now and then one more split. */
export function fruitsOf(bore: number, { measure }: Bearing, chance: Chance): PickedFruit[] {
  const weighed = measure === 'sound_kg';
  const masses = weighed ? shares(bore, Math.max(1, Math.round(bore / USUAL_MASS)), chance) : Array(bore).fill(null);
  const sound = masses.map((mass: number | null) => ({ sound: true, mass }));
  if (chance() >= CHANCE_OF_SPLIT) return sound;
  return [...sound, { sound: false, mass: weighed ? Math.round(between(chance, 100, 500)) : null }];
}

/** Whole numbers that add up to the total, each within a third or so of the others. */
function shares(total: number, count: number, chance: Chance): number[] {
  const weights = Array.from({ length: count }, () => between(chance, 0.7, 1.3));
  const sum = weights.reduce((a, b) => a + b, 0);
  const ends = weights.map((_, index) =>
    Math.round((total * weights.slice(0, index + 1).reduce((a, b) => a + b, 0)) / sum),
  );
  return ends.map((end, index) => end - (ends[index - 1] ?? 0));
}
