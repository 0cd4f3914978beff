import { describe, expect, test } from 'vitest';
import { linkTexts, onlyProblem, placesOf, textsIn, withChange } from './garden-texts.ts';

const starter = textsIn('data/starter');
const FRUITS = 'seasons/2025/fruits.yaml';
const PICKINGS = 'seasons/2025/pickings.yaml';
const PLANTINGS = 'seasons/2025/plantings.yaml';
const WEATHER = 'weather/back-step.csv';
const FEEDING = 'seasons/2025/feeding.yaml';
const SCOUTING = 'seasons/2025/scouting.yaml';
const WATERINGS = 'seasons/2025/waterings.yaml';
const DIPS = 'seasons/2025/dips.yaml';
const SOIL = 'seasons/2025/soil.yaml';
const GARDEN = 'garden.yaml';

test('the starter itself has no problem', () => {
  expect(linkTexts(starter).problems).toEqual([]);
});

/** A slip, the code of its own message, and what its hint has to show. */
interface Slip {
  readonly name: string;
  readonly path: string;
  readonly from: string;
  readonly to: string;
  readonly code: string;
  readonly shows: string;
}

const SLIPS: readonly Slip[] = [
  {
    name: 'an unquoted colon in a note',
    path: FRUITS,
    from: 'note: Came away in the hand.',
    to: 'note: Came away: in the hand',
    code: 'colon-in-text',
    shows: 'note: "Came away: in the hand"',
  },
  {
    name: 'a tab for an indent',
    path: FRUITS,
    from: '  pick:\n    picked_on: 2025-08-17',
    to: '\tpick:\n    picked_on: 2025-08-17',
    code: 'tab-indent',
    shows: 'two spaces',
  },
  {
    name: 'a decimal comma',
    path: FRUITS,
    from: 'mass_kg: 3.35',
    to: 'mass_kg: 3,35',
    code: 'decimal-comma',
    shows: '3.35',
  },
  {
    name: 'a date by day, month and year',
    path: FRUITS,
    from: 'cut_on: 2025-08-27',
    to: 'cut_on: 12/08/2025',
    code: 'date-order',
    shows: '2025-08-12 or 2025-12-08',
  },
  {
    name: 'the unit in the value',
    path: FRUITS,
    from: 'mass_kg: 3.35',
    to: 'mass_kg: 3.35 kg',
    code: 'unit-in-value',
    shows: '3.35',
  },
  {
    name: 'the unit missing from the key',
    path: FRUITS,
    from: 'mass_kg: 3.35',
    to: 'mass: 3.35',
    code: 'unit-missing',
    shows: 'mass_kg or mass_lb',
  },
  {
    name: 'a misspelt key',
    path: FRUITS,
    from: 'brix_centre: 10.4',
    to: 'brix_center: 10.4',
    code: 'unknown-key',
    shows: 'brix_centre',
  },
  {
    name: 'an id wrong by case',
    path: FRUITS,
    from: '- id: T1-F2\n  planting: T1',
    to: '- id: T1-F2\n  planting: t1',
    code: 'id-spelling',
    shows: 'T1',
  },
  {
    name: 'kilograms and pounds',
    path: FRUITS,
    from: 'mass_kg: 3.35',
    to: 'mass_lb: 7.4\n    mass_kg: 3.35',
    code: 'two-units',
    shows: 'delete the other',
  },
  {
    name: 'a trouble by another word',
    path: SCOUTING,
    from: 'found: mildew',
    to: 'found: white leaves',
    code: 'unknown-word',
    shows: 'mildew',
  },
  {
    name: 'how bad in a word',
    path: SCOUTING,
    from: 'severity: 3',
    to: 'severity: slight',
    code: 'not-a-number',
    shows: 'blank',
  },
  {
    name: 'a feed by its maker’s name',
    path: FEEDING,
    from: 'material: bought-feed',
    to: 'material: Plumpgrow',
    code: 'unknown-word',
    shows: 'bought-feed',
  },
  {
    name: 'a spot that was not marked out',
    path: SCOUTING,
    from: 'spots: [M1]',
    to: 'spots: [m1]',
    code: 'id-spelling',
    shows: 'M1',
  },
  {
    name: 'cans counted twice over',
    path: WATERINGS,
    from: 'cans_each: 2',
    to: 'cans_each: 2, cans: 4',
    code: 'told-twice',
    shows: 'keep the one',
  },
  {
    name: 'litres in the value',
    path: WATERINGS,
    from: 'cans_each: 2',
    to: 'volume_l: 40 l',
    code: 'unit-in-value',
    shows: '40',
  },
  {
    name: 'litres or gallons, nobody knows',
    path: WATERINGS,
    from: 'cans_each: 2',
    to: 'volume: 40',
    code: 'unit-missing',
    shows: 'volume_l or volume_gal',
  },
  {
    name: 'half an hour in words',
    path: WATERINGS,
    from: 'minutes: 30 ',
    to: 'minutes: half an hour ',
    code: 'not-a-number',
    shows: 'blank',
  },
  {
    name: 'water from somewhere else',
    path: WATERINGS,
    from: 'how: can, from: tank',
    to: 'how: can, from: brook',
    code: 'unknown-word',
    shows: 'mains, other',
  },
  {
    name: 'a measured amount where a word belongs',
    path: WATERINGS,
    from: 'roughly: some  ',
    to: 'roughly: 2 cans  ',
    code: 'unknown-word',
    shows: 'some, little, plenty',
  },
  {
    name: 'a spot watered that was not marked out',
    path: WATERINGS,
    from: 'spots: [T1]',
    to: 'spots: [T11]',
    code: 'dangling-id',
    shows: 'T1',
  },
  {
    name: 'a dip in half centimetres and a comma',
    path: DIPS,
    from: 'depth_cm: about 53',
    to: 'depth_cm: about 53,5',
    code: 'decimal-comma',
    shows: 'about 53.5',
  },
  {
    name: 'a dip in millimetres',
    path: DIPS,
    from: 'depth_cm: 64',
    to: 'depth_cm: 640',
    code: 'out-of-range',
    shows: 'unit in the key',
  },
  {
    name: 'a dip over the brim',
    path: DIPS,
    from: 'depth_cm: 64',
    to: 'depth_cm: 88',
    code: 'dip-over-tank',
    shows: 'measures of the tank',
  },
  {
    name: 'soil of another word',
    path: SOIL,
    from: 'below: damp',
    to: 'below: moist',
    code: 'unknown-word',
    shows: 'dry, damp, wet',
  },
  {
    name: 'a tap measured from above',
    path: GARDEN,
    from: 'tap_cm: 8 ',
    to: 'tap_cm: 87 ',
    code: 'tap-above-tank',
    shows: 'from the floor',
  },
  {
    name: 'a tank of another shape',
    path: GARDEN,
    from: 'shape: upright ',
    to: 'shape: barrel ',
    code: 'unknown-word',
    shows: 'upright, lying, box',
  },
];

