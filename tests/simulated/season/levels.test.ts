import { describe, expect, test } from 'vitest';
import { departure, squareDeparture } from './departure.ts';
import { gardensOf } from './gardens.ts';
import { settingNamed } from './settings.ts';
import type { Traits } from './traits.ts';

const TRAITS = ['brix', 'log_mass', 'log_heat'] as const;
const MEAN: Traits = { brix: 10.5, log_mass: Math.log(4), log_heat: Math.log(380) };
const FIRST_SET_DAYS = 42;

const less = (a: Traits, ...others: readonly Traits[]): Traits => ({
  brix: others.reduce((left, one) => left - one.brix, a.brix),
  log_mass: others.reduce((left, one) => left - one.log_mass, a.log_mass),
  log_heat: others.reduce((left, one) => left - one.log_heat, a.log_heat),
});

/** What fruits set later lose in the logarithm of their mass. */
const late = (set_on: string): Traits => {
  const days = (Date.parse(set_on) - Date.parse(`${set_on.slice(0, 4)}-05-20`)) / 86_400_000;
  return { brix: 0, log_mass: -0.008 * (days - FIRST_SET_DAYS), log_heat: 0 };
};

function strays(effects: readonly Traits[], sds: Traits): void {
  for (const trait of TRAITS) {
    const own = effects.map((effect) => effect[trait]);
    if (sds[trait] === 0) {
      expect(own.every((value) => value === 0)).toBe(true);
      continue;
    }
    expect(Math.abs(departure(own, 0)), trait).toBeLessThan(4);
    expect(Math.abs(squareDeparture(own, sds[trait])), trait).toBeLessThan(4);
  }
  // Each trait by itself.
  const products = effects.map(({ brix, log_mass }) => brix * log_mass);
  expect(Math.abs(departure(products, 0))).toBeLessThan(4);
}

describe('the effects of every level have mean 0 and the spread the setting says', () => {
  const gardens = gardensOf(settingNamed('3 seasons in blocks'), 60);
  const seasons = gardens.flatMap(({ truth }) => truth.seasons);

  test('varieties', () => {
    const effects = gardens.flatMap(({ truth }) => truth.varieties.map(({ traits }) => less(traits, MEAN)));
    strays(effects, { brix: 0.6, log_mass: 0.25, log_heat: 0.08 });
  });

  test('seasons', () => {
    strays(
      seasons.map(({ season }) => season),
      { brix: 0.4, log_mass: 0.1, log_heat: 0.02 },
    );
  });

  test('varieties within a season', () => {
    const effects = seasons.flatMap(({ variety_by_season }) => Object.values(variety_by_season));
    strays(effects, { brix: 0.3, log_mass: 0.06, log_heat: 0.02 });
    expect(effects.length).toBe(60 * 3 * 4);
  });

  test('blocks, the same in all seasons', () => {
    const effects = gardens.flatMap(({ truth }) => Object.values(truth.blocks));
    strays(effects, { brix: 0.2, log_mass: 0.08, log_heat: 0 });
    expect(effects.length).toBe(60 * 3);
  });

  test('mounds, and how thirsty they are', () => {
    strays(
      seasons.flatMap(({ mounds }) => mounds.map(({ effect }) => effect)),
      { brix: 0.35, log_mass: 0.12, log_heat: 0.02 },
    );
    const stress = seasons.flatMap(({ mounds }) => mounds.map((mound) => mound.stress));
    expect(Math.abs(departure(stress, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(stress, 1))).toBeLessThan(4);
  });

  test('fruits', () => {
    const effects = seasons.flatMap(({ fruits, mounds }) => {
      const of = new Map(mounds.map(({ planting, traits }) => [planting, traits]));
      return fruits.map(({ planting, traits, set_on }) => less(traits, of.get(planting) ?? MEAN, late(set_on)));
    });
    strays(effects, { brix: 0.8, log_mass: 0.2, log_heat: 0.06 });
  });

  test('and they add up', () => {
    for (const { truth } of gardens.slice(0, 10))
      for (const { season, variety_by_season, varieties, mounds } of truth.seasons) {
        for (const { id, traits } of truth.varieties) {
          const left = less(varieties[id] ?? MEAN, traits, season, variety_by_season[id] ?? MEAN);
          for (const trait of TRAITS) expect(left[trait]).toBeCloseTo(0, 9);
        }
        for (const { block, variety, traits, effect } of mounds) {
          const left = less(traits, varieties[variety] ?? MEAN, truth.blocks[block ?? ''] ?? MEAN, effect);
          for (const trait of TRAITS) expect(left[trait]).toBeCloseTo(0, 9);
        }
      }
  });

  test('varieties that change with the season change as far as their setting says', () => {
    const changing = gardensOf(settingNamed('varieties change with the season'), 25);
    strays(
      changing.flatMap(({ truth }) => truth.seasons.flatMap((one) => Object.values(one.variety_by_season))),
      { brix: 1, log_mass: 0.2, log_heat: 0.06 },
    );
  });
});
