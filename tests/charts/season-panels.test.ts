import { expect, test } from 'vitest';
import { type SeasonPanels, seasonPanels } from '../../src/charts/season-panels.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });

/** 3 to 7.5 kg in all: steps of two from 2 to 8. In pounds 6.6 to 16.5: steps of five from 5 to 20. */
const panels = (more: Partial<SeasonPanels> = {}): SeasonPanels => ({
  names: ['Zinnia', 'Amber Hill', 'Birch of the Lower Gate'],
  seasons: ['2024/25', '2025/26'],
  cells: [
    { name: 'Zinnia', season: '2024/25', values: [3, 5], mean: 4 },
    { name: 'Amber Hill', season: '2024/25', values: [4.5], mean: null },
    { name: 'Zinnia', season: '2025/26', values: [6, 7.5, 6], mean: 6.5 },
    { name: 'Birch of the Lower Gate', season: '2025/26', values: [5, 6], mean: 5.5 },
  ],
  unit: 'kg_per_plant',
  axisTitle: 'kg a plant',
  ...more,
});

const drawn = (spec: SeasonPanels, format = metric): Promise<string> =>
  createDraw()({
    id: 'panels',
    title: 'Panels',
    description: 'Two panels.',
    table: { id: 'panels', title: 'Panels', columns: [], rows: [] },
    spec: seasonPanels(spec, format),
  });

/** 461 px of the column, less 132 for names and 16 between two panels. */
const WIDTH_PX = 156;
/** Two lines of 14 px and a gap: one of the names is folded. */
const ROW_PX = 32;
const at = (kg: number): number => (WIDTH_PX * (kg - 2)) / 6;

/** What is drawn in each panel, from left to right. */
const parts = (svg: string): string[] => svg.split(/(?=<g class="mark-group role-scope concat_\d+_group)/).slice(1);

const labels = (svg: string): string[][] =>
  [...svg.matchAll(/role-axis-label.*?<\/g>/g)].map(([part]) =>
    [...part.matchAll(/>([^<>]+)<\/text>/g)].map(([, label]) => label ?? ''),
  );

/** Open marks of an area of 20, a radius of √20 / 2, 2.24 px. */
const values = (part: string): number[][] =>
  [...part.matchAll(/translate\(([-\d.]+),([-\d.]+)\)" d="M2\.24,0A/g)].map(([, x, y]) => [Number(x), Number(y)]);

/** Upright strokes, 2.2 px wide: their left edge and their top. */
const means = (part: string): number[][] =>
  [...part.matchAll(/d="M([-\d.]+),([-\d.]+)h2\.2v15h-2\.2Z"/g)].map(([, x, y]) => [Number(x), Number(y)]);

test('the specimens are the ones kept here, and drawn twice they are the same', async () => {
  const made = new Map([
    ['chart.svg', await drawn(panels())],
    ['chart-us.svg', await drawn(panels(), us)],
  ]);
  const kept = golden('tests/charts/specimens/season-panels', made);
  for (const [name, svg] of made) expect(svg, name).toBe(kept.get(name));
  expect(await drawn(panels())).toBe(made.get('chart.svg'));
});

test('a drawing asks for nothing and runs nothing', async () => {
  expect(await drawn(panels())).not.toMatch(/<script|<image|href="(?!#)|url\((?!#)/);
});

test('a panel a season, from left to right, each with its label over it', async () => {
  const [first = '', second = '', ...more] = parts(await drawn(panels()));
  expect(more).toEqual([]);
  expect([first.includes('>2024/25<'), first.includes('>2025/26<')]).toEqual([true, false]);
  expect([second.includes('>2024/25<'), second.includes('>2025/26<')]).toEqual([false, true]);
});

test('all panels have one scale, told once', async () => {
  const svg = await drawn(panels());
  expect(labels(svg)).toEqual([
    ['2', '4', '6', '8'],
    ['2', '4', '6', '8'],
  ]);
  expect(svg.split('>kg a plant<')).toHaveLength(2);
  // The same 6 kg would lie elsewhere on a scale of the second season alone.
  const [, second = ''] = parts(svg);
  expect(values(second).filter(([x]) => Math.abs((x ?? 0) - at(6)) < 0.1)).toHaveLength(3);
});

test('every value is an open mark in its row, and a mean an upright stroke where there is one', async () => {
  const [first = '', second = ''] = parts(await drawn(panels()));
  const row = (index: number): number => ROW_PX * (index + 0.5);
  const mark = (kg: number, index: number) => [expect.closeTo(at(kg), 1), row(index)];
  expect(values(first)).toEqual([mark(3, 0), mark(5, 0), mark(4.5, 1)]);
  expect(values(second)).toEqual([mark(6, 0), mark(7.5, 0), mark(6, 0), mark(5, 2), mark(6, 2)]);
  const stroke = (kg: number, index: number) => [expect.closeTo(at(kg) - 1.1, 1), row(index) - 7.5];
  expect(means(first)).toEqual([stroke(4, 0)]);
  expect(means(second)).toEqual([stroke(6.5, 0), stroke(5.5, 2)]);
});

test('rows stand in the order given, not the alphabet’s, their names once, at the left', async () => {
  const svg = await drawn(panels());
  const height = (text: string): number =>
    Number(new RegExp(`translate\\([-\\d.]+,(-?[\\d.]+)\\)"[^>]*>${text}<`).exec(svg)?.[1]);
  expect(height('Amber Hill') - height('Zinnia')).toBe(ROW_PX);
  expect(svg.split('>Zinnia<')).toHaveLength(2);
  const [, second = ''] = parts(svg);
  expect(second).not.toMatch(/Zinnia|Amber Hill|Birch/);
});

test('a variety without a value in a season keeps its empty row there', async () => {
  const [first = ''] = parts(await drawn(panels()));
  expect(values(first).filter(([, y]) => y === ROW_PX * 2.5)).toEqual([]);
  expect(first).toMatch(new RegExp(`class="background" d="M0(?:\\.5)?,0(?:\\.5)?h${WIDTH_PX}v${3 * ROW_PX}h`));
});

test('a long name is folded between words', async () => {
  const svg = await drawn(panels());
  expect(svg).not.toContain('Birch of the Lower Gate<');
  expect(svg).toMatch(/>Birch of the Lower<\/tspan>.*>Gate<\/tspan>/s);
});

test('the axis is in the unit of print, in whole steps, and the marks stay where they weigh', async () => {
  const svg = await drawn(panels(), us);
  expect(labels(svg)).toEqual([
    ['5', '10', '15', '20'],
    ['5', '10', '15', '20'],
  ]);
  // 3 kg are 6.614 lb: 0.4535924 kg a pound by definition (BIPM, SI Brochure; NIST SP 811).
  const [first = ''] = parts(svg);
  expect(values(first)[0]?.[0]).toBeCloseTo((WIDTH_PX * (3 / 0.4535924 - 5)) / 15, 1);
});

test('eight seasons still fit the column', async () => {
  const seasons = Array.from({ length: 8 }, (_, index) => String(2018 + index));
  const cells = seasons.map((season, index) => ({ name: 'Zinnia', season, values: [3 + index], mean: null }));
  const found = parts(await drawn(panels({ names: ['Zinnia'], seasons, cells })));
  expect(found).toHaveLength(8);
  // (461 - 132 - 7 · 16) / 8, rounded down.
  for (const part of found) expect(part).toMatch(/class="background" d="M0(?:\.5)?,0(?:\.5)?h27v24h/);
});
