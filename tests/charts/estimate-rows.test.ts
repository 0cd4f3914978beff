import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Chart } from '../../src/book/chart.ts';
import { estimateRows } from '../../src/charts/estimate-rows.ts';
import { scaleFromZero } from '../../src/charts/value-axis.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });

const specimen = (largest: number, format = metric): Chart => ({
  id: 'specimen',
  title: 'Specimen',
  description: 'Three rows.',
  table: { id: 'specimen', title: 'Specimen', columns: [], rows: [] },
  spec: estimateRows(
    {
      rows: [
        { name: 'Amber Hill', values: [2, 3.5, 4], estimate: { value: 3.2, low: 1.5, high: 4.9 }, count: '3' },
        {
          name: 'A name as long as names may well become',
          values: [5, 6, 6.5],
          estimate: { value: 5.8, low: 4.1, high: 7.5 },
          count: '3',
        },
        { name: 'Birch', values: [1, 4], estimate: null, count: '2' },
      ],
      unit: 'kg_per_plant',
      axisTitle: 'sound fruit, kg a plant',
      strip: 'Amber Hill',
      largest,
    },
    format,
  ),
});

test('the specimen is the one kept here, and drawn twice it is the same', async () => {
  const first = await createDraw()(specimen(7.5));
  await createDraw()(specimen(12));
  expect(await createDraw()(specimen(7.5))).toBe(first);
  expect(first).toBe(golden('tests/charts/specimens/estimate-rows', new Map([['chart.svg', first]])).get('chart.svg'));
});

test('a drawing asks for nothing, runs nothing, and quotes its face', async () => {
  const svg = await createDraw()(specimen(7.5));
  expect(svg).not.toMatch(/<script|<image|href="(?!#)|url\((?!#)/);
  expect(svg).toMatch(
    /font-family="&apos;Source Sans 3&apos;|font-family="'Source Sans 3'|font-family="&#39;Source Sans 3/,
  );
  for (const words of ['Amber Hill', 'Birch', 'names may']) expect(svg).toContain(words);
});

test('every value and estimate is a mark, and a row without an estimate has only its values', async () => {
  const svg = await createDraw()(specimen(7.5));
  /** Circles of a radius: 2.35 px for an area of 22, 4.18 px for one of 70. */
  const circles = (radius: string): number => svg.split(`d="M${radius},0A`).length - 1;
  expect({ values: circles('2.35'), means: circles('4.18') }).toEqual({ values: 8, means: 2 });
  expect(svg.split('stroke-width="2.6"').length - 1).toBe(2);
  // The strip spans its row's range, 1.5 to 4.9 on an axis to 8 that is 283 px wide.
  expect(svg).toMatch(/d="M53\.06,0h120\.28v/);
  expect((283 * 1.5) / 8).toBeCloseTo(53.06, 2);
  expect((283 * 3.4) / 8).toBeCloseTo(120.28, 1);
});

test('widths are estimated alike everywhere: no canvas package is in the tree', () => {
  expect(existsSync('node_modules/canvas')).toBe(false);
});

test('ticks are whole steps of the print unit and reach past the largest value', () => {
  for (const [largest, format] of [
    [7.5, metric],
    [0.4, metric],
    [23, metric],
    [7.5, us],
    [0, metric],
  ] as const) {
    const { domain, values } = scaleFromZero(largest, 'kg_per_plant', format);
    const printed = values.map((value) => format.toPrint(value, 'kg_per_plant'));
    const step = (printed[1] ?? 0) - (printed[0] ?? 0);
    const mantissa = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
    expect(
      [1, 2, 5].some((whole) => Math.abs(whole - mantissa) < 1e-6),
      `${largest}: ${step}`,
    ).toBe(true);
    expect(domain[1]).toBeGreaterThanOrEqual(largest);
    expect(values.length).toBeLessThanOrEqual(9);
  }
});

test('an axis in pounds is labelled in whole pounds', async () => {
  const svg = await createDraw()(specimen(7.5, us));
  const axis = /role-axis-label.*?<\/g>/.exec(svg)?.[0] ?? '';
  // 7.5 kg is 16.5 lb: steps of five.
  expect([...axis.matchAll(/>([\d.]+)<\/text>/g)].map(([, label]) => label)).toEqual(['0', '5', '10', '15', '20']);
});
