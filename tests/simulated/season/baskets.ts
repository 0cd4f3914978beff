import { listText } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import type { Grown } from './grown.ts';

/** A season's pickings.yaml: what came off each mound on each day, counted and weighed together. */
export function basketsText(grown: readonly Grown[]): string {
  const picked = grown.flatMap(({ life, ending, truth: { pick } }) =>
    ending.fate === 'picked' && pick ? [{ planting: life.planting, day: ending.day, pick }] : [],
  );
  const keyOf = ({ planting, day }: (typeof picked)[number]): string => `${day} ${planting}`;
  const keys = [...new Set(picked.map(keyOf))].sort();
  return listText(
    keys.flatMap((key) => {
      const basket = picked.filter((one) => keyOf(one) === key);
      const [first] = basket;
      if (!first) return [];
      return {
        planting: first.planting,
        picked_on: dayText(first.day),
        count: basket.length,
        sound_count: basket.filter(({ pick }) => pick.condition === 'whole').length,
        mass_kg: basket.reduce((sum, { pick }) => sum + pick.kg, 0).toFixed(2),
      };
    }),
  );
}
