import { describe, expect, test } from 'vitest';
import { linkTexts, placeOf, textsIn, withChange } from '../reading/garden-texts.ts';

const starter = textsIn('data/starter');
const GARDEN = 'garden.yaml';
const VARIETIES = 'varieties.yaml';
const SEASON = 'seasons/2025/season.yaml';
const PLANTINGS = 'seasons/2025/plantings.yaml';
const FRUITS = 'seasons/2025/fruits.yaml';

/** One slip in a record that others refer to, and the one problem it makes. */
const SLIPS: readonly [string, string, string, string, string][] = [
  ['a spot', GARDEN, 'kind: mound ', 'kind: hill ', '25:11 unknown-word'],
  ['the garden', GARDEN, 'paper: A4 ', 'paper: A9 ', '9:8 unknown-word'],
  ['a variety', VARIETIES, 'stated_days: 78', 'stated_days: 7.8', '10:16 not-whole'],
  ['a variety without its id', VARIETIES, '- id: brindle-penny\n  name', '- name', '5:3 missing-key'],
  ['a whole file of varieties', VARIETIES, 'name: Lark Lantern', 'name: "Lark Lantern', '15:9 quote-open'],
  ['a planting', PLANTINGS, 'plants_alive: 2 ', 'plants_alive: two ', '16:17 not-a-number'],
  ['a planting whose id is misspelt', PLANTINGS, '- id: R1', '- ID: R1', '26:3 unknown-key'],
  ['a fruit', FRUITS, 'state: just-ripe', 'state: nearly', '40:12 unknown-word'],
  ['a tank', GARDEN, 'roof_m2: 6 ', 'roof_m2: 0 ', '42:12 out-of-range'],
  [
    'a watering',
    'seasons/2025/waterings.yaml',
    'spots: [M1, R1], cans_each',
    'spots: [M1, R1], buckets',
    '6:45 unknown-key',
  ],
  ['a dip', 'seasons/2025/dips.yaml', 'overflowed: yes', 'overflowed: perhaps', '9:15 unknown-word'],
  ['a season', SEASON, 'starts_on: 2025-04-01', 'starts_on: April', '5:12 date-form'],
];

describe('a refused record is one problem, and what refers to it is none', () => {
  for (const [name, path, from, to, place] of SLIPS) {
    test(name, () => {
      expect(linkTexts(withChange(starter, path, from, to)).problems.map(placeOf)).toEqual([`${path}:${place}`]);
    });
  }

  for (const path of [
    VARIETIES,
    PLANTINGS,
    FRUITS,
    'seasons/2025/visits.yaml',
    'seasons/2025/waterings.yaml',
    'seasons/2025/dips.yaml',
    'seasons/2025/soil.yaml',
  ]) {
    test(`${path} of another shape`, () => {
      const problems = linkTexts({ ...starter, [path]: 'only words\n' }).problems;
      expect(problems.map(placeOf)).toEqual([`${path}:1:1 dash-missing`]);
    });
  }
});

describe('an id that leads nowhere is told for every kind of reference', () => {
  const CASES: readonly [string, string, string, string, string, string][] = [
    ['spot', PLANTINGS, '  spot: T1', '  spot: T7', '19:9 dangling-id', 'did you mean T1?'],
    [
      'variety',
      PLANTINGS,
      'variety: lark-lantern',
      'variety: larkspur',
      '20:12 dangling-id',
      'brindle-penny, lark-lantern',
    ],
    ['crop', VARIETIES, 'crop: muskmelon', 'crop: muskmelonn', '16:9 dangling-id', 'did you mean muskmelon?'],
    ['station', GARDEN, 'station: back-step', 'station: back-stoop', '18:12 dangling-id', 'did you mean back-step?'],
    ['bed', GARDEN, 'kind: tub', 'kind: tub\n    bed: B', '30:10 dangling-id', 'no bed is recorded yet'],
    [
      'spot of a finger in the soil',
      'seasons/2025/soil.yaml',
      'spots: [M1, R1]',
      'spots: [M1, R2]',
      '5:15 dangling-id',
      'did you mean R1?',
    ],
    [
      'planting of a fruit',
      FRUITS,
      '- id: T1-F2\n  planting: T1',
      '- id: T1-F2\n  planting: T2',
      '70:13 dangling-id',
      'did you mean',
    ],
  ];
  for (const [name, path, from, to, place, shows] of CASES) {
    test(name, () => {
      const { problems } = linkTexts(withChange(starter, path, from, to));
      expect(problems.map(placeOf)).toEqual([`${path}:${place}`]);
      expect(problems[0]?.hint).toContain(shows);
    });
  }
});

test('problems of many files come by file, then by place', () => {
  const slips = [
    [FRUITS, 'state: just-ripe', 'state: nearly'],
    [FRUITS, 'mass_kg: 3.35', 'mass_kg: 3,35'],
    [VARIETIES, 'seed: hybrid', 'seed: bought'],
    [GARDEN, 'kind: mound ', 'kind: hill '],
  ] as const;
  const texts = slips.reduce((edited, [path, from, to]) => withChange(edited, path, from, to), starter);
  expect(linkTexts(texts).problems.map(placeOf)).toEqual([
    `${GARDEN}:25:11 unknown-word`,
    `${FRUITS}:14:14 decimal-comma`,
    `${FRUITS}:40:12 unknown-word`,
    `${VARIETIES}:17:9 unknown-word`,
  ]);
});
