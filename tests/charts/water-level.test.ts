import { describe, expect, test } from 'vitest';
import { type WaterLevel, waterLevel } from '../../src/charts/water-level.ts';
import { addDays, type Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });
const FIRST = '2025-05-20' as Day;
const DAYS = 60;
/** Height of the level’s part, in px: 0 litres lie at its foot. */
const FOOT = 140;

const given_l = Array.from({ length: DAYS }, (_, day) => (day % 8 === 4 ? (day === 36 ? 45 : 18) : 0));

/** Ten litres go a day, from 300; a soaking on the tenth day fills it, and nobody told the rain of the thirtieth. */
let left_l = 300;
const days: WaterLevel['days'] = given_l.map((given, day) => {
  left_l = Math.max(0, Math.min(300, left_l + given + (day === 10 ? 200 : 0)) - 10);
  return { left_l, unread: day === 30 };
});

const level = (more: Partial<WaterLevel> = {}): WaterLevel => ({
  first: FIRST,
  last: addDays(FIRST, DAYS - 1),
  days,
  full_l: 300,
  harmed_below_l: 180,
  rain: {
    days: days.map(({ unread }, day) => ({
      tmin_c: null,
      tmax_c: null,
      rain_mm: unread ? null : day === 10 ? 34 : 0,
      rain_unknown: unread,
    })),
    labelled_mm: 20,
  },
  given_l,
  can_l: 9,
  ...more,
});

const drawn = (spec: WaterLevel, format = metric): Promise<string> =>
  createDraw()({
    id: 'level',
    title: 'Level',
    description: 'Sixty days.',
    table: { id: 'level', title: 'Level', columns: [], rows: [] },
    spec: waterLevel(spec, format),
  });

/** Outlines of the areas, as the drawing writes them. */
const areas = (svg: string): string[] =>
  [...svg.matchAll(/<path[^>]* d="([^"]+)"[^>]*opacity="0.2"/g)].map(([, d]) => d ?? '');
const heights = (d: string): number[] => [...d.matchAll(/[ML]-?[\d.]+,(-?[\d.]+)/g)].map(([, y]) => Number(y));
const count = (svg: string, text: string): number => svg.split(text).length - 1;

test('the specimens are the ones kept here', async () => {
  const made = new Map([
    ['chart.svg', await drawn(level())],
    ['chart-us.svg', await drawn(level({ can_l: 2 * 3.785411784 }), us)],
  ]);
  const kept = golden('tests/charts/specimens/water-level', made);
  for (const [name, svg] of made) expect(svg, name).toBe(kept.get(name));
});

describe('the level fills the ground from nothing up', () => {
  test('its foot is nothing left, its top what is left, and neither sinks below', async () => {
    const [area = ''] = areas(await drawn(level()));
    const all = heights(area);
    expect(Math.max(...all)).toBe(FOOT);
    expect(Math.min(...all)).toBeGreaterThan(0);
    // Sixty tops and sixty feet.
    expect(all).toHaveLength(2 * DAYS);
    // 290 of the 315 litres that 35 cans of 9 make are left on the first day: 140 (1 − 290 / 315).
    expect(all[0]).toBeCloseTo(FOOT * (1 - 290 / 315), 1);
  });
  test('days nobody can reckon are a gap, not a slope', async () => {
    const gap = days.map((day, index) => (index > 19 && index < 25 ? { ...day, left_l: null } : day));
    expect(areas(await drawn(level({ days: gap })))).toHaveLength(2);
    expect(areas(await drawn(level()))).toHaveLength(1);
  });
  test('without a balance there is none, and what was given still stands', async () => {
    const svg = await drawn(level({ days: days.map((day) => ({ ...day, left_l: null })) }));
    expect(svg).not.toContain('plants go short');
    expect(svg).toContain('given, cans');
  });
});

test('axes count in cans of the garden, rain in its own unit', async () => {
  const svg = await drawn(level());
  // 300 litres are 33 cans of 9.
  expect(svg).toContain('>35<');
  expect(svg).toContain('left for the roots, cans');
  expect(svg).toContain('rain, mm');
  expect(await drawn(level(), us)).toContain('rain, in');
  expect(await drawn(level({ can_l: 10 }))).toContain('>30<');
});

test('water given is an open head for each day, rain a stroke: told apart in black and white', async () => {
  const svg = await drawn(level());
  expect(count(svg, 'fill="white" stroke="#3a6ea5" stroke-width="1.3"')).toBe(given_l.filter((l) => l > 0).length);
  expect(count(svg, 'stroke-width="2.2"')).toBe(1);
});

test('a day nobody told is grey, and where no gauge was read the days stand under what was given', async () => {
  expect(count(await drawn(level()), 'opacity="0.3"')).toBe(2);
  const svg = await drawn(level({ rain: null }));
  expect(svg).not.toContain('rain,');
  expect(svg).toContain('>Jun<');
});
