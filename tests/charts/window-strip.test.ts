import { expect, test } from 'vitest';
import { type WindowRow, windowStrip } from '../../src/charts/window-strip.ts';
import { addDays, type Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const format = createFormat({ units: 'metric', locale: 'en-GB' });
const FIRST = '2025-08-01' as Day;
const at = (days: number): Day => addDays(FIRST, days);

const ROWS: readonly WindowRow[] = [
  {
    name: 'A1-F1',
    half: { first: at(0), last: at(1) },
    most: { first: at(0), last: at(4) },
    over: { first: at(9), last: at(15) },
  },
  {
    name: 'A1-F2',
    half: { first: at(8), last: at(12) },
    most: { first: at(5), last: at(18) },
    over: { first: at(20), last: null },
  },
  { name: 'P3-F1', half: { first: at(30), last: at(44) }, most: { first: at(24), last: null }, over: null },
];

const drawn = (rows: readonly WindowRow[]): Promise<string> =>
  createDraw()({
    id: 'windows',
    title: 'Windows',
    description: 'Three fruits.',
    table: { id: 'windows', title: 'Windows', columns: [], rows: [] },
    spec: windowStrip({ first: FIRST, last: at(70), today: FIRST, rows }, format),
  });

test('the specimen is the one kept here', async () => {
  const svg = await drawn(ROWS);
  expect(svg).toBe(golden('tests/charts/specimens/window-strip', new Map([['chart.svg', svg]])).get('chart.svg'));
});

/** Lengths of lines of a stroke, px, from above. */
const lengths = (svg: string, width: string): number[] =>
  [...svg.matchAll(/<line[^>]*x2="(-?[\d.]+)"[^>]*>/g)]
    .filter(([line]) => line.includes(`stroke-width="${width}"`))
    .map(([, x]) => Math.abs(Number(x)));

test('each fruit has a broad bar within a thin one, each as long as its days', async () => {
  const svg = await drawn(ROWS);
  const [broad, thin] = [lengths(svg, '6'), lengths(svg, '1.6')];
  // 377 px for 71 days; a bar reaches 0.4 of a day past its first and its last.
  const px = (days: number): number => ((days + 0.8) * 377) / 71;
  expect(broad).toHaveLength(3);
  expect(broad[1]).toBeCloseTo(px(4), 0);
  expect(thin[1]).toBeCloseTo(px(13), 0);
  for (const [index, one] of broad.entries()) expect(one).toBeLessThanOrEqual((thin[index] ?? 0) + 0.01);
});

test('an end beyond the season has an arrow; one nobody can tell to be over has no broken line', async () => {
  const svg = await drawn(ROWS);
  expect(svg.split('stroke-dasharray="2,2"').length - 1).toBe(2);
  const closed = await drawn(ROWS.slice(0, 2));
  const arrows = (of: string): number => of.match(/<path transform="[^"]*" d="M[^"]*Z" fill="#2c5a3c"/g)?.length ?? 0;
  expect(arrows(svg)).toBe(1);
  expect(arrows(closed)).toBe(0);
});
