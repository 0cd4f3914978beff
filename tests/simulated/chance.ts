import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';

/** A stream of numbers spread evenly from 0 up to, not including, 1. */
export type Chance = () => number;

/**
 * The stream of a seed. The Mersenne twister scrambles its seed; shift generators give neighbouring seeds, such as
 * 1 to 2000, first numbers that resemble each other.
 */
export function chanceOf(seed: number): Chance {
  const random = mersenne(seed);
  return () => uniformFloat64(random);
}

/** A number spread evenly from low to high. */
export const between = (chance: Chance, low: number, high: number): number => low + (high - low) * chance();

/** A whole number from low to high, both included, each as likely. */
export const wholeBetween = (chance: Chance, low: number, high: number): number =>
  low + Math.floor((high - low + 1) * chance());
