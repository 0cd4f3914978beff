import { expect, test } from 'vitest';
import { byHand } from './by-hand.ts';
import { departure, squareDeparture } from './departure.ts';
import type { SeasonGarden } from './garden.ts';
import { gardensOf, watched } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';

const BLOCKED = settingNamed('3 seasons in blocks');
const GARDENS = gardensOf(BLOCKED, 40);

interface AtRisk {
  readonly split: boolean;
  readonly log_mass: number;
  readonly ripeness: number;
}

const stormsOf = ({ truth }: SeasonGarden) => {
  const { heat } = byHand(truth);
  return truth.seasons.flatMap(({ storms, fruits }) => {
    const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
    return storms.map((storm) => ({
      effect: storm.effect,
      fruits: storm.at_risk.flatMap((id): AtRisk[] => {
        const fruit = known.get(id);
        if (!fruit) return [];
        const ripeness = Math.log(heat(fruit.set_on, storm.first_on) / fruit.heats.just_ripe);
        return [
          { split: storm.split.includes(id), log_mass: fruit.traits.log_mass - BLOCKED.levels.mean.log_mass, ripeness },
        ];
      }),
    }));
  });
};

const logistic = (logit: number): number => 1 / (1 + Math.exp(-logit));
const { usual, by_log_mass, by_ripeness, near, from_mm, sd: STORM_SD } = BLOCKED.storm;
const chanceOf = ({ log_mass, ripeness }: AtRisk, effect: number): number =>
  logistic(usual + effect + by_log_mass * log_mass + by_ripeness * ripeness);

test('a storm is a day of much rain while the season runs, and the days of such rain that follow it', () => {
  for (const { truth } of GARDENS.slice(0, 20)) {
    const { rain } = byHand(truth);
    for (const { slug, storms, closes_on } of truth.seasons) {
      const wet = truth.weather.filter(({ date, rain_mm }) => date.startsWith(slug) && rain_mm >= from_mm);
      const covered = storms.flatMap(({ first_on, last_on }) =>
        wet.filter(({ date }) => date >= first_on && date <= last_on).map(({ date }) => date),
      );
      const firsts = new Set(storms.map(({ first_on }) => first_on));
      const during = wet.filter(({ date }) => date >= `${slug}-05-20` && date < closes_on);
      // A storm that began before planting may reach into the season.
      expect(during.every(({ date }) => covered.includes(date) || date <= `${slug}-05-24`)).toBe(true);
      for (const { first_on, last_on, rain_mm } of storms) {
        const days = truth.weather.filter(({ date }) => date >= first_on && date <= last_on);
        expect(days.every((day) => day.rain_mm >= from_mm)).toBe(true);
        expect(rain_mm).toBeCloseTo(
          days.reduce((sum, day) => sum + day.rain_mm, 0),
          9,
        );
        const after = truth.weather.findIndex(({ date }) => date === last_on) + 1;
        const before = truth.weather.findIndex(({ date }) => date === first_on) - 1;
        expect(rain(truth.weather[after]?.date ?? '')).toBeLessThan(from_mm);
        expect(rain(truth.weather[before]?.date ?? '')).toBeLessThan(from_mm);
      }
      expect(firsts.size).toBe(storms.length);
    }
  }
});

test('storms have effects of mean 0 and the spread the setting says', () => {
  const effects = GARDENS.flatMap(stormsOf).map(({ effect }) => effect);
  expect(Math.abs(departure(effects, 0))).toBeLessThan(4);
  expect(Math.abs(squareDeparture(effects, STORM_SD))).toBeLessThan(4);
});

test('at risk is what hangs and is nearly ripe; what split then is lost to it or taken in damaged', () => {
  for (const { truth } of GARDENS.slice(0, 20)) {
    const { heat } = byHand(truth);
    for (const { storms, fruits } of truth.seasons)
      for (const { first_on, at_risk, split } of storms)
        for (const fruit of fruits) {
          const ripe =
            fruit.set_on < first_on && Math.log(heat(fruit.set_on, first_on) / fruit.heats.just_ripe) >= near;
          const hangs = fruit.ended_on > first_on && !(fruit.befell && fruit.befell.on < first_on);
          expect(at_risk.includes(fruit.id)).toBe(ripe && hangs);
          const here = fruit.befell?.what === 'split' && fruit.befell.on === first_on;
          expect(split.includes(fruit.id)).toBe(here);
          if (here) expect(fruit.pick ? fruit.pick.condition : fruit.lost_to).toBe('split');
        }
  }
});

// Given its effect, a storm splits each fruit by itself, so sums of what split less its chance are independent.
test('bigger, riper fruits split more often, by the logistic chance of their storm', () => {
  const fruits = GARDENS.flatMap(stormsOf).flatMap(({ effect, fruits }) => fruits.map((fruit) => ({ fruit, effect })));
  expect(fruits.length).toBeGreaterThan(700);
  const surprise = fruits.map(({ fruit, effect }) => Number(fruit.split) - chanceOf(fruit, effect));
  const by = (of: (fruit: AtRisk) => number): number[] =>
    surprise.map((one, index) => one * of(fruits[index]?.fruit ?? { split: false, log_mass: 0, ripeness: 0 }));
  expect(Math.abs(departure(surprise, 0))).toBeLessThan(4);
  expect(
    Math.abs(
      departure(
        by(({ log_mass }) => log_mass),
        0,
      ),
    ),
  ).toBeLessThan(4);
  expect(
    Math.abs(
      departure(
        by(({ ripeness }) => ripeness),
        0,
      ),
    ),
  ).toBeLessThan(4);
  expect(
    Math.abs(
      departure(
        surprise.map((one, index) => one * (fruits[index]?.effect ?? 0)),
        0,
      ),
    ),
  ).toBeLessThan(4);
});

/** Per storm: squared stray of its splits from what fruits alone let expect, less the binomial variance of that. */
const excess = (gardens: readonly SeasonGarden[], sd: number): number[] =>
  gardens.flatMap(stormsOf).flatMap(({ fruits }) => {
    if (fruits.length < 5) return [];
    // Average over storms of an effect with this standard deviation, by nine evenly likely effects.
    const chances = fruits.map((fruit) => NINTHS.reduce((sum, z) => sum + chanceOf(fruit, sd * z) / NINTHS.length, 0));
    const stray = fruits.reduce((sum, { split }, index) => sum + Number(split) - (chances[index] ?? 0), 0);
    return [stray ** 2 - chances.reduce((sum, p) => sum + p * (1 - p), 0)];
  });

/** Medians of the nine equal parts of the standard normal distribution (normal table). */
const NINTHS = [-1.593, -0.967, -0.589, -0.282, 0, 0.282, 0.589, 0.967, 1.593];

test('splits come storm by storm: they scatter more than by lot, unless storms are all alike', () => {
  // Nobody picks, so that many fruits hang when a storm comes.
  const full: SeasonSetting = { ...watched(BLOCKED), storm: BLOCKED.storm };
  expect(departure(excess(gardensOf(full, 25), STORM_SD), 0)).toBeGreaterThan(4);
  const alike: SeasonSetting = { ...full, storm: { ...BLOCKED.storm, sd: 0 } };
  expect(Math.abs(departure(excess(gardensOf(alike, 25), 0), 0))).toBeLessThan(4);
});
