import { expect, test } from 'vitest';
import type { Heaps } from '../../../content/ground/heaps.ts';
import type { ManureModel } from '../../../content/ground/manure.ts';
import type { Nitrogen } from '../../../content/ground/nitrogen.ts';
import type { RoomLine } from '../../../content/ground/room.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { Day } from '../../../src/day.ts';
import { linkTexts } from '../../reading/garden-texts.ts';
import { type GroundOf, groundGarden, TRAITS } from './ground-garden.ts';

const reference = loadReference('data/reference');

interface Model {
  readonly ready_by: Day | null;
  readonly room: readonly RoomLine[];
  readonly judged: number;
  readonly tight: readonly string[];
  readonly heaps: Heaps;
  readonly nitrogen: Nitrogen;
  readonly manure: ManureModel;
}

function pageOf(of: GroundOf = {}, today: string | null = null): Page & { readonly model: Model } {
  const { garden, problems } = linkTexts(groundGarden(of));
  if (!garden || problems.some(({ severity }) => severity === 'error'))
    throw new Error(`invalid test garden: ${JSON.stringify(problems)}`);
  const page = bookOf({ reference }, garden, today as Day | null).pages.find(({ path }) => path === 'ground/');
  if (!page) throw new Error('there is no page');
  return page as Page & { readonly model: Model };
}
const modelOf = (of: GroundOf = {}, today: string | null = null): Model => pageOf(of, today).model;

test('room: spots alike in print stand together, and are held against the sources of their crop', () => {
  const { room, judged, tight } = modelOf();
  // 2 m² hold one plant at 2 m² each and two at 0.8; three were set. The tub has no area.
  expect(room.map(({ crops, spots, plants, fits, tight: close }) => [crops, spots, plants, fits, close])).toEqual([
    ['globes', ['M1', 'M2'], 3, { least: 1, most: 2 }, true],
    ['bells', ['M3'], 2, null, false],
  ]);
  expect([judged, tight]).toEqual([2, ['M1', 'M2']]);
  expect(room.flatMap(({ figures }) => figures.map(({ id, value }) => [id, value]))).toEqual([
    ['ground.2025.P1.m2_per_plant', 2 / 3],
    ['ground.2025.P2.m2_per_plant', 2.02 / 3],
    ['ground.2025.P3.m2_per_plant', 2.5],
  ]);
});

test('as many plants as fit at the closest are not too close', () => {
  const plantings = '- {id: P1, spot: M1, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n';
  expect(modelOf({ plantings }).tight).toEqual([]);
});

test('ten comes after nine', () => {
  const spots = '  - {id: M10, kind: mound, area_m2: 2}\n  - {id: M9, kind: mound, area_m2: 2}\n';
  const plantings = ['M10', 'M9']
    .map((spot) => `- {id: ${spot}-25, spot: ${spot}, variety: amber, planted_on: 2025-05-20, plants_set: 1}\n`)
    .join('');
  expect(modelOf({ spots, plantings }).room.map((line) => line.spots)).toEqual([['M9', 'M10']]);
});

test('a planting of no known variety is not judged', () => {
  const plantings = '- {id: P1, spot: M1, variety: unknown, planted_on: 2025-05-20, plants_set: 9}\n';
  expect(modelOf({ plantings }).room).toEqual([]);
});

test('heaps of the kinds that stand here, most spots first, in the barrows and cans of this garden', () => {
  const { heaps } = modelOf({ measures: 'measures: {barrow_l: 60, can_l: 9}\n' });
  // Cap of a ball: π · 0.25 · (3 · 0.3² + 0.25²) / 6 = 0.04352 m³; a tub π · 0.225² · 0.4 = 0.06362 m³.
  expect(heaps.lines.map(({ kind, long_cm, high_cm }) => [kind, long_cm, high_cm])).toEqual([
    ['mound', 90, 25],
    ['mound', 60, 25],
    ['mound', 120, 30],
    ['tub', 45, 40],
    ['tub', 60, 45],
  ]);
  expect(heaps.lines[1]?.l.value).toBeCloseTo(43.52, 2);
  expect(heaps.lines[1]?.barrows.value).toBeCloseTo(43.52 / 60, 3);
  expect(heaps.lines[3]?.l.value).toBeCloseTo(63.62, 2);
  // A bowl of 30 by 8: π · 0.08 · (3 · 0.15² + 0.08²) / 6 = 0.0030955 m³; 9 litres fill it 2.9 times.
  expect(heaps.bowl?.l.value).toBeCloseTo(3.0955, 3);
  expect(heaps.bowl?.from_one_can).toBe(2);
});

