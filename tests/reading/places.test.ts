import { describe, expect, test } from 'vitest';
import { linkTexts, placeOf, textsIn, withChange } from './garden-texts.ts';

const starter = textsIn('data/starter');
const GARDEN = 'garden.yaml';
const FRUITS = 'seasons/2025/fruits.yaml';
const PICKINGS = 'seasons/2025/pickings.yaml';
const PLANTINGS = 'seasons/2025/plantings.yaml';
const VISITS = 'seasons/2025/visits.yaml';
const WEATHER = 'weather/back-step.csv';

/** Name, file, text there, text typed instead, every problem as line:column code, and what the first hint shows. */
type Slip = readonly [name: string, path: string, from: string, to: string, places: string, shows: string];

const LAST_NOTE = 'note: Seedlings from over the fence, no label. Round and pale green, whatever they are.';
const LOOK = '{fruit: T1-F1, slip: none, call: not-yet}';

const SLIPS: readonly Slip[] = [
  [
    'colon in a note',
    PLANTINGS,
    LAST_NOTE,
    'note: Seedlings: no label',
    '31:9 colon-in-text',
    'note: "Seedlings: no label"',
  ],
  ['colon in a note between braces', VISITS, LOOK, '{fruit: T1-F1, note: a: b}', '14:22 colon-in-text', 'note: "a: b"'],
  [
    'comma in a note between braces',
    VISITS,
    LOOK,
    '{fruit: T1-F1, note: split, eaten}',
    '14:35 comma-in-text',
    '"…, eaten"',
  ],
  ['tab before a key', PLANTINGS, '  spot: M1', '\tspot: M1', '11:1 tab-indent', 'two spaces'],
  ['tab after spaces', FRUITS, '    set_on: 2025-07-06', '  \tset_on: 2025-07-06', '10:3 tab-indent', 'two spaces'],
  ['decimal comma', FRUITS, 'mass_kg: 3.35', 'mass_kg: 3,35', '14:14 decimal-comma', 'write 3.35'],
  [
    'decimal comma in about',
    FRUITS,
    'mass_kg: about 4',
    'mass_kg: about 4,5',
    '34:14 decimal-comma',
    'write about 4.5',
  ],
  [
    'decimal comma in a table',
    WEATHER,
    '2025-08-15,2.4,26.5,17.0,',
    '2025-08-15,2,4,26.5,17.0,',
    '13:1 cell-count',
    '6.4',
  ],
  [
    'day, month, year',
    PLANTINGS,
    'planted_on: 2025-05-24',
    'planted_on: 12/08/2025',
    '14:15 date-order',
    'write 2025-08-12 or 2025-12-08',
  ],
  [
    'day over twelve',
    PLANTINGS,
    'planted_on: 2025-05-24',
    'planted_on: 24.5.2025',
    '14:15 date-order',
    'write 2025-05-24',
  ],
  ['unit in the value', FRUITS, 'mass_kg: 3.35', 'mass_kg: 3.35 kg', '14:14 unit-in-value', 'write 3.35'],
  ['unit missing', FRUITS, 'mass_kg: 3.35', 'mass: 3.35', '14:5 unit-missing', 'mass_kg or mass_lb'],
  ['unit the book does not know', FRUITS, 'mass_kg: 3.35', 'mass_g: 3350', '14:5 unit-missing', 'mass_kg or mass_lb'],
  ['kg and lb both', FRUITS, 'mass_kg: 3.35', 'mass_kg: 3.35\n    mass_lb: 7.4', '15:14 two-units', 'delete the other'],
  ['misspelt key', FRUITS, 'brix_centre: 10.4', 'brix_center: 10.4', '20:5 unknown-key', 'brix_centre'],
  ['short key near none', FRUITS, 'brix_centre: 10.4', 'k0: 10.4', '20:5 unknown-key', 'the keys here are: cut_on'],
  [
    'misspelt key that is needed, told once',
    PLANTINGS,
    'plants_set: 1',
    'plant_set: 1',
    '23:3 unknown-key',
    'plants_set',
  ],
  ['id wrong by case', PLANTINGS, 'brindle-penny', 'Brindle-Penny', '12:12 id-spelling', 'write brindle-penny'],
  ['id wrong by hyphen', VISITS, '- {fruit: T1-F2,', '- {fruit: T1F2,', '34:15 id-spelling', 'write T1-F2'],
  ['first dash missing', PLANTINGS, '- id: M1', '  id: M1', '10:3 dash-missing', '"- id: M1"'],
  ['first dash missing, at the margin', PLANTINGS, '- id: M1\n', 'id: M1\n', '10:1 dash-missing', '"- id: M1"'],
  ['second dash missing', PLANTINGS, '- id: T1', '  id: T1', '18:3 dash-missing', '"- id: T1"'],
  ['second dash missing, at the margin', PLANTINGS, '- id: T1', 'id: T1', '18:1 dash-missing', '"- id: T1"'],
  [
    'dash missing where records have no id',
    PICKINGS,
    '- planting: R1\n  picked_on: 2025-09-14',
    '  planting: R1\n  picked_on: 2025-09-14',
    '17:3 dash-missing',
    '"- planting: R1"',
  ],
  [
    'dash missing in a list inside',
    VISITS,
    '    - fruit: M1-F2',
    '      fruit: M1-F2',
    '25:7 dash-missing',
    '"- fruit: M1-F2"',
  ],
  ['dash missing in a map inside', GARDEN, '  - id: T1', '    id: T1', '28:5 dash-missing', '"- id: T1"'],
  [
    'picked before planted',
    PICKINGS,
    'picked_on: 2025-08-23',
    'picked_on: 2025-05-01',
    '9:14 picked-before-planted',
    '"about"',
  ],
  ['line too far out', PLANTINGS, '  spot: T1', 'spot: T1', '19:1 indent', 'column of the key above'],
  [
    'line too far in',
    PLANTINGS,
    '  variety: lark-lantern',
    '     variety: lark-lantern',
    '20:6 indent',
    'column of the key above',
  ],
  ['colon missing', PLANTINGS, '  spot: T1', '  spot T1', '19:3 colon-space', 'write key: value'],
  ['space after the colon missing', PLANTINGS, '  spot: T1', '  spot:T1', '19:3 colon-space', 'write key: value'],
  ['apostrophe in single quotes', PLANTINGS, LAST_NOTE, "note: 'it's fine'", '31:13 after-quote', '"double quotes"'],
  [
    'quote not closed',
    FRUITS,
    'note: The morning after the big rain.',
    'note: "The morning',
    '36:11 quote-open',
    'closing "',
  ],
  ['brace not closed', VISITS, LOOK, '{fruit: T1-F1, slip: none', '14:7 bracket-open', 'close it with }'],
  ['key twice', FRUITS, 'mass_kg: 3.35', 'mass_kg: 3.35\n    mass_kg: 3.36', '15:5 key-twice', 'keep one of them'],
  ['sign no text begins with', PLANTINGS, LAST_NOTE, 'note: @home', '31:9 odd-start', 'in quotes'],
  ['star at the head of a text', PLANTINGS, LAST_NOTE, 'note: *bold*', '31:9 alias', 'in quotes'],
];

