/**
 * What one claims of a fruit who knows no model: the share of all fruits, or the share of those that looked alike in one
 * sign. Each is asked, as the model is, without the season of the fruit; a claim that no baseline beats is no claim.
 */
import type { CutFruit } from './ripe-chance.ts';

/** Of the other seasons, in the fruits' order: the share that answers yes, Jeffreys' mean. Throws RangeError for one season alone. */
export function baseClaims(fruits: readonly Pick<CutFruit, 'season' | 'answer'>[]): number[] {
  return fruits.map(({ season }) => shareOf(othersOf(fruits, season)));
}

/**
 * Of those fruits of the other seasons that looked alike in one sign: shown, not shown or not looked for. Drawn towards
 * the share of all by one fruit. Throws RangeError for one season alone.
 */
export function signClaims(fruits: readonly CutFruit[], sign: number): number[] {
  return fruits.map((fruit) => {
    const others = othersOf(fruits, fruit.season);
    const alike = others.filter(({ signs }) => signs[sign] === fruit.signs[sign]);
    return (yesOf(alike) + shareOf(others)) / (alike.length + 1);
  });
}

const othersOf = <T extends { readonly season: string }>(fruits: readonly T[], season: string): T[] => {
  const others = fruits.filter((one) => one.season !== season);
  if (others.length === 0) throw new RangeError(`invalid fruits: none of another season than ${season}`);
  return others;
};

const yesOf = (fruits: readonly { readonly answer: boolean }[]): number => fruits.filter(({ answer }) => answer).length;

const shareOf = (fruits: readonly { readonly answer: boolean }[]): number =>
  (yesOf(fruits) + 0.5) / (fruits.length + 1);
