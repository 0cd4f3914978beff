import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '../../src/day.ts';
import { asOf } from '../../src/garden/as-of.ts';
import type { Garden } from '../../src/garden/garden.ts';
import { lastDay } from '../../src/garden/last-day.ts';
import { linkTexts, textsIn } from '../reading/garden-texts.ts';

const opened = (folder: string): Garden => {
  const { garden } = linkTexts(textsIn(folder));
  if (!garden) throw new Error(`invalid garden: ${folder}`);
  return garden;
};

/** How much a garden tells: its plantings, pickings, visits, and the parts of its fruits. */
const told = (garden: Garden): number =>
  garden.seasons
    .flatMap(({ plantings, visits }) => [
      visits.length,
      plantings.length,
      ...plantings.flatMap(({ pickings, fruits }) => [
        pickings.length,
        ...fruits.map(({ set, pick, end, cut }) => [set, pick, end, cut].filter(Boolean).length),
      ]),
    ])
    .reduce((sum, part) => sum + part, 0);

for (const folder of ['data/starter', 'data/garden']) {
  const garden = opened(folder);
  const first = garden.seasons[0]?.starts_on ?? ('2025-01-01' as Day);
  const days = fc.integer({ min: -30, max: 700 }).map((number) => addDays(first, number));

  describe(folder, () => {
    test('on its last day everything but later weather is known', () => {
      const last = lastDay(garden) ?? first;
      const known = asOf(garden, last);
      expect({ ...known, stations: [] }).toEqual({ ...garden, stations: [] });
      expect(told(asOf(garden, addDays(last, -1)))).toBeLessThan(told(garden));
    });

    test('what was known stays known', () => {
      fc.assert(
        fc.property(days, days, (one, other) => {
          const [earlier, later] = one < other ? [one, other] : [other, one];
          expect(told(asOf(garden, earlier))).toBeLessThanOrEqual(told(asOf(garden, later)));
          expect(asOf(asOf(garden, later), earlier)).toEqual(asOf(garden, earlier));
        }),
        { numRuns: 40 },
      );
    });

    test('no part of it is dated or written down after the day', () => {
      fc.assert(
        fc.property(days, (today) => {
          const { seasons, stations } = asOf(garden, today);
          expect((lastDay({ seasons }) ?? today) <= today).toBe(true);
          for (const { days: read } of stations) expect(read.every(({ date }) => date <= today)).toBe(true);
        }),
        { numRuns: 40 },
      );
    });
  });
}
