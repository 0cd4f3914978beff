import type { Chance } from './chance.ts';

/**
 * A Poisson count: how many uniform numbers can be multiplied before the product falls below e^-mean (Knuth, The Art
 * of Computer Programming 2, section 3.4.1; from memory). For means up to some tens: the work grows with the mean.
 */
export function poisson(chance: Chance, mean: number): number {
  const floor = Math.exp(-mean);
  let product = chance();
  let count = 0;
  while (product > floor) {
    product *= chance();
    count++;
  }
  return count;
}
