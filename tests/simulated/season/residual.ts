import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';
import { student } from '../student.ts';
import { unitError } from '../yield/mound-error.ts';

/** How fruits of one mound stray from it. */
export type ResidualShape = 'normal' | 'skewed' | 'left-skewed' | 'student';

const FREEDOM = 3;

/** A number of mean 0 and standard deviation 1; the t numbers of 3 degrees of freedom, of variance 3, are scaled to it. */
export function residual(shape: ResidualShape, chance: Chance): number {
  if (shape === 'normal') return normal(chance);
  if (shape === 'student') return student(chance, FREEDOM) / Math.sqrt(FREEDOM / (FREEDOM - 2));
  return unitError('skewed', chance) * (shape === 'skewed' ? 1 : -1);
}
