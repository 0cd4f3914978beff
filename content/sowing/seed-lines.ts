import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, reckoned } from '../../src/figure.ts';
import type { Lot, Variety } from '../../src/garden/garden.ts';
import { seedsAfterTest, seedsForPlants } from '../../src/statistics/seeds-to-sow.ts';

/** Chance of the plants wanted for which seeds are counted: nine in ten. */
const CHANCE = 0.9;
/** Plants for which the seeds are told. */
const WANTED = [2, 4, 8];

/** One lot of seed, or a variety without one, and the seeds it takes. */
export interface SeedLine {
  readonly variety: string;
  /** Id of the lot; null where none is written down. */
  readonly lot: string | null;
  /** All its tests and trays together; null where nobody counted. */
  readonly test: { readonly came_up: number; readonly sown: number } | null;
  readonly seeds: readonly { readonly wanted: number; readonly figure: Figure }[];
}

/** Every lot, and every variety that has none. Without a count the law's least germination of sold seed stands in, and says so. */
export function seedLines(facts: Facts): SeedLine[] {
  const { lots, varieties } = facts.garden;
  return varieties.flatMap((variety) => {
    const own = lots.filter((lot) => lot.variety === variety.id);
    return own.length > 0 ? own.map((lot) => lineOf(facts, variety, lot)) : [lineOf(facts, variety, null)];
  });
}

function lineOf(facts: Facts, variety: Variety, lot: Lot | null): SeedLine {
  const { test, keys } = countedOf(facts, lot);
  const name = lot ? `lot.${lot.id}` : `variety.${variety.id}`;
  const least = variety.crop.seed?.germination_of_100 ?? null;
  const seedsFor = (wanted: number): number | null => {
    if (test) return seedsAfterTest(wanted, test, CHANCE);
    return least === null ? null : seedsForPlants(wanted, least / 100, CHANCE);
  };
  const figureFor = (wanted: number): Figure => {
    const value = seedsFor(wanted);
    return reckoned({
      id: `sowing.${name}.seeds_for_${wanted}`,
      value,
      unit: 'seeds',
      n: test?.sown ?? 0,
      method: test ? 'seeds-after-test' : 'seeds-by-law',
      basis: facts.ledger.bases.of(keys),
      reason: value === null ? because('germination-unknown') : test ? null : because('untested'),
    });
  };
  return {
    variety: variety.name,
    lot: lot?.id ?? null,
    test,
    seeds: WANTED.map((wanted) => ({ wanted, figure: figureFor(wanted) })),
  };
}

/** Tests and counted trays of a lot, added: seeds laid out and seeds that came up. */
function countedOf({ garden }: Facts, lot: Lot | null): { test: SeedLine['test']; keys: readonly string[] } {
  if (!lot) return { test: null, keys: [] };
  const trays = garden.seasons.flatMap(({ events }) =>
    events.sowings.flatMap(({ lot: of, seeds, emerged, key }) =>
      of === lot.id && emerged !== null ? [{ sown: seeds, came_up: emerged, key }] : [],
    ),
  );
  const tests = (lot.tests ?? []).map(({ seeds, sprouted }) => ({ sown: seeds, came_up: sprouted, key: lot.key }));
  const all = [...tests, ...trays];
  const sum = (key: 'sown' | 'came_up'): number => all.reduce((total, one) => total + one[key], 0);
  const test = sum('sown') > 0 ? { sown: sum('sown'), came_up: sum('came_up') } : null;
  return { test, keys: [...new Set([lot.key, ...all.map(({ key }) => key)])] };
}
