import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialCdf } from '../../src/statistics/distributions.ts';
import { seedsAfterTest, seedsForPlants } from '../../src/statistics/seeds-to-sow.ts';
import oracle from '../published/seed-counts/oracle.json' with { type: 'json' };

const SEEDED = { seed: 20250812, numRuns: 200 };

describe(`against ${oracle.made_with.R}`, () => {
  it('pbinom, in every case', () => {
    expect(oracle.binomial).toHaveLength(105);
    for (const one of oracle.binomial)
      expect({ ...one, seeds: seedsForPlants(one.wanted, one.rate, one.chance) }).toEqual(one);
  });
  it('the beta-binomial in every case, those included where 1000 seeds are not enough', () => {
    expect(oracle.predictive).toHaveLength(165);
    expect(oracle.predictive.filter(({ seeds }) => seeds === null).length).toBeGreaterThan(10);
    for (const one of oracle.predictive)
      expect({ ...one, seeds: seedsAfterTest(one.wanted, one, one.chance) }).toEqual(one);
  });
  it('a test of a million seeds is a rate', () => {
    for (const { wanted, rate, chance, binomial } of oracle.large) {
      const test = { came_up: Math.round(rate * 1e6), sown: 1e6 };
      expect(seedsAfterTest(wanted, test, chance)).toBe(binomial);
      expect(seedsForPlants(wanted, rate, chance)).toBe(binomial);
    }
  });
});

describe('one plant, in closed form', () => {
  it.each([
    [0.7, 0.9, 2],
    [0.82, 0.95, 2],
    [0.5, 0.95, 5],
    [0.3, 0.9, 7],
    [0.9, 0.8, 1],
    [0.05, 0.99, 90],
  ])('rate %f, chance %f: %i seeds, ln(1 - chance) / ln(1 - rate) upwards', (rate, chance, seeds) => {
    expect(Math.ceil(Math.log(1 - chance) / Math.log(1 - rate))).toBe(seeds);
    expect(seedsForPlants(1, rate, chance)).toBe(seeds);
  });
  it('after a test: none comes up of n with chance Π (sown - came_up + 1/2 + i) / (sown + 1 + i)', () => {
    // 7 of 10: 3.5 / 11 = 0.318, times 4.5 / 12 is 0.119, times 5.5 / 13 is 0.0505, times 6.5 / 14 is 0.0234.
    const test = { came_up: 7, sown: 10 };
    expect([0.68, 0.69, 0.88, 0.89, 0.949, 0.95].map((chance) => seedsAfterTest(1, test, chance))).toEqual([
      1, 2, 2, 3, 3, 4,
    ]);
  });
});

describe('by hand', () => {
  it('two plants at one half: 1/4 of 2, 4/8 of 3, 11/16 of 4, 26/32 of 5 seeds', () => {
    expect([0.25, 0.26, 0.5, 0.51, 0.6875, 0.69, 0.8125].map((chance) => seedsForPlants(2, 0.5, chance))).toEqual([
      2, 3, 3, 4, 4, 5, 5,
    ]);
  });
  it('a chance reached but for a rounding is reached: 1 - 0.3² is 0.91', () => {
    expect((1 - 0.7) ** 2).toBeGreaterThan(1 - 0.91);
    expect(seedsForPlants(1, 0.7, 0.91)).toBe(2);
  });
  it('one of one came up: 3/4 that the next does, 3/4 · 5/6 = 5/8 that two do', () => {
    const test = { came_up: 1, sown: 1 };
    expect([0.75, 0.76].map((chance) => seedsAfterTest(1, test, chance))).toEqual([1, 2]);
    // Of three at least two: 3/4 · 5/6 · 7/8 + 3 · 3/4 · 5/6 · 1/8 = 50/64.
    expect([0.625, 0.63, 0.781, 0.782].map((chance) => seedsAfterTest(2, test, chance))).toEqual([2, 3, 3, 4]);
  });
  it('no plant needs no seed, sure seed needs no spare, dead seed is never enough', () => {
    expect(seedsForPlants(0, 0.2, 0.9)).toBe(0);
    expect(seedsAfterTest(0, { came_up: 0, sown: 4 }, 0.9)).toBe(0);
    expect(seedsForPlants(12, 1, 0.99)).toBe(12);
    expect(seedsForPlants(1, 0, 0.01)).toBeNull();
  });
  it('looks no further than 1000 seeds', () => {
    expect(seedsForPlants(1000, 1, 0.9)).toBe(1000);
    expect(seedsForPlants(1001, 1, 0.9)).toBeNull();
    expect(seedsAfterTest(500, { came_up: 1, sown: 4 }, 0.9)).toBeNull();
  });
});

