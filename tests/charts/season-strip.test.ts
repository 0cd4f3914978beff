import { describe, expect, test } from 'vitest';
import { dayAxis } from '../../src/charts/day-axis.ts';
import { type SeasonStrip, seasonStrip } from '../../src/charts/season-strip.ts';
import { scaleAround } from '../../src/charts/value-axis.ts';
import type { Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });

/** Sixty days from 20 May, most of them plain: one hot, one cool, one soaking, and one of each kind unread. */
const strip = (more: Partial<SeasonStrip> = {}): SeasonStrip => ({
  first: '2025-05-20' as Day,
  last: '2025-07-18' as Day,
  days: Array.from({ length: 60 }, (_, day) => ({
    tmin_c: day === 20 ? null : day === 5 ? 8 : 14,
    tmax_c: day === 20 ? null : day === 40 ? 33 : 24,
    rain_mm: day === 30 ? null : day === 10 ? 27 : day % 9 === 0 ? 3 : 0,
    rain_unknown: day === 30,
  })),
  hot_c: 30,
  cool_c: 12,
  labelled_mm: 20,
  spans: [{ first: '2025-06-10' as Day, last: '2025-06-17' as Day, words: '8' }],
  ...more,
});

const drawn = (spec: SeasonStrip, format = metric): Promise<string> =>
  createDraw()({
    id: 'strip',
    title: 'Strip',
    description: 'Sixty days.',
    table: { id: 'strip', title: 'Strip', columns: [], rows: [] },
    spec: seasonStrip(spec, format),
  });

test('the specimen is the one kept here', async () => {
  const svg = await drawn(strip());
  expect(svg).toBe(golden('tests/charts/specimens/season-strip', new Map([['chart.svg', svg]])).get('chart.svg'));
});

/** Lines of a stroke width, as the drawing writes them. */
const lines = (svg: string, width: number): number => svg.split(`stroke-width="${width}"`).length - 1;

test('each read day is one line, a hot or cool part a heavy one, a wet day one bar', async () => {
  const svg = await drawn(strip());
  expect(lines(svg, 1.1)).toBe(59);
  expect(lines(svg, 2.4)).toBe(2);
  expect(lines(svg, 2.2)).toBe(8); // days 0, 9, 18 … 54 with 3 mm, and day 10
});

test('only soaking days carry their figure, in the unit of print', async () => {
  expect(await drawn(strip())).toMatch(/>27</);
  expect(await drawn(strip(), us)).toMatch(/>1\.1</);
});

test('a part without readings is left out', async () => {
  const cold = strip().days.map((day) => ({ ...day, tmin_c: null, tmax_c: null }));
  const svg = await drawn(strip({ days: cold, spans: [] }));
  expect(lines(svg, 1.1)).toBe(0);
  expect(svg).not.toContain('highest');
  expect(svg).toContain('rain, mm');
});

describe('the day axis', () => {
  test('ticks stand on the first of each month, over New Year too', () => {
    const axis = dayAxis('2025-10-15' as Day, '2026-03-10' as Day, metric);
    expect(axis.values).toEqual([17, 47, 78, 109, 137]); // 1 Nov, 1 Dec, 1 Jan, 1 Feb, 1 Mar
    expect(axis.labelExpr).toContain('["Nov","Dec","Jan","Feb","Mar"]');
    expect(axis.domain).toEqual([-0.5, 146.5]);
  });

  test('a few weeks are told by days', () => {
    const axis = dayAxis('2025-06-25' as Day, '2025-07-10' as Day, metric);
    expect(axis.values).toEqual([0, 7, 14]);
    expect(axis.labelExpr).toContain('["25 Jun","2 Jul","9 Jul"]');
  });
});

describe('a scale around values', () => {
  test('runs over whole steps of the print unit, zero of no unit assumed', () => {
    const celsius = scaleAround({ smallest: -3, largest: 34, ticks: 6 }, 'c', metric);
    expect(celsius.domain).toEqual([-10, 40]);
    const fahrenheit = scaleAround({ smallest: 0, largest: 35, ticks: 6 }, 'c', us); // 32 to 95 °F
    expect(fahrenheit.domain[0]).toBeCloseTo((20 - 32) / 1.8, 9);
    expect(fahrenheit.domain[1]).toBeCloseTo((100 - 32) / 1.8, 9);
    expect(fahrenheit.labelExpr).toMatch(/^\["20","40","60","80","100"\]/);
  });

  test('one value still has a scale', () => {
    const { domain } = scaleAround({ smallest: 20, largest: 20, ticks: 6 }, 'c', metric);
    expect(domain[1]).toBeGreaterThan(domain[0]);
  });
});
