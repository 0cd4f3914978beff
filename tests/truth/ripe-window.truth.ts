import { expect, test } from 'vitest';
import { coverageOf } from './coverage.ts';
import { isWithin, type JudgedSetting, type Limits, tableHead, tableRow } from './coverage-table.ts';
import type { CutPlan } from './ripe-window-garden.ts';
import { FIGURES, judgedWindows } from './ripe-window-judged.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Math.min(500, Number(process.env.TRUTH_GARDENS ?? 500));
const DRAWS = 400;

/** Right: truths come from the priors. Broken: one set of spreads a garden may well have, and one thing supposed that is not so. */
const LIMITS: Limits = { right: { low: 0.88, high: 0.96 }, broken: { low: 0.85, high: 1 } };
/** Of the half windows. */
const HALF_LIMITS: Limits = { right: { low: 0.45, high: 0.58 }, broken: { low: 0.4, high: 1 } };

const SMALL = { varieties: 3, fruits: 12, span_days: 1 };
const STAGES = { spread: 0.1, between: 0.1, just: 0.05, prime: 0.12 };
const SIGNS = { late: 0.05, sd: 0.04 };

const SETTINGS: readonly (JudgedSetting & CutPlan)[] = [
  { name: 'priors, 12 fruits of 3 varieties', model: 'right', ...SMALL, stages: null },
  { name: 'priors, 8 fruits of 1 variety', model: 'right', varieties: 1, fruits: 8, span_days: 1, stages: null },
  {
    name: 'priors, 30 fruits of 5 varieties, set within 8 days',
    model: 'right',
    varieties: 5,
    fruits: 30,
    span_days: 8,
    stages: null,
  },
  { name: 'cut when signs show', model: 'broken', ...SMALL, stages: STAGES, signs: SIGNS },
  {
    name: 'cut when signs show, calls of 3 days before',
    model: 'broken',
    ...SMALL,
    stages: STAGES,
    signs: SIGNS,
    call: { days: 3, wrong: 0.2 },
  },
  {
    name: 'mounds differ as much as fruits',
    model: 'broken',
    ...SMALL,
    stages: { ...STAGES, spread: 0.07 },
    mound: 0.07,
  },
  { name: 'tails of t on 3', model: 'broken', ...SMALL, stages: STAGES, tails: 3 },
  { name: 'set dates wrong by two days', model: 'broken', ...SMALL, stages: STAGES, misread: 2 },
];

console.log(`\n${tableHead(LIMITS)}`);
console.log(
  'Here a window is of one fruit that hangs unripe, in days from the day it is looked at; width is over that of',
);
console.log('one who knows all but the fruit. Plug-in: everything unknown at its likeliest value.');

test.each(SETTINGS)('windows hold what comes: $name', (setting) => {
  const gardens = Array.from({ length: GARDENS }, (_, index) => judgedWindows(setting, index + 1, DRAWS)).filter(
    (one) => one !== null,
  );
  // Where too few were cut over, no window tells of it, and there is nothing to hold.
  const covered = FIGURES.flatMap((figure) => {
    const windows = gardens.map((garden) => garden[figure]);
    return windows.flat().some(({ interval }) => interval) ? [{ figure, coverage: coverageOf(windows) }] : [];
  });
  for (const { figure, coverage } of covered)
    console.log(tableRow(limitsOf(figure), setting, gardens.length, figure, coverage));
  const judged = covered.filter(({ figure }) => figure !== 'plug-in, 90');
  expect(judged.length).toBeGreaterThan(2);
  expect(judged.filter(({ figure, coverage }) => !isWithin(limitsOf(figure), setting, coverage))).toEqual([]);
});

const limitsOf = (figure: string): Limits => (figure === 'ripe, 50' ? HALF_LIMITS : LIMITS);
