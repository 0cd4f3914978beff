import { WEAK_RIPE_PRIORS } from '../../../src/statistics/ripe-states/ripe-priors.ts';
import { type RipeSettings, type RipeStates, ripeStates } from '../../../src/statistics/ripe-states/ripe-states.ts';
import type { RipeState, SeenFruit } from '../../../src/statistics/ripe-states/seen-fruit.ts';

export const SETTINGS: RipeSettings = { seed: 1, draws: 1000, call_wrong: null };

/** The posterior under the makers' priors; fails the test when it was refused. */
export function told(fruits: readonly SeenFruit[], settings: Partial<RipeSettings> = {}): RipeStates {
  const found = ripeStates(fruits, WEAK_RIPE_PRIORS, { ...SETTINGS, ...settings });
  if ('cannot' in found) throw new Error(`refused: ${JSON.stringify(found.cannot)}`);
  return found;
}

/** The window or the draws; fails the test when they were refused. */
export function given<T extends object>(found: T): Exclude<T, { readonly cannot: unknown }> {
  if ('cannot' in found) throw new Error(`refused: ${JSON.stringify(found.cannot)}`);
  return found as Exclude<T, { readonly cannot: unknown }>;
}

/** A fruit cut on a day known to the day. */
export const cut = (variety: string, day: number, state: RipeState): SeenFruit => ({
  variety,
  from: day,
  to: day + 1,
  state,
});

/** Invented: two varieties, the second a little later. */
export const TWELVE: readonly SeenFruit[] = [
  cut('a', 30, 'U'),
  cut('a', 35, 'U'),
  cut('a', 37, 'J'),
  cut('a', 41, 'P'),
  cut('a', 43, 'P'),
  cut('a', 50, 'O'),
  cut('b', 36, 'U'),
  cut('b', 40, 'U'),
  cut('b', 41, 'J'),
  cut('b', 44, 'J'),
  cut('b', 47, 'P'),
  cut('b', 56, 'O'),
];

export const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, one) => sum + one, 0) / values.length;

export const sd = (values: ArrayLike<number>): number => {
  const middle = mean(values);
  return Math.sqrt(mean(Array.from(values, (one) => (one - middle) ** 2)));
};
