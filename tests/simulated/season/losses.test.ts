import { describe, expect, test } from 'vitest';
import { departure, squareDeparture } from './departure.ts';
import { gardensOf, unharmed, watched } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import { writtenFruits } from './written.ts';

const BLOCKED = settingNamed('3 seasons in blocks');
const DAY_MS = 86_400_000;
const days = (from: string, until: string): number => (Date.parse(until) - Date.parse(from)) / DAY_MS;

describe('animals and thieves', () => {
  const quiet = watched(BLOCKED);
  const setting: SeasonSetting = { ...quiet, losses: { ...quiet.losses, per_day: 0.003, by_log_mass: 1.5 } };
  const fruits = gardensOf(setting, 30).flatMap(({ truth }) =>
    truth.seasons.flatMap(({ fruits, closes_on }) => fruits.map((fruit) => ({ ...fruit, closes_on }))),
  );
  const WITHIN = 20;
  // Followed long enough for 20 days of peril; the first whole day of waiting ends at an age of 19.
  const followed = fruits.filter(({ set_on, closes_on }) => days(set_on, closes_on) > 18 + WITHIN);
  const taken = followed.map(({ set_on, befell }) => Number(befell !== null && days(set_on, befell.on) <= 18 + WITHIN));
  const masses = followed.map(({ traits }) => traits.log_mass - Math.log(4));

  test('take a fruit of 4 kg 0.003 times a day from 18 days of age, and others by their mass to the power 1.5', () => {
    expect(followed.length).toBeGreaterThan(2000);
    // An exponential wait: 1 - e^(-rate·days).
    const surprise = taken.map((one, i) => one - 1 + Math.exp(-0.003 * WITHIN * Math.exp(1.5 * (masses[i] ?? 0))));
    expect(Math.abs(departure(surprise, 0))).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          surprise.map((one, i) => one * (masses[i] ?? 0)),
          0,
        ),
      ),
    ).toBeLessThan(4);
    expect(fruits.every(({ set_on, befell }) => !befell || days(set_on, befell.on) > 18)).toBe(true);
  });

  test('take big fruits more often', () => {
    const share = (big: boolean): number => {
      const own = taken.filter((_, index) => (masses[index] ?? 0) > 0 === big);
      return own.reduce((a, b) => a + b, 0) / own.length;
    };
    expect(share(true)).toBeGreaterThan(1.3 * share(false));
  });

  test('are thieves three times in ten; gnawed fruits are taken in one time in four', () => {
    const gone = fruits.flatMap(({ befell, pick, lost_to }) => (befell ? [{ what: befell.what, pick, lost_to }] : []));
    expect(gone.every(({ what }) => what === 'theft' || what === 'animal')).toBe(true);
    expect(
      Math.abs(
        departure(
          gone.map(({ what }) => Number(what === 'theft')),
          0.3,
        ),
      ),
    ).toBeLessThan(4);
    const animal = gone.filter(({ what }) => what === 'animal');
    expect(
      Math.abs(
        departure(
          animal.map(({ pick }) => Number(pick !== null)),
          0.25,
        ),
      ),
    ).toBeLessThan(4);
    expect(animal.every(({ pick, lost_to }) => (pick ? pick.condition === 'gnawed' : lost_to === 'animal'))).toBe(true);
    expect(gone.every(({ what, lost_to }) => what !== 'theft' || lost_to === 'theft')).toBe(true);
  });
});

