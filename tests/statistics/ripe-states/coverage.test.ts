import { expect, it } from 'vitest';
import { coverageOf } from '../../truth/coverage.ts';
import { judgedWindows } from '../../truth/ripe-window-judged.ts';

const GARDENS = 40;
const PLAN = { varieties: 2, fruits: 8, span_days: 1, stages: null };

/** Seeds beyond those of the slow report. */
const FIRST = 2001;

it('90 % windows of fruits to come hold about nine in ten, and plug-in windows far fewer', () => {
  const gardens = Array.from({ length: GARDENS }, (_, at) => judgedWindows(PLAN, FIRST + at, 100)).filter(
    (one) => one !== null,
  );
  const [ripe, plug_in] = (['ripe, 90', 'plug-in, 90'] as const).map((figure) =>
    coverageOf(gardens.map((garden) => garden[figure])),
  );
  // Some seventy fruits: three standard errors are ten in a hundred.
  expect(ripe?.held).toBeGreaterThan(0.8);
  expect(ripe?.held).toBeLessThan(0.99);
  expect(plug_in?.held).toBeLessThan(0.75);
}, 120_000);
