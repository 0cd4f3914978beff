/**
 * Invented gardens whose fruits show signs: the truth of every fruit is known. A fruit is ripe once it is older than
 * its variety, its season and itself ask for; a sign shows when its margin in days, what all signs of a fruit share,
 * what dries its season and chance of its own together pass a bar. The last season is the one the card is carried into.
 */

import type { CutFruit } from '../../src/statistics/signs/ripe-chance.ts';
import { type Chance, chanceOf } from '../simulated/chance.ts';
import { normal as normalOf } from '../simulated/normal.ts';

export interface SignsSetting {
  readonly name: string;
  readonly model: 'right' | 'broken';
  /** Cut before the season in question, and looked at in it. */
  readonly seasons: number;
  readonly cut_per_season: number;
  /** Of a sign's scatter, the variance that all signs of a fruit share. */
  readonly shared: number;
  /** Standard deviation of what dries (or wets) the signs of a whole season, in units of a sign's scatter. */
  readonly dry_sd: number;
  /** By how much one more sign raises the log odds that a keeper cuts the fruit. */
  readonly guided: number;
  /** Chance that a sign is not looked for, that the day of set is not known. */
  readonly unlooked: number;
  readonly undated: number;
  /** The last season's keeper sees a sign this much more readily, in units of a sign's scatter; or its drought. */
  readonly eager: number;
}

const VARIETIES = ['first', 'second', 'third'];
/**
 * How steeply each sign follows the fruit, for one day past ripe; its bar, in the same units of scatter; its drying.
 */
const SIGNS = [
  { steep: 0.28, bar: -0.5, dries: 1 },
  { steep: 0.24, bar: 0, dries: 0.3 },
  { steep: 0.14, bar: -0.6, dries: 0.1 },
  { steep: 0.2, bar: 0.3, dries: 0.3 },
] as const;
const NEED = { days: 38, variety_sd: 2, season_sd: 1.5, fruit_sd: 3 };
const AGE = { days: 39, sd: 4.5 };
const LOOKED_AT = 30;
const POOL = 12;

export interface SignsGarden {
  readonly cut: readonly CutFruit[];
  /** Fruits of the last season as they hang, each to be claimed of. */
  readonly hanging: readonly CutFruit[];
}

export function signsGarden(setting: SignsSetting, seed: number): SignsGarden {
  const random = chanceOf(seed);
  const normal = (): number => normalOf(random);
  const varieties = VARIETIES.map((id) => ({ id, need: NEED.days + NEED.variety_sd * normal() }));
  const seasonOf = (id: string, eager: number) => {
    const [late, dry] = [NEED.season_sd * normal(), setting.dry_sd * normal() + eager];
    return (): CutFruit => {
      const variety = varieties[Math.floor(random() * varieties.length)] ?? { id: 'first', need: NEED.days };
      const days = Math.max(20, Math.round(AGE.days + AGE.sd * normal()));
      const margin = days - variety.need - late - NEED.fruit_sd * normal();
      const common = Math.sqrt(setting.shared) * normal();
      const signs = SIGNS.map(({ steep, bar, dries }) => {
        const own = Math.sqrt(1 - setting.shared) * normal();
        const shows = steep * margin + dries * dry + common + own > bar;
        return random() < setting.unlooked ? null : shows;
      });
      const days_since_set = random() < setting.undated ? null : days;
      return { season: id, variety: variety.id, days_since_set, signs, answer: margin > 0 };
    };
  };
  const cut = Array.from({ length: setting.seasons }, (_, index) => {
    const fruit = seasonOf(`season ${index + 1}`, 0);
    return Array.from({ length: setting.cut_per_season }, () => chosen(fruit, setting.guided, random));
  }).flat();
  const fruit = seasonOf('season to come', setting.eager);
  return { cut, hanging: Array.from({ length: LOOKED_AT }, fruit) };
}

/** Of a dozen fruits looked at, the one the keeper cuts; any of them where signs do not guide. */
function chosen(fruit: () => CutFruit, guided: number, random: Chance): CutFruit {
  const pool = Array.from({ length: POOL }, fruit);
  const weights = pool.map(({ signs }) => Math.exp(guided * signs.filter((one) => one === true).length));
  let left = random() * weights.reduce((sum, one) => sum + one, 0);
  for (const [index, weight] of weights.entries()) {
    left -= weight;
    if (left <= 0) return pool[index] ?? fruit();
  }
  return pool[0] ?? fruit();
}
