import type { Comparison } from './comparison.ts';
import { MEASURES, type Measure } from './measure.ts';

/** A measure is used when at least this share of the mounds with a count of fruits has it too. */
const ENOUGH = 2 / 3;

/** The fullest measure known for most mounds: sound mass, mass, sound fruits, fruits. */
export function mainMeasure(comparisons: Readonly<Record<Measure, Comparison>>): Measure {
  const moundsWith = (measure: Measure): number =>
    comparisons[measure].means.reduce((sum, { mounds }) => sum + mounds.length, 0);
  const counted = moundsWith('fruits');
  return (
    [...MEASURES].reverse().find((measure) => moundsWith(measure) >= ENOUGH * counted && moundsWith(measure) > 0) ??
    'fruits'
  );
}
