import type { Chance } from '../chance.ts';
import { plantingId } from '../garden-texts.ts';
import { pickingDays } from '../picking-day.ts';
import { listText, type Row } from '../yaml-text.ts';
import type { PickedFruit } from './fruit.ts';
import { kgText } from './kg-text.ts';
import type { TrueMound } from './truth.ts';

const CHANCE_OF_ABORTION = 0.3;

/** The register of a season: each fruit a line, with some that never came to be picked. */
export function registerText(harvests: readonly (readonly [TrueMound, readonly PickedFruit[]])[], chance: Chance) {
  const rows = harvests.flatMap(([mound, fruits]) => {
    const planting = plantingId(mound);
    const days = pickingDays(chance, fruits.length);
    const picked = fruits.map((fruit, index) =>
      pickedRow(`${planting}-F${index + 1}`, planting, fruit, days[index] ?? ''),
    );
    const aborted: Row[] =
      chance() < CHANCE_OF_ABORTION ? [{ id: `${planting}-F${fruits.length + 1}`, planting, fate: 'aborted' }] : [];
    return [...picked, ...aborted];
  });
  return listText(rows);
}

const pickedRow = (id: string, planting: string, { sound, mass }: PickedFruit, picked_on: string): Row => ({
  id,
  planting,
  fate: 'picked',
  pick: {
    picked_on,
    ...(mass !== null && { mass_kg: kgText(mass) }),
    condition: sound ? 'whole' : 'split',
  },
});