test('a ridge is half its box, a bed the whole of it, and no bowl without a mound', () => {
  const spots = '  - {id: R1, kind: row}\n  - {id: R2, kind: row}\n  - {id: B1, kind: bed}\n';
  const { heaps } = modelOf({ spots, plantings: '' });
  expect(heaps.lines.map(({ l }) => Math.round(l.value ?? 0))).toEqual([75, 135, 150, 250]);
  expect(heaps.usual.kind).toBe('row');
  expect(heaps.bowl).toBeNull();
});

test('material for the nitrogen of the average spot, from the least to the most', () => {
  const { nitrogen } = modelOf();
  // (2 + 2.02 + 5) / 3 = 3.00667 m² at 8 to 16 g a m²: 24.05 to 48.11 g of nitrogen.
  expect(nitrogen.area_m2).toBeCloseTo(3.00667, 5);
  const [globe] = nitrogen.crops;
  expect(nitrogen.crops.map(({ id }) => id)).toEqual(['globe']);
  expect(globe?.n_g_per_m2).toEqual({ low: 8, high: 16 });
  // Of 5 in 100: 481 and 962 g.
  expect(globe?.feed_5_kg.low).toBeCloseTo(0.48107, 4);
  expect(globe?.feed_5_kg.high).toBeCloseTo(0.96213, 4);
  const line = (id: string) => globe?.materials.find((one) => one.id === id);
  // Compost 2.5 of 100 and 15 of 100 in the first year, 0.95 kg a litre: 6.414 kg, 6.75 l. 1, 10 and 0.5: 48.107 kg, 96.2 l.
  expect(line('compost')?.kg.low).toBeCloseTo(6.4142, 3);
  expect(line('compost')?.kg.high).toBeCloseTo(48.107, 2);
  expect(line('compost')?.l?.low).toBeCloseTo(6.7518, 3);
  expect(line('compost')?.l?.high).toBeCloseTo(96.213, 2);
  expect(line('compost')?.barrows?.high).toBeCloseTo(96.213 / 85, 3);
  expect(nitrogen.compost?.l).toEqual(line('compost')?.l);
  // What a litre of it weighs nobody tells.
  expect([line('manure-dried')?.l, line('manure-dried')?.barrows]).toEqual([null, null]);
  // Nitrogen without a first year, or none at all: no line.
  expect([line('bone-meal'), line('wood-ash'), line('bought-feed')]).toEqual([undefined, undefined, undefined]);
});

test('compost for two crops reaches from the least of either to the most of either', () => {
  const { nitrogen } = modelOf({ bell: TRAITS.replace('n_high_kg_ha: 160', 'n_high_kg_ha: 240') });
  // 24 g a m² on 3.00667 m²: 72.16 g / 0.001 / 0.5.
  expect(nitrogen.crops.map(({ id }) => id)).toEqual(['bell', 'globe']);
  expect(nitrogen.compost?.l.low).toBeCloseTo(6.7518, 3);
  expect(nitrogen.compost?.l.high).toBeCloseTo(144.32, 2);
});

test('no area anywhere: a square metre', () => {
  const { nitrogen } = modelOf({ spots: '  - {id: M1, kind: mound}\n', plantings: '' });
  expect([nitrogen.area_m2, nitrogen.area_known]).toEqual([1, false]);
});

test('manure waits from its day, and whether that has passed hangs on the day of the book', () => {
  const feeding = '- {given_on: 2025-04-20, spots: [M1], material: manure-raw}\n';
  const passed = (today: string): (boolean | null)[] =>
    modelOf({ feeding }, today).manure.lines.map((line) => line.passed);
  // 120 days from 20 April are 18 August.
  expect([passed('2025-08-17'), passed('2025-08-18')]).toEqual([[false], [true]]);
  const { manure } = modelOf({ feeding: feeding.replace('2025-04-20', 'unknown') }, '2025-08-18');
  expect(manure.lines.map(({ earliest, passed: told, name }) => [earliest, told, name])).toEqual([
    [null, null, 'raw manure'],
  ]);
  expect([manure.days_on_ground, manure.days_above]).toEqual([120, 90]);
});

test('every figure of the page begins with its name and is there once', () => {
  const ids = pageOf({ bell: TRAITS }).figures.map(({ id }) => id);
  expect(ids.length).toBeGreaterThan(20);
  expect(ids.filter((id) => !id.startsWith('ground.'))).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
});

test('the level of record grows from plantings to feeding to how much', () => {
  const level = (feeding: string, plantings?: string) =>
    pageOf({ feeding, ...(plantings === undefined ? {} : { plantings }) }).level?.kept;
  expect(level('', '')).toBeNull();
  expect(level('')).toBe('little');
  expect(level('- {given_on: 2025-04-20, material: compost, roughly: some}\n')).toBe('some');
  expect(level('- {given_on: 2025-04-20, material: compost, barrows: 2}\n')).toBe('full');
});
