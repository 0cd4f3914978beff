import { Temporal } from 'temporal-polyfill';
import { describe, expect, it, test } from 'vitest';
import { addDays, type Day, dayOf } from '../../src/day.ts';
import { earliestSafePicking, LEAST_DAYS, manureClocks } from '../../src/garden/manure-clock.ts';
import { linkTexts, onlyProblem, placeOf, placesOf } from '../reading/garden-texts.ts';

/** Electronic Code of Federal Regulations, 7 CFR 205.203(c)(1)(ii) and (iii), read in a copy of 2026. */
const WAIT = { touches_soil: 120, does_not: 90 };

it.each([
  // 29 days of April, 31 of May, 30 of June and 30 of July.
  ['2025-04-01', '2025-07-30', '2025-06-30'],
  // Over a leap day: 29 of February, 31 of March, 30 of April and 30 of May.
  ['2024-01-31', '2024-05-30', '2024-04-30'],
  ['2023-01-31', '2023-05-31', '2023-05-01'],
  ['2025-10-15', '2026-02-12', '2026-01-13'],
])('worked in on %s: fruit on the ground from %s, off it from %s', (applied, ground, above) => {
  expect(earliestSafePicking(applied as Day, true)).toBe(ground);
  expect(earliestSafePicking(applied as Day, false)).toBe(above);
});

it('waits as long as the rule says, counted by Temporal, on every day of four years', () => {
  expect(LEAST_DAYS).toEqual({ fruit_on_ground: WAIT.touches_soil, fruit_above_ground: WAIT.does_not });
  for (let step = 0; step < 4 * 365; step += 1) {
    const applied = addDays(dayOf(2023, 1, 1), step);
    const plain = Temporal.PlainDate.from(applied);
    expect(earliestSafePicking(applied, true)).toBe(plain.add({ days: WAIT.touches_soil }).toString());
    expect(earliestSafePicking(applied, false)).toBe(plain.add({ days: WAIT.does_not }).toString());
  }
});

const PLANTINGS = `- {id: P1, spot: M1, variety: amber, planted_on: 2025-05-20, plants_set: 2}
- {id: P2, spot: M2, variety: reach, planted_on: 2025-05-20, plants_set: 2}
- {id: P3, spot: M3, variety: unknown, planted_on: 2025-05-20, plants_set: 1}
`;

/** A garden of fruit that lies (M1, ripe from 80 days), of fruit that hangs (M2, no days told) and of a planting nobody knows. */
const garden = (feeding: string, more: Readonly<Record<string, string>> = {}): Record<string, string> => ({
  'garden.yaml':
    'name: Test\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots:\n  - {id: M1, kind: mound}\n  - {id: M2, kind: mound}\n  - {id: M3, kind: mound}\n  - {id: M4, kind: mound}\n',
  'crops/globe.yaml':
    'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\nripe_days: {set_days_low: 30, set_days_high: 40, planted_days_low: 80, sources: [trade-practice]}\n',
  'crops/bell.yaml': 'id: bell\nnames: {en: bell}\nplurals: {en: bells}\nslip: none\nfruit_on_ground: no\n',
  'varieties.yaml':
    '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: reach, name: Reach, crop: bell, seed: unknown}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
  'seasons/2025/plantings.yaml': PLANTINGS,
  'seasons/2025/feeding.yaml': feeding,
  ...more,
});

const FEEDING = 'seasons/2025/feeding.yaml';
const given = (on: string, spots: string | null = 'M1', material = 'manure-raw'): string =>
  `- {given_on: ${on}, ${spots ? `spots: [${spots}], ` : ''}material: ${material}, barrows: 1}\n`;
const picking = (planting: string, on: string, count = 2): Record<string, string> => ({
  'seasons/2025/pickings.yaml': `- {planting: ${planting}, picked_on: ${on}, count: ${count}}\n`,
});
const fruit = (planting: string, on: string): Record<string, string> => ({
  'seasons/2025/fruits.yaml': `- {id: F1, planting: ${planting}, fate: picked, pick: {picked_on: ${on}}}\n`,
});