describe('whatever is asked', () => {
  const wanted = fc.integer({ min: 1, max: 25 });
  const chance = fc.double({ min: 0.5, max: 0.99, noNaN: true });
  const test = fc
    .integer({ min: 1, max: 60 })
    .chain((sown) => fc.record({ sown: fc.constant(sown), came_up: fc.integer({ min: 1, max: sown }) }));

  it('the number is enough and one less is not, by the incomplete beta function', () => {
    fc.assert(
      fc.property(wanted, fc.double({ min: 0.2, max: 0.98, noNaN: true }), chance, (plants, rate, sure) => {
        const seeds = seedsForPlants(plants, rate, sure) ?? Number.NaN;
        const reached = (n: number): number => (n < plants ? 0 : 1 - binomialCdf(plants - 1, n, rate));
        expect(reached(seeds)).toBeGreaterThanOrEqual(sure - 1e-9);
        expect(reached(seeds - 1)).toBeLessThan(sure + 1e-9);
      }),
      SEEDED,
    );
  });
  it('a small test asks for no fewer seeds than its like ten times the size, and mostly for more', () => {
    let more = 0;
    fc.assert(
      fc.property(wanted, test, fc.constantFrom(0.9, 0.95), (plants, { came_up, sown }, sure) => {
        fc.pre(came_up > sown / 2 && came_up < sown);
        const small = seedsAfterTest(plants, { came_up, sown }, sure) ?? 1001;
        const large = seedsAfterTest(plants, { came_up: 10 * came_up, sown: 10 * sown }, sure) ?? 1001;
        expect(small).toBeGreaterThanOrEqual(large);
        more += small > large ? 1 : 0;
      }),
      SEEDED,
    );
    expect(more).toBeGreaterThan(SEEDED.numRuns / 2);
  });
  it('more plants, a surer chance or a poorer test never take fewer seeds', () => {
    fc.assert(
      fc.property(wanted, test, chance, (plants, seen, sure) => {
        const seeds = seedsAfterTest(plants, seen, sure) ?? 1001;
        expect(seedsAfterTest(plants + 1, seen, sure) ?? 1001).toBeGreaterThanOrEqual(Math.min(seeds + 1, 1001));
        expect(seedsAfterTest(plants, seen, (1 + sure) / 2) ?? 1001).toBeGreaterThanOrEqual(seeds);
        expect(seedsAfterTest(plants, { ...seen, came_up: seen.came_up - 1 }, sure) ?? 1001).toBeGreaterThanOrEqual(
          seeds,
        );
        expect(seeds).toBeGreaterThanOrEqual(plants);
      }),
      SEEDED,
    );
  });
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['wanted', () => seedsForPlants(1.5, 0.5, 0.9)],
    ['wanted', () => seedsForPlants(-1, 0.5, 0.9)],
    ['rate', () => seedsForPlants(1, 1.1, 0.9)],
    ['rate', () => seedsForPlants(1, Number.NaN, 0.9)],
    ['chance', () => seedsForPlants(1, 0.5, 1)],
    ['chance', () => seedsForPlants(1, 0.5, 90)],
    ['chance', () => seedsForPlants(1, 0.5, 0)],
    ['sown', () => seedsAfterTest(1, { came_up: 0, sown: 0 }, 0.9)],
    ['came_up', () => seedsAfterTest(1, { came_up: 11, sown: 10 }, 0.9)],
    ['came_up', () => seedsAfterTest(1, { came_up: -1, sown: 10 }, 0.9)],
    ['chance', () => seedsAfterTest(1, { came_up: 5, sown: 10 }, Number.NaN)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
