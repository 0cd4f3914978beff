import { expect, test } from 'vitest';
import type { TraitId } from '../../../src/ledger/trial/trait.ts';
import { type TraitNumbers, traitNumbers } from '../../../src/ledger/trial/trait-numbers.ts';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { chanceOf } from '../../simulated/chance.ts';
import { normal } from '../../simulated/normal.ts';
import { value } from './trial-garden.ts';

const ALL = ['amber', 'birch', 'copper', 'dusk', 'ember', 'flint'];

const numbersOf = (values: readonly TraitValue[], id: TraitId = 'sound_kg_per_plant', pull = 1): TraitNumbers =>
  traitNumbers(id, values, ALL, 'amber', { draws: 1000, pull }).numbers;

const of = (numbers: TraitNumbers, variety: string) => {
  const found = numbers.varieties.find((one) => one.variety === variety);
  if (!found) throw new Error(`${variety} has no value`);
  return found;
};

/** Mounds of one season: so many of each variety about its level, scattered by `sd`. */
function season(
  year: string,
  levels: Readonly<Record<string, number>>,
  mounds: number,
  sd: number,
  id: TraitId = 'sound_kg_per_plant',
): TraitValue[] {
  const chance = chanceOf(Number(year));
  return Object.entries(levels).flatMap(([variety, level]) =>
    Array.from({ length: mounds }, (_, at) =>
      value(id, variety, year, `${variety}-${at}`, level + sd * normal(chance)),
    ),
  );
}

test('with plenty of mounds and little scatter the numbers are those of a pencil', () => {
  const values = [
    ...season('2023', { amber: 3, birch: 5, copper: 4 }, 12, 0.05),
    ...season('2024', { amber: 4, birch: 6, copper: 5 }, 12, 0.05),
    ...season('2025', { amber: 8, birch: 10, copper: 9 }, 12, 0.05),
  ];
  const numbers = numbersOf(values);
  expect(of(numbers, 'birch').difference?.value).toBeCloseTo(2, 1);
  expect(of(numbers, 'copper').difference?.value).toBeCloseTo(1, 1);
  expect(of(numbers, 'amber').level?.value).toBeCloseTo(5, 1);
  expect(of(numbers, 'birch').level?.value).toBeCloseTo(7, 1);
  // Summers 4, 5 and 9 about 6.
  expect(numbers.seasons.map(({ value: own }) => Math.round(own))).toEqual([-2, -1, 3]);
  expect(numbers.seasons.map(({ varieties }) => varieties)).toEqual([3, 3, 3]);
  expect(numbers.comparisons).toBe(2);
  expect(of(numbers, 'birch')).toMatchObject({ n: 36, mounds: 36, seasons: ['2023', '2024', '2025'], without: null });
  expect(of(numbers, 'birch').plain?.value).toBeCloseTo(2, 1);
});

test('masses are told as times the yardstick’s, and the level in kilograms', () => {
  const values = season('2025', { amber: 4, birch: 8 }, 12, 0.02, 'mass_kg');
  const numbers = numbersOf(values, 'mass_kg');
  expect(of(numbers, 'birch').difference?.value).toBeCloseTo(2, 1);
  expect(of(numbers, 'birch').level?.value).toBeCloseTo(8, 1);
});

test('better is more, and of days to the first fruit fewer', () => {
  const levels = { amber: 80, birch: 70, copper: 90 };
  const more = numbersOf(season('2025', levels, 6, 1));
  expect(of(more, 'birch').better).toBeLessThan(0.05);
  expect(of(more, 'copper').better).toBeGreaterThan(0.95);
  const fewer = numbersOf(season('2025', levels, 6, 1, 'first_ripe_days'), 'first_ripe_days');
  expect(of(fewer, 'birch').better).toBeGreaterThan(0.95);
  expect(of(fewer, 'copper').better).toBeLessThan(0.05);
  expect(of(fewer, 'birch').difference?.value).toBeLessThan(0);
});

test('among the best three is asked of five and more, by the sense of the trait', () => {
  const five = { amber: 74, birch: 60, copper: 64, dusk: 68, ember: 80 };
  const days = numbersOf(season('2025', five, 4, 1, 'first_ripe_days'), 'first_ripe_days');
  expect(days.varieties.map(({ best }) => Math.round(best ?? -1))).toEqual([0, 1, 1, 1, 0]);
  expect(days.varieties.reduce((sum, { best }) => sum + (best ?? 0), 0)).toBeCloseTo(3, 10);
  const { ember: _, ...four } = five;
  expect(numbersOf(season('2025', four, 4, 1)).varieties.map(({ best }) => best)).toEqual([null, null, null, null]);
});