describe('a slip is told once, at its line and column, with what to type', () => {
  for (const [name, path, from, to, places, shows] of SLIPS) {
    test(name, () => {
      const errors = linkTexts(withChange(starter, path, from, to)).problems;
      expect(errors.map(placeOf)).toEqual([`${path}:${places}`]);
      expect(errors[0]?.hint).toContain(shows);
    });
  }
});

const withoutDashes = (path: string, instead: string): string[] => {
  const text = (starter[path] ?? '').replace(/^- /gm, instead);
  return linkTexts({ ...starter, [path]: text }).problems.map(placeOf);
};

test('all dashes of a file missing: each record is told, and nothing else', () => {
  const lines = [10, 18, 26].map((line) => `${PLANTINGS}:${line}`);
  expect(withoutDashes(PLANTINGS, '')).toEqual(lines.map((place) => `${place}:1 dash-missing`));
  expect(withoutDashes(PLANTINGS, '  ')).toEqual(lines.slice(1).map((place) => `${place}:3 dash-missing`));
  expect(withoutDashes(PICKINGS, '  ')).toEqual([13, 17].map((line) => `${PICKINGS}:${line}:3 dash-missing`));
});

test('two slips in two records of a file that parses are both told', () => {
  const texts = withChange(
    withChange(starter, FRUITS, 'mass_kg: 3.35', 'mass: 3.35'),
    FRUITS,
    'size: middling',
    'size: medium',
  );
  expect(linkTexts(texts).problems.map(placeOf)).toEqual([
    `${FRUITS}:14:5 unit-missing`,
    `${FRUITS}:60:11 unknown-word`,
  ]);
});
