import { expect, test } from 'vitest';
import { type ScatterBand, scatterBand } from '../../src/charts/scatter-band.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });

const POINTS: ScatterBand['points'] = [
  { x: 0, y: 10.4, kind: 'Amber', label: null, apart: false },
  { x: 0, y: 9.8, kind: 'Birch', label: null, apart: false },
  { x: 12, y: 9.9, kind: 'Amber', label: null, apart: true },
  { x: 41, y: 8.7, kind: 'Birch', label: { text: '17 Aug', side: 'below' }, apart: false },
];
const LINE = [0, 20, 41].map((x) => ({ x, y: 10 - 0.03 * x, low: 10 - 0.05 * x, high: 10 - 0.01 * x }));

const drawn = (more: Partial<ScatterBand> = {}, format = metric): Promise<string> =>
  createDraw()({
    id: 'scatter',
    title: 'Scatter',
    description: 'Four fruits.',
    table: { id: 'scatter', title: 'Scatter', columns: [], rows: [] },
    spec: scatterBand(
      { points: POINTS, xUnit: 'mm', yUnit: 'brix', xTitle: 'rain, mm', yTitle: 'sugar, °Brix', line: LINE, ...more },
      format,
    ),
  });

test('the specimen is the one kept here', async () => {
  const svg = await drawn();
  expect(svg).toBe(golden('tests/charts/specimens/scatter-band', new Map([['chart.svg', svg]])).get('chart.svg'));
});

test('a kind has its shape and its word; a label stands by its mark; a line only where there is one', async () => {
  const svg = await drawn();
  for (const word of ['Amber', 'Birch', '17 Aug']) expect(svg).toContain(word);
  const bare = await drawn({ line: null });
  expect(svg.split('<path').length).toBe(bare.split('<path').length + 2);
});

test('a mark that stands apart is filled', async () => {
  expect((await drawn()).split('fill="#1e2622" stroke="#1e2622"').length).toBe(2);
});

test('ticks are whole steps of the print unit', async () => {
  expect(await drawn()).toMatch(/>40</);
  expect(await drawn({}, us)).toMatch(/>1\.5</);
});
