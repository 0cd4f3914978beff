import { describe, expect, test } from 'vitest';
import { keptApart } from '../../src/charts/end-labels.ts';
import { type TankBand, tankBand } from '../../src/charts/tank-band.ts';
import { addDays, type Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });
const FIRST = '2025-06-20' as Day;

/** A tank of 1000 litres that loses 12 a day in a middle year, 20 in the driest, nothing in the wettest. */
const levels = Array.from({ length: 60 }, (_, day) => ({
  lowest_l: Math.max(100, 800 - 20 * day),
  middle_l: Math.max(100, 850 - 12 * day),
  highest_l: Math.min(1000, 900 + 5 * day),
}));

const band = (more: Partial<TankBand> = {}): TankBand => ({
  first: FIRST,
  levels,
  dips: [0, 7, 15, 21].map((days, index) => ({
    on: addDays(FIRST, days - 22),
    litres: [1000, 940, 760, 850][index] ?? 0,
  })),
  holds_l: 1000,
  below_tap_l: 100,
  ...more,
});

const drawn = (spec: TankBand, format = metric): Promise<string> =>
  createDraw()({
    id: 'tank',
    title: 'Tank',
    description: 'Sixty days.',
    table: { id: 'tank', title: 'Tank', columns: [], rows: [] },
    spec: tankBand(spec, format),
  });

test('the specimens are the ones kept here', async () => {
  const made = new Map([
    ['chart.svg', await drawn(band())],
    ['chart-us.svg', await drawn(band(), us)],
  ]);
  const kept = golden('tests/charts/specimens/tank-band', made);
  for (const [name, svg] of made) expect(svg, name).toBe(kept.get(name));
});

test('the band runs from the lowest to the highest of the years, at the look’s tint', async () => {
  const [, d = ''] = (await drawn(band())).match(/<path[^>]* d="([^"]+)"[^>]*opacity="0.14"/) ?? [];
  const heights = [...d.matchAll(/[ML]-?[\d.]+,(-?[\d.]+)/g)].map(([, y]) => Number(y));
  expect(heights).toHaveLength(2 * levels.length);
  // A plot of 170 px over 1000 litres: 900 on the first day, 100 at the end of the driest year, 1000 of the wettest.
  expect(heights).toContain(17);
  expect(Math.max(...heights)).toBeCloseTo(170 * 0.9, 1);
  expect(Math.min(...heights)).toBe(0);
});

test('each dip is an open mark, and the days begin with the first of them', async () => {
  const marks = (svg: string): number => svg.split('fill="white" stroke="#1e2622"').length - 1;
  const svg = await drawn(band());
  expect(marks(svg)).toBe(4);
  expect(svg).toContain('>Jun<');
  const bare = await drawn(band({ dips: [] }));
  expect(marks(bare)).toBe(0);
  expect(bare).not.toContain('>Jun<');
});

test('the tap has its line, unless it draws the last drop', async () => {
  expect(await drawn(band())).toContain('>tap<');
  const svg = await drawn(band({ below_tap_l: 0 }));
  expect(svg).not.toContain('>tap<');
  expect(svg).not.toContain('stroke-dasharray="5,3"');
});

test('the axis is in the unit of print: 1000 litres are 264 gallons', async () => {
  const litres = await drawn(band());
  expect(litres).toContain('in the tank, litres');
  expect(litres).toContain('>1,000<');
  const svg = await drawn(band(), us);
  expect(svg).toContain('in the tank, gallons');
  expect(svg).toContain('>300<');
});

describe('words at the lines’ ends', () => {
  const at = (middle_px: number, lines = ['a']) => ({ lines, middle_px });
  const places = (labels: ReturnType<typeof at>[]): number[] => keptApart(labels).map(({ middle_px }) => middle_px);

  test('that have room stay where they are, from above to below', () =>
    expect(places([at(120), at(20), at(70)])).toEqual([20, 70, 120]));

  test('that would cover each other move apart, a line of 14 px and 2 between; the lower stays', () =>
    expect(places([at(50), at(52)])).toEqual([36, 52]));

  test('of two lines and of one keep clear of each other', () => {
    const [upper = 0, lower = 0] = places([at(153, ['middle', 'year']), at(160)]);
    expect([lower, lower - upper]).toEqual([160, (2 * 14 + 2 + 14 + 2) / 2]);
  });

  test('at the top they can give way no further, so the lower does', () =>
    expect(places([at(0), at(5, ['middle', 'year'])])).toEqual([0, 23]));
});