describe('a warning on the day manure was given', () => {
  test('stands where a fruit was picked too soon, and names planting, picking and safe day', () => {
    // 120 days from 20 April: 10 + 31 + 30 + 31 + 18.
    const problem = onlyProblem(garden(given('2025-04-20'), fruit('P1', '2025-08-17')));
    expect(placeOf(problem)).toBe(`${FEEDING}:1:14 manure-clock`);
    expect(problem).toMatchObject({ severity: 'warning', field: 'given_on' });
    for (const word of ['P1', '2025-08-17', '2025-08-18', '120 days']) expect(problem.message).toContain(word);
  });

  // Given; spots; what was picked; whether it is told.
  test.each([
    ['picked on the safe day', given('2025-04-20'), fruit('P1', '2025-08-18'), false],
    ['a basket too soon', given('2025-04-20'), picking('P1', '2025-08-17'), true],
    ['a basket of a span that begins too soon', given('2025-04-20'), picking('P1', '2025-08-10..2025-09-10'), true],
    ['nothing in the basket, and ripe from 8 August', given('2025-04-20'), picking('P1', '2025-08-01', 0), true],
    ['nothing in the basket, and ripe on the safe day', given('2025-04-10'), picking('P1', '2025-08-01', 0), false],
    ['a fruit of another spot', given('2025-04-10'), fruit('P2', '2025-06-01'), false],
    ['given in no known spot: everywhere', given('2025-04-20', null), fruit('P2', '2025-06-20'), true],
    ['some day of April: the last of them counts', given('2025-04'), fruit('P1', '2025-08-27'), true],
    ['nobody knows when', given('unknown'), fruit('P1', '2025-08-01'), false],
    ['picked before it was given', given('2025-09-20'), fruit('P1', '2025-09-10'), false],
    ['given after the season', given('2025-11-20'), {}, false],
    ['dried is no better', given('2025-04-20', 'M1', 'manure-dried'), fruit('P1', '2025-08-17'), true],
    ['composted has no wait', given('2025-04-20', 'M1', 'manure-composted'), fruit('P1', '2025-08-17'), false],
    // 80 days from 20 May are 8 August: 11 + 30 + 31 + 8. 120 days to it began on 10 April.
    ['nothing picked yet, ripe on the safe day', given('2025-04-10'), {}, false],
    ['nothing picked yet, ripe a day too soon', given('2025-04-11'), {}, true],
    // Fruit that hangs: 90 days from 19 February end on planting day, 20 May.
    ['no days of ripening told, safe by planting out', given('2025-02-19', 'M2'), {}, false],
    ['no days of ripening told, safe a day after', given('2025-02-20', 'M2'), {}, true],
    ['90 days where fruit hangs', given('2025-04-20', 'M2'), fruit('P2', '2025-07-19'), false],
    ['a day less', given('2025-04-20', 'M2'), fruit('P2', '2025-07-18'), true],
    ['an unknown variety may lie on the ground', given('2025-04-20', 'M3'), fruit('P3', '2025-08-17'), true],
  ])('%s', (_what, feeding, more, told) => {
    const codes = placesOf(garden(feeding, more)).filter((place) => !place.endsWith('harvest-missing'));
    expect(codes).toEqual(told ? [`${FEEDING}:1:14 manure-clock`] : []);
  });

  test('is one an entry, of the soonest planting, and counts the others', () => {
    const problem = onlyProblem(garden(given('2025-06-01', null)));
    expect(problem.message).toMatch(/planting P[23] may be ripe from 2025-05-20/);
    expect(problem.message).toContain('2 more plantings');
  });
});

function clocksOf(feeding: string): ReturnType<typeof manureClocks> {
  const season = linkTexts(garden(feeding)).garden?.seasons[0];
  if (!season) throw new Error('no season');
  // Whatever the order of the plantings, spots stand in the order people count them.
  return manureClocks(season.events.feeding, season.plantings.toReversed());
}
const told = (feeding: string) =>
  clocksOf(feeding).map(({ material, days, earliest, spots }) => [material, days, earliest, spots]);

test('every entry of raw manure has its day, the shorter wait apart', () => {
  expect(told(given('2025-04-20', 'M1, M2') + given('2025-04-21', 'M1', 'compost'))).toEqual([
    ['manure-raw', 120, '2025-08-18', ['M1']],
    ['manure-raw', 90, '2025-07-19', ['M2']],
  ]);
  // All of the garden, lying and hanging: told apart. M4 has nothing planted, and no entry.
  expect(told(given('2025-04-20', null, 'manure-dried'))).toEqual([
    ['manure-dried', 120, '2025-08-18', ['M1', 'M3']],
    ['manure-dried', 90, '2025-07-19', ['M2']],
  ]);
});

test('an empty spot waits the longer time, and a day nobody knows ends never', () => {
  expect(told(given('2025-04-20', 'M4'))).toEqual([['manure-raw', 120, '2025-08-18', ['M4']]]);
  expect(told(given('unknown', 'M2'))).toEqual([['manure-raw', 90, null, ['M2']]]);
});

test('a spot where one fruit lies and another hangs waits the longer time', () => {
  const [season] = linkTexts(garden(given('2025-04-20', 'M1, M2'))).garden?.seasons ?? [];
  const [lying, hanging] = season?.plantings ?? [];
  if (!season || !lying || !hanging) throw new Error('no plantings');
  const clocks = manureClocks(season.events.feeding, [lying, { ...hanging, spot: lying.spot }, hanging]);
  expect(clocks.map(({ spots, days }) => [spots, days])).toEqual([
    [['M1'], 120],
    [['M2'], 90],
  ]);
});

test('over all of a garden that waits alike no spots are listed', () => {
  const [season] = linkTexts(garden(given('2025-04-20', null))).garden?.seasons ?? [];
  const lying = season?.plantings.filter(({ spot }) => spot.id !== 'M2') ?? [];
  expect(manureClocks(season?.events.feeding ?? [], lying).map(({ spots }) => spots)).toEqual([null]);
  expect(manureClocks(season?.events.feeding ?? [], []).map(({ spots, days }) => [spots, days])).toEqual([[null, 120]]);
});
