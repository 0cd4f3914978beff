import { type Chance, wholeBetween } from './chance.ts';

/** The same things in an order drawn by lot, each order as likely (Fisher and Yates). */
export function shuffled<T>(chance: Chance, things: readonly T[]): T[] {
  const rest = [...things];
  return things.flatMap(() => rest.splice(wholeBetween(chance, 0, rest.length - 1), 1));
}
