import type { Texts } from '../simulated/garden-texts.ts';
import { seasonGarden } from '../simulated/season/garden.ts';
import { PLAIN } from '../simulated/season/plain-setting.ts';

const LAST_YEAR = 2025;
const BLOCKS = ['ABCD', 'ABCD', 'ABCD'];
const SUGAR = /, brix_centre: [0-9.]+/g;

/** A garden of twelve mounds that has kept all its records for many seasons, and metered sugar in the last ones. */
export function manySeasons(count: number, metered: number): Texts {
  const years = Array.from({ length: count }, (_, index) => LAST_YEAR - count + 1 + index);
  const seasons = years.map((year) => ({ year, design: { blocks: BLOCKS } }));
  const { texts } = seasonGarden({ ...PLAIN, name: `${count} seasons`, model: 'right', seasons }, 1);
  const unmetered = years.slice(0, count - metered).map((year) => `seasons/${year}/fruits.yaml`);
  const without = unmetered.map((path) => [path, String(texts[path]).replaceAll(SUGAR, '')]);
  return { ...texts, ...Object.fromEntries(without) };
}