test('fewer than three values: no estimate of that one, yet it is named', () => {
  const values = [...season('2025', { amber: 3, birch: 5 }, 3, 0.5), ...season('2025', { copper: 4 }, 2, 0.5)];
  expect(of(numbersOf(values), 'copper')).toMatchObject({
    n: 2,
    without: 'few-values',
    apart: 'few-values',
    level: null,
    difference: null,
    better: null,
  });
  expect(of(numbersOf(values), 'birch').difference).not.toBeNull();
});

test('a yardstick with too few values or none: levels are told, differences are not', () => {
  const others = season('2025', { birch: 5, copper: 4 }, 3, 0.5);
  for (const values of [others, [...others, ...season('2025', { amber: 4 }, 2, 0.5)]]) {
    const birch = of(numbersOf(values), 'birch');
    expect(birch).toMatchObject({ apart: 'yardstick-unmeasured', difference: null, better: null });
    expect(birch.level).not.toBeNull();
  }
});

test('never in one season, nor by way of others: not compared; by way of a third: compared, with no pencil’s twin', () => {
  const apart = [...season('2024', { amber: 3, birch: 5 }, 3, 0.5), ...season('2025', { copper: 4, dusk: 4 }, 3, 0.5)];
  expect(of(numbersOf(apart), 'copper')).toMatchObject({ apart: 'never-joined', difference: null, plain: null });
  const joined = [...apart, ...season('2025', { birch: 6 }, 3, 0.5)];
  const copper = of(numbersOf(joined), 'copper');
  expect(copper).toMatchObject({ apart: null, plain: null });
  // 2025: copper less birch -2; 2024: birch less amber 2.
  expect(copper.difference?.interval.low).toBeLessThan(0);
  expect(copper.difference?.interval.high).toBeGreaterThan(0);
});

test('nothing is estimated of one variety, of few values, or where all are equal', () => {
  expect(numbersOf(season('2025', { amber: 3 }, 5, 0.5)).cannot).toBe('one-variety');
  expect(numbersOf(season('2025', { amber: 3, birch: 4 }, 2, 0.5)).cannot).toBe('few-values');
  const equal = season('2025', { amber: 3, birch: 3 }, 4, 0);
  const numbers = numbersOf(equal);
  expect(numbers).toMatchObject({ cannot: 'no-spread', seasons: [], spread: null, comparisons: 0 });
  expect(of(numbers, 'birch').plain?.value).toBe(0);
});

test('blocks are taken out; where they leave nothing they give way', () => {
  const blocked = ['B1', 'B2', 'B3', 'B4'].flatMap((block, at) =>
    ['amber', 'birch'].map((variety, own) =>
      value('sound_kg_per_plant', variety, '2025', `${variety}-${at}`, 10 * at + 2 * own + 0.1 * ((at * own) % 2), {
        block,
      }),
    ),
  );
  const told = of(numbersOf(blocked), 'birch').difference;
  expect(told?.value).toBeCloseTo(2, 0);
  expect((told?.interval.high ?? 99) - (told?.interval.low ?? -99)).toBeLessThan(1.5);
  const alone = blocked.map((one, at) => ({ ...one, block: `B${at}` }));
  expect(of(numbersOf(alone), 'birch').difference).not.toBeNull();
});

test('one summer: its levels and no summers against each other; mounds are counted by season and spot', () => {
  const fruits = [0, 1, 2, 3].flatMap((at) => [
    value('brix', 'amber', '2025', `S${at % 2}`, 10 + 0.3 * at, { key: `a${at}` }),
    value('brix', 'birch', '2025', `T${at % 2}`, 11 + 0.2 * at, { key: `b${at}` }),
  ]);
  const numbers = numbersOf(fruits, 'brix');
  expect(numbers.seasons).toEqual([]);
  expect(of(numbers, 'amber')).toMatchObject({ n: 4, mounds: 2 });
  const twice = numbersOf(
    [...fruits, ...fruits.map((one) => ({ ...one, season: '2024', key: `${one.key} then` }))],
    'brix',
  );
  expect(of(twice, 'amber')).toMatchObject({ n: 8, mounds: 4, seasons: ['2024', '2025'] });
});

test('one expected to spread less is pulled closer to the others', () => {
  const values = season('2025', { amber: 3, birch: 5, copper: 4 }, 3, 1.5);
  const apart = (pull: number): number =>
    Math.abs(of(numbersOf(values, 'sound_kg_per_plant', pull), 'birch').difference?.value ?? 0);
  expect(apart(0.3)).toBeLessThan(apart(1));
  expect(apart(1)).toBeLessThan(apart(3));
});
