import type { FigureUnit } from '../figure.ts';
import type { Harvest } from './harvest.ts';
import type { Tally } from './tally.ts';

/** What a harvest is measured by: fruits or mass, all of it or the sound part. */
export type Measure = 'fruits' | 'sound_fruits' | 'kg' | 'sound_kg';

export const MEASURES: readonly Measure[] = ['fruits', 'sound_fruits', 'kg', 'sound_kg'];

export const tallyOf = (harvest: Harvest, measure: Measure): Tally => {
  switch (measure) {
    case 'fruits':
      return { sum: harvest.fruits, told: harvest.fruits, of: harvest.fruits };
    case 'sound_fruits':
      return harvest.sound;
    case 'kg':
      return harvest.mass_kg;
    case 'sound_kg':
      return harvest.sound_mass_kg;
  }
};

export const isMass = (measure: Measure): boolean => measure.endsWith('kg');

/** The unit of a measure, alone or as a rate. */
export const unitOf = (measure: Measure, per: 'plant' | 'm2' | null = null): FigureUnit => {
  const base = isMass(measure) ? 'kg' : 'fruits';
  return per ? `${base}_per_${per}` : base;
};