describe('sets', () => {
  const gardens = gardensOf(unharmed(BLOCKED), 30);
  const seasons = gardens.flatMap(({ truth }) => truth.seasons);
  const sets = seasons.flatMap(({ slug, fruits }) =>
    fruits.map((fruit) => ({ fruit, after: days(`${slug}-05-20`, fruit.set_on) })),
  );

  test('a plant sets one fruit and a Poisson count of mean 2.2 more', () => {
    const plants = seasons.flatMap(({ mounds, fruits }) =>
      mounds.flatMap(({ planting, plants }) =>
        Array.from(
          { length: plants },
          (_, index) =>
            fruits.filter((fruit) => fruit.planting === planting && fruit.plant === index + 1).length - 1 - 2.2,
        ),
      ),
    );
    expect(Math.abs(departure(plants, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(plants, Math.sqrt(2.2)))).toBeLessThan(4);
  });

  // First flowers after 42 days, SD 4, and a wait of mean 14 of a gamma number of shape 2, so of variance 14²/2; whole
  // days add 1/12. Fruits of a plant share its first flowers: one value a garden.
  test('56 days after planting out on average, straying by the plant and by a gamma wait', () => {
    const byGarden = gardens.map(({ truth }) => {
      const own = truth.seasons.flatMap(({ slug, fruits }) =>
        fruits.map(({ set_on }) => days(`${slug}-05-20`, set_on) - 56),
      );
      const mean = (of: (value: number) => number): number => own.reduce((sum, one) => sum + of(one), 0) / own.length;
      return { mean: mean((one) => one), square: mean((one) => one ** 2) };
    });
    expect(
      Math.abs(
        departure(
          byGarden.map(({ mean }) => mean),
          0,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          byGarden.map(({ square }) => square),
          16 + 98 + 1 / 12,
        ),
      ),
    ).toBeLessThan(4);
  });

  test('late fruits are smaller, in truth and in the register, by 0.8 % a day', () => {
    const known = new Map(sets.map((one) => [one.fruit, one.after - 42]));
    // Within mounds: what a mound gives its fruits drops out.
    const slope = (rows: readonly { mound: string; x: number; y: number }[]): { slope: number; error: number } => {
      const mounds = new Map<string, { x: number; y: number }[]>();
      for (const { mound, x, y } of rows) mounds.set(mound, [...(mounds.get(mound) ?? []), { x, y }]);
      const centred = [...mounds.values()].flatMap((own) => {
        const [x0, y0] = [
          own.reduce((s, { x }) => s + x, 0) / own.length,
          own.reduce((s, { y }) => s + y, 0) / own.length,
        ];
        return own.map(({ x, y }) => ({ x: x - x0, y: y - y0 }));
      });
      const sxx = centred.reduce((sum, { x }) => sum + x ** 2, 0);
      const found = centred.reduce((sum, { x, y }) => sum + x * y, 0) / sxx;
      const left = centred.reduce((sum, { x, y }) => sum + (y - found * x) ** 2, 0);
      return { slope: found, error: Math.sqrt(left / (centred.length - mounds.size - 1) / sxx) };
    };
    const inTruth = slope(
      gardens.flatMap(({ truth }, garden) =>
        truth.seasons.flatMap(({ fruits }) =>
          fruits.map((fruit) => ({
            mound: `${garden} ${fruit.planting}`,
            x: known.get(fruit) ?? Number.NaN,
            y: fruit.traits.log_mass,
          })),
        ),
      ),
    );
    const inRegister = slope(
      gardens.flatMap(({ texts, truth }, garden) =>
        truth.seasons.flatMap(({ slug }) =>
          writtenFruits(texts, slug).flatMap(({ planting, set, pick }) =>
            pick?.reason === 'ripe'
              ? [
                  {
                    mound: `${garden} ${planting}`,
                    x: days(`${slug}-05-20`, set.set_on ?? '') - 42,
                    y: Math.log(Number(pick.mass_kg)),
                  },
                ]
              : [],
          ),
        ),
      ),
    );
    for (const found of [inTruth, inRegister]) {
      expect(Math.abs(found.slope + 0.008)).toBeLessThan(4 * found.error);
      expect(found.slope).toBeLessThan(-4 * found.error);
    }
  });
});

describe('sets that come to nothing', () => {
  const seasons = gardensOf(BLOCKED, 25).flatMap(({ truth }) => truth.seasons);
  const fruits = seasons.flatMap(({ fruits, closes_on }) => fruits.map((fruit) => ({ ...fruit, closes_on })));

  test('a quarter abort, evenly 2 to 8 days after setting', () => {
    // Set too late to be met again they would be told as left.
    const early = fruits.filter(({ set_on, closes_on }) => days(set_on, closes_on) > 15);
    const aborted = early.filter(({ befell }) => befell?.what === 'aborted');
    expect(
      Math.abs(
        departure(
          early.map(({ fate }) => Number(fate === 'aborted')),
          0.25,
        ),
      ),
    ).toBeLessThan(4);
    const ages = aborted.map(({ set_on, befell }) => days(set_on, befell?.on ?? ''));
    expect([...new Set(ages)].sort()).toEqual([2, 3, 4, 5, 6, 7, 8]);
    expect(Math.abs(departure(ages, 5))).toBeLessThan(4);
  });

  test('6 % of the others are thinned on the first walk from their twelfth day on', () => {
    const others = fruits.filter(
      ({ set_on, closes_on, befell, fate }) => days(set_on, closes_on) > 18 && fate !== 'aborted' && befell === null,
    );
    // Thinning comes before all that befalls grown fruits, so nearly all others had their turn: those lost later belong too.
    const all = fruits.filter(({ set_on, closes_on, fate }) => days(set_on, closes_on) > 18 && fate !== 'aborted');
    expect(
      Math.abs(
        departure(
          all.map(({ fate }) => Number(fate === 'thinned')),
          0.06,
        ),
      ),
    ).toBeLessThan(4);
    const ages = others.filter(({ fate }) => fate === 'thinned').map(({ set_on, ended_on }) => days(set_on, ended_on));
    expect(Math.min(...ages)).toBe(12);
    // Walks are at most four days apart.
    expect(Math.max(...ages)).toBeLessThanOrEqual(15);
  });

  test('fruits rot after they are over, on average 15 days later', () => {
    const quiet = watched(BLOCKED);
    const rotting: SeasonSetting = { ...quiet, losses: { ...quiet.losses, rot_days: 15 } };
    const WITHIN = 10;
    const rotten = gardensOf(rotting, 15).flatMap(({ truth }) =>
      truth.seasons.flatMap(({ fruits, closes_on }) =>
        fruits.flatMap(({ turned_on: { over }, befell }) => {
          if (!over || days(over, closes_on) <= WITHIN) return [];
          expect(befell === null || befell.on > over).toBe(true);
          return [Number(befell !== null && days(over, befell.on) <= WITHIN)];
        }),
      ),
    );
    expect(Math.abs(departure(rotten, 1 - Math.exp(-WITHIN / 15)))).toBeLessThan(4);
  });
});