describe('a beginner’s slip has its own message', () => {
  for (const { name, path, from, to, code, shows } of SLIPS) {
    test(name, () => {
      const texts = withChange(starter, path, from, to);
      const problem = onlyProblem(texts);
      const offset = texts[path]?.indexOf(to) ?? 0;
      const line = (texts[path] ?? '').slice(0, offset).split('\n').length;
      expect(problem).toMatchObject({ severity: 'error', file: path, code });
      expect(problem.line - line).toBeGreaterThanOrEqual(0);
      expect(problem.line - line).toBeLessThanOrEqual(to.split('\n').length);
      expect(problem.hint).toContain(shows);
    });
  }

  test('a decimal comma inside braces', () => {
    const texts = { ...starter, [PICKINGS]: '- {planting: R1, picked_on: 2025-08-12, count: 3, mass_kg: 6,4}\n' };
    expect(onlyProblem(texts)).toMatchObject({ code: 'decimal-comma', line: 1, column: 62 });
  });

  test('a decimal comma in a table', () => {
    const texts = { ...starter, [WEATHER]: 'date;rain_mm;tmax_c\n2025-08-12;3,5;30\n' };
    expect(onlyProblem(texts)).toMatchObject({ code: 'decimal-comma', line: 2, column: 12 });
  });

  test('the dash of one record missing, and of several', () => {
    const one = 'planting: R1\npicked_on: 2025-08-12\ncount: 3\n';
    expect(onlyProblem({ ...starter, [PICKINGS]: one })).toMatchObject({ code: 'dash-missing', line: 1 });
    const several = 'id: V1\nvisited_on: 2025-08-12\nfruits: []\nid: V2\nvisited_on: 2025-08-13\nfruits: []\n';
    const problem = onlyProblem({ ...starter, 'seasons/2025/visits.yaml': several });
    expect(problem).toMatchObject({ code: 'dash-missing', line: 4 });
    expect(problem.hint).toContain('- id: V2');
  });

  test('picked before planted', () => {
    const texts = { ...starter, [PICKINGS]: '- {planting: R1, picked_on: 2025-05-01, count: 3}\n' };
    expect(onlyProblem(texts)).toMatchObject({ code: 'picked-before-planted', field: 'picked_on', severity: 'error' });
  });
});

test('one refused record takes no other with it', () => {
  const planting = starter[PLANTINGS] ?? '';
  const texts = { ...starter, [PLANTINGS]: planting.replace(/planted_on: \S+/, 'planted_on: soon') };
  expect(placesOf(texts).map((place) => place.split(' ')[1])).toEqual(['date-form']);
});

test('all problems at once, by file and place', () => {
  const texts = withChange(
    withChange(starter, FRUITS, 'mass_kg: 3.35', 'mass_kg: 3,35'),
    FRUITS,
    'reason: damage',
    'reason: hail',
  );
  const problems = linkTexts({
    ...texts,
    [PICKINGS]: '- {planting: nowhere, picked_on: 2025-08-12, count: -1}\n',
  }).problems;
  expect(problems.map(({ code }) => code)).toEqual(['decimal-comma', 'unknown-word', 'out-of-range']);
  expect(problems[1]?.hint).toContain('forecast');
});
