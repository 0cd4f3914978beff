import type { Chance } from './chance.ts';

/** A standard normal number, by the method of Box and Muller (1958), Annals of Mathematical Statistics 29:610-611. */
export const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
