import { expect, test } from 'vitest';
import { type HeldOut, heldOut } from '../../../src/ledger/trial/held-out.ts';
import { traitNumbers } from '../../../src/ledger/trial/trait-numbers.ts';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { value } from './trial-garden.ts';

const ALL = ['amber', 'birch', 'copper'];
const BITS = [0.3, -0.2, 0.1, -0.4, 0.2, 0.0];

/** Three mounds a variety; levels by variety. */
const season = (year: string, levels: Readonly<Record<string, number>>): TraitValue[] =>
  Object.entries(levels).flatMap(([variety, level], own) =>
    [0, 1, 2].map((at) =>
      value(
        'sound_kg_per_plant',
        variety,
        year,
        `${variety}-${at}`,
        level + (BITS[(at + own + Number(year)) % 6] ?? 0),
      ),
    ),
  );

const told = (values: readonly TraitValue[]): HeldOut[] => heldOut('sound_kg_per_plant', values, ALL, 'amber');
const names = (rows: readonly HeldOut[]): string[] =>
  rows.map(({ season: year, variety }) => `${year} ${variety}`).sort();

const STEADY = ['2022', '2023', '2024', '2025'].map((year, at) =>
  season(year, { amber: 5 + at, birch: 6 + at, copper: 4 + at }),
);

test('every season and variety once, from the seasons beside it', () => {
  const rows = told(STEADY.flat());
  expect(names(rows)).toEqual(['2022', '2023', '2024', '2025'].flatMap((year) => [`${year} birch`, `${year} copper`]));
  expect(rows.map(({ from }) => from)).toEqual(rows.map(() => 3));
  const birch = rows.find(({ season: year, variety }) => year === '2025' && variety === 'birch');
  const mean = (variety: string): number => {
    const own = (STEADY[3] ?? []).filter((one) => one.variety === variety);
    return own.reduce((sum, one) => sum + one.value, 0) / own.length;
  };
  expect(birch?.came).toBeCloseTo(mean('birch') - mean('amber'), 12);
  expect(rows.every(({ hit }) => hit)).toBe(true);
  // A little over 1 for birch in the other three seasons.
  expect(birch?.said.value).toBeGreaterThan(0.5);
  expect(birch?.said.value).toBeLessThan(1.5);
});

test('a summer unlike the others misses, and misses stand first, the furthest off before the nearer', () => {
  const odd = season('2026', { amber: 5, birch: 1, copper: 12 });
  const rows = told([...STEADY.flat(), ...odd]);
  const misses = rows.filter(({ hit }) => !hit);
  expect(misses.length).toBeGreaterThan(0);
  expect(rows.slice(0, misses.length)).toEqual(misses);
  expect(names(rows.slice(0, 2))).toEqual(['2026 birch', '2026 copper']);
  const away = rows.map(({ came, said: { value: middle, interval } }) =>
    came < middle ? (middle - came) / (middle - interval.low) : (came - middle) / (interval.high - middle),
  );
  expect(away).toEqual(away.toSorted((a, b) => b - a));
  for (const [at, { hit }] of rows.entries()) expect(hit).toBe((away[at] ?? 0) <= 1);
});

test('what the left-out season showed bears nothing on what was said of it', () => {
  const said = (last: TraitValue[]) =>
    told([...STEADY.slice(0, 3).flat(), ...last])
      .filter(({ season: year }) => year === '2025')
      .map(({ variety, said: own }) => ({ variety, own }))
      .sort((a, b) => (a.variety < b.variety ? -1 : 1));
  expect(said(season('2025', { amber: 1, birch: 9, copper: 30 }))).toEqual(said(STEADY[3] ?? []));
});

test('fewer than three values elsewhere, one season, or a yardstick absent then: nothing is said', () => {
  expect(told(STEADY[0] ?? [])).toEqual([]);
  const rare = [...season('2024', { amber: 5, birch: 6 }), ...season('2025', { amber: 5, birch: 6, copper: 4 })];
  // Copper stood in 2025 alone: 2025 is said of birch, and 2024 had no copper.
  expect(names(told(rare))).toEqual(['2024 birch', '2025 birch']);
  const two = [...rare, ...season('2024', { copper: 4 }).slice(0, 2)];
  expect(names(told(two))).toEqual(['2024 birch', '2024 copper', '2025 birch']);
  const gone = [
    ...season('2023', { amber: 5, birch: 6 }),
    ...season('2024', { amber: 5, birch: 6 }),
    ...season('2025', { birch: 6, copper: 4 }),
  ];
  expect(names(told(gone))).toEqual(['2023 birch', '2024 birch']);
});

test('one that was never joined to the yardstick in the other seasons is not said', () => {
  const values = [
    ...season('2023', { amber: 5 }),
    ...season('2024', { birch: 6, copper: 4 }),
    ...season('2025', { amber: 5, birch: 6, copper: 4 }),
  ];
  // 2025 left out, amber stood by itself.
  expect(told(values).filter(({ season: year }) => year === '2025')).toEqual([]);
});

test('told from one summer, part of what it showed is taken for that summer’s own, and no range is as narrow', () => {
  const shown = season('2024', { amber: 5, birch: 6, copper: 4 });
  const { varieties } = traitNumbers('sound_kg_per_plant', shown, ALL, 'amber', { draws: 1000, pull: 1 }).numbers;
  const one = told([...shown, ...season('2025', { amber: 5, birch: 6, copper: 4 })]).filter(
    ({ season: year }) => year === '2025',
  );
  expect(one).toHaveLength(2);
  for (const { variety, said, from } of one) {
    const inThatSummer = varieties.find((own) => own.variety === variety)?.difference;
    if (!inThatSummer) throw new Error(`no difference of ${variety}`);
    expect(from).toBe(1);
    expect(Math.abs(said.value)).toBeLessThan(0.9 * Math.abs(inThatSummer.value));
    const width = ({ interval }: typeof said): number => interval.high - interval.low;
    expect(width(said)).toBeGreaterThan(1.5 * width(inThatSummer));
  }
});
