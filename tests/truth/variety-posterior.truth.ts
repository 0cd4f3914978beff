import { expect, test } from 'vitest';
import { judgedTrial } from '../statistics/posterior/judged-trial.ts';
import type { TrialPlan } from '../statistics/posterior/simulated-trial.ts';
import { coverageOf } from './coverage.ts';
import { isWithin, type JudgedSetting, type Limits, tableHead, tableRow } from './coverage-table.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Math.min(500, Number(process.env.TRUTH_GARDENS ?? 500));
const DRAWS = 1000;

/** Right: truths come from the priors. Broken: spreads that a garden may have all the same, one set for all. */
const LIMITS: Limits = { right: { low: 0.87, high: 0.95 }, broken: { low: 0.85, high: 1 } };

const SPREADS = { variety: 0.6, season: 0.3, mound: 0.3 };
const SMALL = { varieties: 4, seasons: 1, mounds: 3, fruits: 2 };
const MIDDLING = { varieties: 6, seasons: 2, mounds: 2, fruits: 3 };

const SETTINGS: readonly (JudgedSetting & TrialPlan)[] = [
  { name: 'priors, 4 varieties, 1 season', model: 'right', ...SMALL, sd: null },
  { name: 'priors, 6 varieties, 2 seasons', model: 'right', ...MIDDLING, sd: null },
  { name: 'priors, 6 varieties, 2 seasons, half the mounds', model: 'right', ...MIDDLING, bore: 0.4, sd: null },
  { name: 'priors, 4 varieties, 1 season, picking days', model: 'right', ...SMALL, days: 5, sd: null },
  { name: 'spreads 0.6, 0.3, 0.3, 4 varieties, 1 season', model: 'broken', ...SMALL, sd: SPREADS },
  { name: 'spreads 0.6, 0.3, 0.3, 6 varieties, 2 seasons', model: 'broken', ...MIDDLING, sd: SPREADS },
  {
    name: 'variety in season 1.5 × variety, 1 season',
    model: 'broken',
    ...SMALL,
    sd: { variety: 0.6, season: 0.9, mound: 0.3 },
  },
  {
    name: 'variety in season 1.5 × variety, 2 seasons',
    model: 'broken',
    ...MIDDLING,
    sd: { variety: 0.6, season: 0.9, mound: 0.3 },
  },
  {
    name: 'variety in season 1.5 × variety, 4 seasons',
    model: 'broken',
    ...MIDDLING,
    seasons: 4,
    sd: { variety: 0.6, season: 0.9, mound: 0.3 },
  },
  { name: 'no variety differs', model: 'broken', ...MIDDLING, sd: { variety: 0, season: 0.3, mound: 0.3 } },
  { name: 'mounds differ as much as fruits', model: 'broken', ...MIDDLING, sd: { ...SPREADS, mound: 1 } },
  { name: 'varieties far apart', model: 'broken', ...MIDDLING, sd: { ...SPREADS, variety: 4 } },
];

console.log(`\n${tableHead(LIMITS)}`);
console.log('Here width is over that of one who knows all but the scatter of the variety’s own fruits.');

test.each(SETTINGS)('ranges of a variety hold the truth: $name', (setting) => {
  const gardens = Array.from({ length: GARDENS }, (_, index) => judgedTrial(setting, index + 1, DRAWS));
  const means = coverageOf(gardens.map((garden) => garden.means));
  const differences = coverageOf(gardens.map((garden) => garden.differences));
  console.log(tableRow(LIMITS, setting, GARDENS, 'means', means));
  console.log(tableRow(LIMITS, setting, GARDENS, 'differences', differences));
  const bold = gardens.flatMap(({ claims }) =>
    claims.map(({ share, holds }) => (share < 0.5 ? { share: 1 - share, holds: !holds } : { share, holds })),
  );
  for (const [low, high] of [
    [0.75, 0.85],
    [0.85, 0.95],
    [0.95, 1.01],
  ] as const) {
    const made = bold.filter(({ share }) => share >= low && share < high);
    if (made.length < 50) continue;
    const said = made.reduce((sum, { share }) => sum + share, 0) / made.length;
    const held = made.filter(({ holds }) => holds).length / made.length;
    console.log(`  ${made.length} claims of ${(20 * said).toFixed(1)} in 20 came true ${(20 * held).toFixed(1)} in 20`);
  }
  expect({ means: isWithin(LIMITS, setting, means), differences: isWithin(LIMITS, setting, differences) }).toEqual({
    means: true,
    differences: true,
  });
});
