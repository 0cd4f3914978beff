import { expect, test } from 'vitest';
import { givenAndWanted, type WaterWeek } from '../../src/charts/given-and-wanted.ts';
import { addDays, type Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });
const FIRST = '2025-05-20' as Day;

const week = (index: number, wanted_l: number | null, given_l: number, rain_l: number | null): WaterWeek => ({
  first: addDays(FIRST, 7 * index),
  wanted_l,
  given_l,
  rain_l,
});
const WEEKS: readonly WaterWeek[] = [
  week(0, 20, 9, 12),
  week(1, 32, 9, 0),
  week(2, 55, 18, 40),
  week(3, 88, 27, 6),
  week(4, 120, 36, 0),
  week(5, 150, 45, null),
  week(6, 171, 36, 60),
  week(7, 160, 54, 18),
  week(8, 120, 0, 96),
  week(9, 90, 0, 42),
];

const drawn = (weeks: readonly WaterWeek[], format = metric): Promise<string> =>
  createDraw()({
    id: 'weeks',
    title: 'Weeks',
    description: 'Ten weeks.',
    table: { id: 'weeks', title: 'Weeks', columns: [], rows: [] },
    spec: givenAndWanted({ weeks }, format),
  });

/** Feet and heads of bars of a fill, in px from above. */
const bars = (svg: string, fill: string): { head: number; foot: number }[] =>
  [
    ...svg.matchAll(new RegExp(`d="M[\\d.]+,([\\d.]+)h[\\d.]+v([\\d.]+)h[^"]*" fill="${fill}" stroke="#3a6ea5"`, 'g')),
  ].map(([, y, height]) => ({ head: Number(y), foot: Number(y) + Number(height) }));

test('the specimens are the ones kept here', async () => {
  const made = new Map([
    ['chart.svg', await drawn(WEEKS)],
    ['chart-us.svg', await drawn(WEEKS, us)],
  ]);
  const kept = golden('tests/charts/specimens/given-and-wanted', made);
  for (const [name, svg] of made) expect(svg, name).toBe(kept.get(name));
});

test('given is solid from nothing up, and rain an outline that stands on it', async () => {
  const svg = await drawn(WEEKS);
  const [given, rain] = [bars(svg, '#3a6ea5'), bars(svg, 'white')];
  // One more of each beside the chart, where they are named.
  expect([given.length, rain.length]).toEqual([8 + 1, 7 + 1]);
  for (const { foot } of given.slice(0, 8)) expect(foot).toBeCloseTo(170, 1);
  expect(rain[0]?.foot).toBeCloseTo(given[0]?.head ?? 0, 1);
  // A week in which nothing was given: its rain stands on nothing.
  expect(rain[5]?.foot).toBeCloseTo(170, 1);
});

test('what was wanted is an open mark a week, and a week nobody can reckon parts the line', async () => {
  const marks = (svg: string): number => svg.split('fill="white" stroke="#2c5a3c"').length - 1;
  const lines = (svg: string): number => (svg.match(/stroke="#2c5a3c" stroke-width="1.6"/g) ?? []).length;
  const whole = await drawn(WEEKS);
  expect([marks(whole), lines(whole)]).toEqual([10, 1]);
  const parted = await drawn(WEEKS.map((one, index) => (index === 4 ? { ...one, wanted_l: null } : one)));
  expect([marks(parted), lines(parted)]).toEqual([9, 2]);
});

test('a week whose rain was not all told is grey', async () => {
  expect((await drawn(WEEKS)).split('opacity="0.3"').length - 1).toBe(1);
});

test('the axis is in the unit of print: 171 litres are 45 gallons', async () => {
  expect(await drawn(WEEKS)).toContain('a week, litres');
  const svg = await drawn(WEEKS, us);
  expect(svg).toContain('a week, gallons');
  expect(svg).toContain('>50<');
  expect(svg).not.toContain('>100<');
});

test('no week is no chart', () => expect(() => givenAndWanted({ weeks: [] }, metric)).toThrow(RangeError));
