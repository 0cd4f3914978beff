import { expect, test } from 'vitest';
import { type EventStrip, eventStrip } from '../../src/charts/event-strip.ts';
import { type YearBands, yearBands } from '../../src/charts/year-bands.ts';
import type { Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';
import { golden } from '../books/golden.ts';

const metric = createFormat({ units: 'metric', locale: 'en-GB' });
const us = createFormat({ units: 'us', locale: 'en-US' });

type Spec = ReturnType<typeof eventStrip>;
const drawn = (spec: Spec): Promise<string> =>
  createDraw()({
    id: 'strip',
    title: 'Strip',
    description: 'A season.',
    table: { id: 'strip', title: 'Strip', columns: [], rows: [] },
    spec,
  });

const on = (first: string, last = first) => ({ first: first as Day, last: last as Day });

const strip = (more: Partial<EventStrip> = {}): EventStrip => ({
  ...on('2025-05-20', '2025-07-18'),
  lanes: [
    { label: 'planted out', marks: [on('2025-05-20'), on('2025-05-22')] },
    { label: 'picked', marks: [on('2025-07-01', '2025-07-10')] },
  ],
  rain: {
    days: Array.from({ length: 60 }, (_, day) => ({
      tmin_c: null,
      tmax_c: null,
      rain_mm: day === 30 ? null : day === 10 ? 27 : 0,
      rain_unknown: day === 30,
    })),
    labelled_mm: 20,
  },
  ...more,
});

const bands = (more: Partial<YearBands> = {}): YearBands => ({
  ...on('2025-10-01', '2026-03-20'),
  rows: [
    { label: 'sow', ...on('2025-10-10', '2025-10-18'), own: true },
    { label: 'plant out', ...on('2025-11-15'), own: true },
    { label: 'pick', ...on('2026-02-05', '2026-03-10'), own: false },
  ],
  today: '2025-12-01' as Day,
  ...more,
});

test('the specimens are the ones kept here', async () => {
  for (const [name, spec] of [
    ['event-strip', eventStrip(strip(), metric)],
    ['year-bands', yearBands(bands(), metric)],
  ] as const) {
    const svg = await drawn(spec);
    expect(svg).toBe(golden(`tests/charts/specimens/${name}`, new Map([['chart.svg', svg]])).get('chart.svg'));
  }
});

test('each day of work is a ring, a span a line as well, and rain stands beneath', async () => {
  const svg = await drawn(eventStrip(strip(), metric));
  expect(svg.split('stroke-width="1.4"').length - 1).toBe(3);
  expect(svg.split('stroke-width="2.4"').length - 1).toBe(1);
  expect(svg).toMatch(/>27</);
  expect(await drawn(eventStrip(strip({ rain: null }), metric))).not.toMatch(/rain/);
});

test('a band carries its dates as they are printed, filled where it is the garden’s own', async () => {
  const svg = await drawn(yearBands(bands(), us));
  expect(svg).toContain('>Oct 10 to 18<');
  expect(svg).toContain('>Nov 15<');
  expect(svg.split('fill="white"').length - 1).toBe(1);
  expect(svg.split('stroke-dasharray="3,3"').length - 1).toBe(1);
  const past = await drawn(yearBands(bands({ today: '2026-06-01' as Day }), us));
  expect(past).not.toContain('stroke-dasharray="3,3"');
});
