import { type Chance, wholeBetween } from '../chance.ts';
import { plantingId } from '../garden-texts.ts';
import { pickingDays } from '../picking-day.ts';
import { listText, type Row } from '../yaml-text.ts';
import type { PickedFruit } from './fruit.ts';
import { kgText } from './kg-text.ts';
import type { TrueMound } from './truth.ts';

const MOST_BASKETS = 3;

/** The pickings of a season: baskets counted and, where there is a scale, weighed. A barren mound is written as 0. */
export function pickingsText(harvests: readonly (readonly [TrueMound, readonly PickedFruit[]])[], chance: Chance) {
  return listText(
    harvests.flatMap(([mound, fruits]) => {
      const baskets = inBaskets(fruits, chance);
      const days = pickingDays(chance, baskets.length);
      return baskets.map((basket, index) => basketRow(plantingId(mound), basket, days[index] ?? ''));
    }),
  );
}

/** At least one basket, the last perhaps an empty one. */
function inBaskets(fruits: readonly PickedFruit[], chance: Chance): PickedFruit[][] {
  const count = Math.max(1, Math.min(fruits.length, wholeBetween(chance, 1, MOST_BASKETS)));
  return Array.from({ length: count }, (_, basket) => fruits.filter((_, index) => index % count === basket));
}

function basketRow(planting: string, basket: readonly PickedFruit[], picked_on: string): Row {
  const sound = basket.filter((fruit) => fruit.sound);
  const row = { planting, picked_on, count: basket.length, sound_count: sound.length };
  const mass = massOf(basket);
  if (mass === null) return row;
  // Where all are sound a person weighs the basket once.
  const soundMass = sound.length === basket.length ? {} : { sound_mass_kg: kgText(massOf(sound) ?? 0) };
  return { ...row, mass_kg: kgText(mass), ...soundMass };
}

const massOf = (fruits: readonly PickedFruit[]): number | null =>
  fruits.reduce<number | null>((sum, { mass }) => (sum === null || mass === null ? null : sum + mass), 0);
