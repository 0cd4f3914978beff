import { expect, test } from 'vitest';
import { dayLines } from '../../src/charts/day-lines.ts';
import type { Day } from '../../src/day.ts';
import { createFormat } from '../../src/format.ts';
import { createDraw } from '../../src/site/draw.ts';

const format = createFormat({ units: 'metric', locale: 'en-GB' });
const on = (text: string): Day => text as Day;

const svgOf = (): Promise<string> =>
  createDraw()({
    id: 'specimen',
    title: 'Specimen',
    description: 'Two lines.',
    table: { id: 'specimen', title: 'Specimen', columns: [], rows: [] },
    spec: dayLines(
      {
        first: on('2025-12-22'),
        last: on('2026-02-20'),
        lines: [
          {
            name: 'mildew, S1',
            marks: [
              { on: on('2025-12-22'), value: 0 },
              { on: on('2026-01-21'), value: 9 },
              { on: on('2026-02-20'), value: 3 },
            ],
          },
          { name: 'wilt, S2', marks: [{ on: on('2026-01-21'), value: 4 }] },
        ],
        top: 9,
        yTitle: 'how bad',
      },
      format,
    ),
  });

test('a mark a look, a line through those of one name, a name in the key, months over New Year', async () => {
  const svg = await svgOf();
  // A circle of size 46 has a radius of half its root, 3.39 px.
  expect(svg.split('d="M3.39,0A').length - 1).toBe(3);
  expect(
    svg
      .match(/mark-line role-mark[\s\S]*?<\/g>/g)
      ?.join('')
      .split('<path').length,
  ).toBe(3);
  for (const words of ['mildew, S1', 'wilt, S2', 'Jan', 'Feb', 'how bad']) expect(svg).toContain(`>${words}<`);
});

test('the worst step stands at the top and none at the foot', async () => {
  const svg = await svgOf();
  // 150 px for nine steps; the middle day of 60 lies at 30.5 of 61 places, 207.5 of 415 px.
  const heights = [...svg.matchAll(/translate\((-?[\d.]+),(-?[\d.]+)\)" d="M3\.39,0A/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  expect(heights[1]).toEqual([207.5, 0]);
  expect([heights[0]?.[1], heights[2]?.[1]]).toEqual([150, 100]);
});
