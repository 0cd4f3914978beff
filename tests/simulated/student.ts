import type { Chance } from './chance.ts';
import { gamma } from './gamma.ts';
import { normal } from './normal.ts';

/** Student's t number: a normal one over the root of a chi-square one per degree of freedom. */
export const student = (chance: Chance, freedom: number): number =>
  normal(chance) / Math.sqrt((2 * gamma(chance, freedom / 2)) / freedom);
