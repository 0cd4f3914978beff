import { describe, expect, test } from 'vitest';
import { departure } from './departure.ts';
import { gardensOf, unharmed } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import type { Traits } from './traits.ts';
import { writtenFruits, writtenPlantings } from './written.ts';

const BLOCKED = unharmed(settingNamed('3 seasons in blocks'));

/** Nothing but the levels and the meter moves sugar and mass, and no fruit is lost for its size. */
const BARE = {
  ...BLOCKED,
  bearing: { ...BLOCKED.bearing, late_log_mass_per_day: 0 },
  sugar: { ...BLOCKED.sugar, rise_brix: 0, green_brix: 0, fall_brix: 0, day_sd_brix: 0, dilution_brix_per_mm: 0 },
};

const NONE: Traits = { brix: 0, log_mass: 0, log_heat: 0 };

/** One level alone, and fruits that stray little from their mounds. */
function only(level: 'variety' | 'season' | 'variety_by_season' | 'block'): SeasonSetting {
  const fruit = { brix: 0.2, log_mass: 0.05, log_heat: 0.06 };
  const none = { variety: NONE, season: NONE, variety_by_season: NONE, block: NONE, mound: NONE };
  return { ...BARE, levels: { ...BARE.levels, ...none, [level]: BARE.levels[level], fruit } };
}

interface Measured {
  readonly variety: string;
  readonly season: string;
  readonly block: string;
  readonly strays: readonly number[];
}

/** Registers of a garden read back: strays of a mound's fruits from the mean over all varieties. */
function moundsOf(texts: Parameters<typeof writtenFruits>[0], measure: 'brix' | 'log_mass'): Measured[] {
  return ['2023', '2024', '2025'].flatMap((season) => {
    const fruits = writtenFruits(texts, season);
    return writtenPlantings(texts, season).map(({ id, variety = '', block = '' }) => {
      const own = fruits.filter(({ planting }) => planting === id);
      const strays = own.flatMap(({ pick, cut }) => {
        if (measure === 'brix') return cut?.brix_centre ? [Number(cut.brix_centre) - 10.5] : [];
        return pick?.reason === 'ripe' ? [Math.log(Number(pick.mass_kg)) - Math.log(4)] : [];
      });
      return { variety, season, block, strays };
    });
  });
}

const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Average products of two mounds' means, by what the mounds share: v(ariety), s(eason), b(lock). */
function shared(mounds: readonly Measured[]): Map<string, number> {
  const found = new Map<string, number[]>();
  const means = mounds.filter(({ strays }) => strays.length > 0).map((one) => ({ ...one, mean: average(one.strays) }));
  for (const [index, a] of means.entries())
    for (const b of means.slice(index + 1)) {
      const key = `${a.variety === b.variety ? 'v' : ''}${a.season === b.season ? 's' : ''}${a.block === b.block ? 'b' : ''}`;
      found.set(key, [...(found.get(key) ?? []), a.mean * b.mean]);
    }
  return new Map([...found].map(([key, products]) => [key, average(products)]));
}

/** Average product of two fruits of one mound, and half their average squared difference. */
function within(mounds: readonly Measured[]): { product: number; variance: number } {
  let [sum, squares, count] = [0, 0, 0];
  for (const { strays } of mounds)
    for (const [index, a] of strays.entries())
      for (const b of strays.slice(index + 1)) {
        sum += a * b;
        squares += (a - b) ** 2 / 2;
        count++;
      }
  return { product: sum / count, variance: squares / count };
}

// What two mounds share they have in common by its variance, and nothing else; one value a garden, so the gardens' own
// spread gives the standard error.
describe.each([
  { level: 'variety', by: (key: string) => key.includes('v') },
  { level: 'season', by: (key: string) => key.includes('s') },
  { level: 'variety_by_season', by: (key: string) => key === 'vs' },
  { level: 'block', by: (key: string) => key.includes('b') },
] as const)('$level alone', ({ level, by }) => {
  const gardens = gardensOf(only(level), 25);

  test.each(['brix', 'log_mass'] as const)('makes alike in %s the mounds that share it, and no others', (measure) => {
    const found = gardens.map(({ texts }) => shared(moundsOf(texts, measure)));
    for (const key of ['', 'v', 's', 'b', 'vs', 'vb', 'sb']) {
      const own = found.map((one) => one.get(key) ?? Number.NaN);
      const claimed = by(key) ? BARE.levels[level][measure] ** 2 : 0;
      expect(Math.abs(departure(own, claimed)), key).toBeLessThan(4);
      if (by(key)) expect(departure(own, 0), key).toBeGreaterThan(2);
    }
  });
});

describe.each([
  // Standard deviations by level; what the meter and its tenths, or the scales' hundredths, add to a fruit's variance.
  { measure: 'brix', v: 0.6, s: 0.4, vs: 0.3, b: 0.2, mound: 0.35, fruit: 0.8, meter: 0.15 ** 2 + 0.1 ** 2 / 12 },
  { measure: 'log_mass', v: 0.25, s: 0.1, vs: 0.06, b: 0.08, mound: 0.12, fruit: 0.2, meter: 0 },
] as const)('$measure in the registers', ({ measure, v, s, vs, b, mound, fruit, meter }) => {
  const gardens = gardensOf(BARE, 40).map(({ texts }) => moundsOf(texts, measure));

  test('two fruits of a mound covary by all its levels and differ by their own', () => {
    const own = gardens.map(within);
    const all = v ** 2 + s ** 2 + vs ** 2 + b ** 2 + mound ** 2;
    expect(
      Math.abs(
        departure(
          own.map(({ product }) => product),
          all,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          own.map(({ variance }) => variance),
          fruit ** 2 + meter,
        ),
      ),
    ).toBeLessThan(4);
  });

  // Of two varieties in two blocks of a season, what sets one pair of mounds apart less what sets the other apart is free
  // of variety, season and block: four mounds' own variances, and those of the means of their fruits.
  test('mounds differ by their own spread beyond that of their fruits', () => {
    const own = gardens.map((mounds) => {
      const crosses = ['2023', '2024', '2025'].flatMap((season) => crossesOf(mounds, season));
      return average(crosses.map((four) => (contrast(four) ** 2 - (fruit ** 2 + meter) * lot(four)) / 4));
    });
    expect(Math.abs(departure(own, mound ** 2))).toBeLessThan(4);
    expect(departure(own, 0)).toBeGreaterThan(4);
  });
});

type Four = readonly [Measured, Measured, Measured, Measured];

function crossesOf(mounds: readonly Measured[], season: string): Four[] {
  const in_season = mounds.filter((one) => one.season === season && one.strays.length > 0);
  const at = (variety: string, block: string) =>
    in_season.find((one) => one.variety === variety && one.block === block) ?? null;
  return PAIRS_OF_VARIETIES.flatMap(([v, w]) =>
    PAIRS_OF_BLOCKS.flatMap(([b, c]): Four[] => {
      const [one, two, three, four] = [at(v, b), at(w, b), at(v, c), at(w, c)];
      return one && two && three && four ? [[one, two, three, four]] : [];
    }),
  );
}

const PAIRS_OF_VARIETIES = [
  ['amber', 'birch'],
  ['cinder', 'dapple'],
] as const;
const PAIRS_OF_BLOCKS = [
  ['B1', 'B2'],
  ['B2', 'B3'],
] as const;

const contrast = ([a, b, c, d]: Four): number =>
  average(a.strays) - average(b.strays) - average(c.strays) + average(d.strays);

const lot = (four: Four): number => four.reduce((sum, { strays }) => sum + 1 / strays.length, 0);
