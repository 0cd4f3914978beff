import { expect, test } from 'vitest';
import { type DifferenceRows, differenceRows } from '../../src/charts/difference-rows.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });

/** Ends from -2.4 to 1.2 kg: whole kilograms from -3 to 2. In pounds -5.3 to 2.6: steps of two from -6 to 4. */
const rows = (more: Partial<DifferenceRows> = {}): DifferenceRows => ({
  rows: [
    { name: 'Amber Hill', estimate: { value: -0.8, low: -2.4, high: 0.7 }, words: '5 in 20' },
    { name: 'Zinnia', estimate: { value: 0.5, low: -0.2, high: 1.2 }, words: '17 in 20' },
    { name: 'Birch of the Lower Gate', estimate: null, words: 'too few' },
  ],
  unit: 'kg_per_plant',
  axisTitle: 'difference, kg a plant',
  against: 'Old Yardstick',
  ...more,
});

const drawn = (spec: DifferenceRows, format = metric): Promise<string> =>
  createDraw()({
    id: 'differences',
    title: 'Differences',
    description: 'Three rows.',
    table: { id: 'differences', title: 'Differences', columns: [], rows: [] },
    spec: differenceRows(spec, format),
  });

/** 461 px of the column, less 132 for names and 58 for words. */
const WIDTH_PX = 271;
/** Two lines of 14 px and a gap: one of the names is folded. */
const ROW_PX = 34;

interface Mark {
  readonly x: number;
  readonly y: number;
}

/** Rings: an area of 62 is a radius of √62 / 2, 3.94 px. */
const rings = (svg: string): Mark[] =>
  [...svg.matchAll(/translate\(([-\d.]+),([-\d.]+)\)" d="M3\.94,0A/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));

/** Lines of a width: where each begins and how far it runs. */
const lines = (svg: string, width: string): (Mark & { readonly dx: number; readonly dy: number })[] =>
  [...svg.matchAll(/<line transform="translate\(([-\d.]+),([-\d.]+)\)" x2="([-\d.]+)" y2="([-\d.]+)"([^>]*)>/g)]
    .filter(([, , , , , style]) => style?.includes(`stroke-width="${width}"`))
    .map(([, x, y, dx, dy]) => ({ x: Number(x), y: Number(y), dx: Number(dx), dy: Number(dy) }));

const axisLabels = (svg: string): string[] =>
  [...(/role-axis-label.*?<\/g>/.exec(svg)?.[0] ?? '').matchAll(/>([^<>]+)<\/text>/g)].map(([, label]) => label ?? '');

test('the specimens are the ones kept here, and drawn twice they are the same', async () => {
  const made = new Map([
    ['chart.svg', await drawn(rows())],
    ['chart-us.svg', await drawn(rows(), us)],
  ]);
  const kept = golden('tests/charts/specimens/difference-rows', made);
  for (const [name, svg] of made) expect(svg, name).toBe(kept.get(name));
  expect(await drawn(rows())).toBe(made.get('chart.svg'));
});

test('a drawing asks for nothing and runs nothing', async () => {
  expect(await drawn(rows())).not.toMatch(/<script|<image|href="(?!#)|url\((?!#)/);
});

test('a line stands where there is no difference, from the top to the foot, with the yardstick’s name over it', async () => {
  const svg = await drawn(rows());
  const [zero, ...others] = lines(svg, '1.6');
  expect(others).toEqual([]);
  // 3 of the 5 kg from -3 to 2.
  expect(zero?.x).toBeCloseTo((WIDTH_PX * 3) / 5, 1);
  expect(Math.abs(zero?.dy ?? 0)).toBe(3 * ROW_PX);
  const name = /translate\(([-\d.]+),(-?[\d.]+)\)"[^>]*>Old Yardstick</.exec(svg);
  expect(Number(name?.[1])).toBeCloseTo((WIDTH_PX * 3) / 5, 1);
  expect(Number(name?.[2])).toBeLessThan(0);
});

test('the line of no difference stays on the scale when all differences lie on one side', async () => {
  const one = { name: 'Amber Hill', words: '19 in 20' };
  const above = rows({ rows: [{ ...one, estimate: { value: 4, low: 3.2, high: 4.8 } }] });
  const below = rows({ rows: [{ ...one, estimate: { value: -4, low: -4.8, high: -3.2 } }] });
  expect(lines(await drawn(above), '1.6')[0]?.x).toBe(0);
  expect(lines(await drawn(below), '1.6')[0]?.x).toBe(WIDTH_PX);
});

test('a ring at each difference and a line over its range; a row that cannot be told has neither', async () => {
  const svg = await drawn(rows());
  const at = (kg: number): number => (WIDTH_PX * (kg + 3)) / 5;
  expect(rings(svg).map(({ x }) => x)).toEqual([expect.closeTo(at(-0.8), 1), expect.closeTo(at(0.5), 1)]);
  const ranges = lines(svg, '2.6').map(({ x, dx }) => [Math.min(x, x + dx), Math.max(x, x + dx)]);
  expect(ranges).toEqual([
    [expect.closeTo(at(-2.4), 1), expect.closeTo(at(0.7), 1)],
    [expect.closeTo(at(-0.2), 1), expect.closeTo(at(1.2), 1)],
  ]);
  expect(svg).toContain('>too few<');
});

test('rows stand in the order given, not the alphabet’s, each with its words beside it', async () => {
  const svg = await drawn(rows());
  const height = (text: string): number =>
    Number(new RegExp(`translate\\([-\\d.]+,(-?[\\d.]+)\\)"[^>]*>${text}<`).exec(svg)?.[1]);
  const middles = [0, 1, 2].map((row) => ROW_PX * (row + 0.5));
  expect(rings(svg).map(({ y }) => y)).toEqual(middles.slice(0, 2));
  const words = ['5 in 20', '17 in 20', 'too few'].map(height);
  // All set on one line below their middle.
  expect(words.map((y, row) => y - (middles[row] ?? 0))).toEqual(Array(3).fill((words[0] ?? 0) - ROW_PX / 2));
  const names = ['Amber Hill', 'Zinnia'].map(height);
  expect((names[1] ?? 0) - (names[0] ?? 0)).toBe(ROW_PX);
});

test('a long name is folded between words', async () => {
  const svg = await drawn(rows());
  // 20 letters would be "Birch of the Lower G".
  expect(svg).not.toContain('Birch of the Lower Gate</t');
  expect(svg).toMatch(/>Birch of the Lower<\/tspan>.*>Gate<\/tspan>/s);
});

test('the axis is in the unit of print, in whole steps', async () => {
  expect(axisLabels(await drawn(rows()))).toEqual(['−3', '−2', '−1', '0', '1', '2']);
  expect(axisLabels(await drawn(rows(), us))).toEqual(['−6', '−4', '−2', '0', '2', '4']);
});

test('a difference of degrees takes their scale and not the zero: 5 °C apart is 9 °F', async () => {
  const degrees = rows({
    rows: [{ name: 'Amber Hill', estimate: { value: 5, low: 5, high: 5 }, words: '' }],
    unit: 'c',
  });
  const svg = await drawn(degrees, us);
  // Steps of two from 0 to 10.
  expect(axisLabels(svg)).toEqual(['0', '2', '4', '6', '8', '10']);
  expect(rings(svg)[0]?.x).toBeCloseTo(WIDTH_PX * 0.9, 1);
});
