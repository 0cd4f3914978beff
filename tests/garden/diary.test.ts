import { describe, expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { asOf } from '../../src/garden/as-of.ts';
import { allEvents, EVENT_KINDS } from '../../src/garden/event.ts';
import { lastDay } from '../../src/garden/last-day.ts';
import { linkTexts, placeOf } from '../reading/garden-texts.ts';

const GARDEN = {
  'garden.yaml':
    'name: Test\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots:\n  - {id: M1, kind: mound}\n  - {id: M2, kind: mound}\n',
  'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
  'varieties.yaml':
    '- {id: amber, name: Amber, crop: globe, seed: open-pollinated}\n- {id: birch, name: Birch, crop: globe, seed: hybrid}\n',
  'lots.yaml': '- {id: A-24, variety: amber, from: bought}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-01\n',
  'seasons/2025/plantings.yaml': '- {id: P1, spot: M1, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n',
  'seasons/2025/fruits.yaml':
    '- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2025-08-12}}\n- {id: F2, planting: P1, fate: growing}\n',
};

const linked = (files: Readonly<Record<string, string>>) =>
  linkTexts({
    ...GARDEN,
    ...Object.fromEntries(
      Object.entries(files).map(([name, text]) => [name === 'lots' ? 'lots.yaml' : `seasons/2025/${name}.yaml`, text]),
    ),
  });

const placesOf = (kind: string, text: string): string[] =>
  linked({ [kind]: text }).problems.map(
    (problem) => `${placeOf(problem).replace(/^.*\.yaml:/, '')}${problem.severity === 'warning' ? ' W' : ''}`,
  );

/** Kind, what is written, and what is wrong with it at which line and column; W marks a warning. */
const CASES: readonly [name: string, kind: string, text: string, wrong: string[]][] = [
  ['a sowing as it should be', 'sowings', '- {sown_on: 2025-03-20, lot: A-24, seeds: 8, emerged: 8}\n', []],
  ['a lot that is not there', 'sowings', '- {sown_on: 2025-04-20, lot: A-25, seeds: 8}\n', ['1:30 dangling-id']],
  [
    'a variety that is not there',
    'sowings',
    '- {sown_on: 2025-04-20, variety: umber, seeds: 8}\n',
    ['1:34 dangling-id'],
  ],
  ['an unknown variety', 'sowings', '- {sown_on: 2025-04-20, variety: unknown, seeds: 8}\n', []],
  ['a planting spelt otherwise', 'shares', '- {shared_on: 2025-08-20, to: home, planting: p1}\n', ['1:47 id-spelling']],
  [
    'one spot of a list',
    'mulching',
    '- {laid_on: 2025-06-10, material: straw, spots: [M1, M3]}\n',
    ['1:54 dangling-id'],
  ],
  [
    'the other fruit of a pair',
    'tastings',
    '- {tasted_on: 2025-08-20, fruit: F1, against: F9}\n',
    ['1:47 dangling-id'],
  ],
  [
    'the first fruit of a pair',
    'tastings',
    '- {tasted_on: 2025-08-20, fruit: F8, against: F1}\n',
    ['1:34 dangling-id'],
  ],
  ['a fruit measured', 'girths', '- {measured_on: 2025-08-02, fruit: F7, girth_cm: 60}\n', ['1:36 dangling-id']],
  ['a fruit kept', 'keeping', '- {ended_on: 2025-08-20, fruit: F7, ended: rotted}\n', ['1:33 dangling-id']],
  [
    'a planting of a flower',
    'flowering',
    '- {seen_on: 2025-07-01, planting: P9, what: first-male}\n',
    ['1:35 dangling-id'],
  ],
  ['a planting of a tray', 'sowings', '- {sown_on: 2025-04-20, planting: P9, seeds: 8}\n', ['1:35 dangling-id']],
  [
    'each of two spots fed',
    'feeding',
    '- {given_on: 2025-06-02, material: compost, spots: [M8, M1, M9]}\n',
    ['1:53 dangling-id', '1:61 dangling-id'],
  ],
  ['a spot looked at', 'scouting', '- {looked_on: 2025-07-01, found: none, spots: [M4]}\n', ['1:48 dangling-id']],
  ['a fruit against itself', 'tastings', '- {tasted_on: 2025-08-20, fruit: F1, against: F1}\n', ['1:47 same-fruit']],
  [
    'a few in order, by liking and by sweetness',
    'tastings',
    '- {tasted_on: 2025-08-20, best_first: [F2, F1], sweetest_first: [F1, F2]}\n- {tasted_on: 2025-08-20, sweetest_first: [F1, F2]}\n',
    [],
  ],
  [
    'fruits of an order that are not there',
    'tastings',
    '- {tasted_on: 2025-08-20, best_first: [F1, F9], sweetest_first: [f2, F1]}\n',
    ['1:44 dangling-id', '1:66 id-spelling'],
  ],
  [
    'a fruit twice in an order',
    'tastings',
    '- {tasted_on: 2025-08-20, best_first: [F1, F2, F1]}\n',
    ['1:48 fruit-twice'],
  ],
  [
    'a fruit twice in the second order',
    'tastings',
    '- {tasted_on: 2025-08-20, best_first: [F1, F2], sweetest_first: [F2, F2]}\n',
    ['1:70 fruit-twice'],
  ],
  [
    'an order of one, and an empty one',
    'tastings',
    '- {tasted_on: 2025-08-20, best_first: [F1]}\n- {tasted_on: 2025-08-20, sweetest_first: []}\n',
    ['1:39 order-too-short', '2:43 order-too-short'],
  ],
  [
    'a pair and an order in one',
    'tastings',
    '- {tasted_on: 2025-08-20, fruit: F1, against: F2, best_first: [F1, F2]}\n- {tasted_on: 2025-08-20, sweetest_first: [F1, F2], better: same}\n',
    ['1:51 pair-and-order', '2:27 pair-and-order'],
  ],
  ['neither a pair nor an order', 'tastings', '- {tasted_on: 2025-08-20, note: fine}\n', ['1:15 nothing-tasted']],
  [
    'half a pair, either half',
    'tastings',
    '- {tasted_on: 2025-08-20, fruit: F1, better: better}\n- {tasted_on: 2025-08-20, against: F1}\n',
    ['1:34 half-a-pair', '2:36 half-a-pair'],
  ],
  ['more up than sown', 'sowings', '- {sown_on: 2025-04-20, seeds: 8, emerged: 9}\n', ['1:44 part-over-whole']],
  [
    'up before it was sown',
    'sowings',
    '- {sown_on: 2025-04-20, seeds: 8, emerged_on: 2025-04-19}\n',
    ['1:47 up-before-sown'],
  ],
  [
    'more set than flowers',
    'flowering',
    '- {seen_on: 2025-07-01, what: tagged, flowers: 3, took: 4}\n',
    ['1:57 part-over-whole'],
  ],
  [
    'a flower before its planting',
    'flowering',
    '- {seen_on: 2025-05-19, planting: P1, what: first-male}\n',
    ['1:13 seen-before-planted'],
  ],
  [
    'measured after it was picked',
    'girths',
    '- {measured_on: 2025-08-13, fruit: F1, girth_cm: 60}\n',
    ['1:17 picked-before-measured'],
  ],
  [
    'kept to an end before it was picked',
    'keeping',
    '- {ended_on: 2025-08-11, fruit: F1, ended: rotted}\n',
    ['1:14 ended-before-picked'],
  ],
  [
    'nothing found, and some',
    'scouting',
    '- {looked_on: 2025-07-01, found: none, checked: 5, affected: 1}\n',
    ['1:34 none-yet-some'],
  ],
  [
    'nothing found, and none',
    'scouting',
    '- {looked_on: 2025-07-01, found: none, checked: 5, affected: 0, severity: 0}\n',
    [],
  ],
  [
    'more affected than looked at',
    'scouting',
    '- {looked_on: 2025-07-01, found: wilt, checked: 5, affected: 6}\n',
    ['1:62 part-over-whole'],
  ],
  ['worse than worst', 'scouting', '- {looked_on: 2025-07-01, found: wilt, severity: 10}\n', ['1:50 out-of-range']],
  ['mulch of another year', 'mulching', '- {laid_on: 2024-06-10, material: straw}\n', ['1:13 outside-season W']],
  [
    'water told by can and by litre',
    'waterings',
    '- {watered_on: 2025-07-02, cans_each: 2, volume_l: 36}\n',
    ['1:52 told-twice'],
  ],
  [
    'water told by can for each and for all',
    'waterings',
    '- {watered_on: 2025-07-02, cans: 4, cans_each: 2}\n',
    ['1:34 told-twice'],
  ],
  [
    'water told by litre and by the clock',
    'waterings',
    '- {watered_on: 2025-07-02, volume_l: 36, minutes: 4, flow_l_min: 9}\n',
    ['1:51 told-twice'],
  ],
  [
    'water told in four ways is one complaint, at one of them',
    'waterings',
    '- {watered_on: 2025-07-02, minutes: 4, cans: 4, volume_l: 36, cans_each: 2}\n',
    ['1:46 told-twice'],
  ],
  ['minutes with their flow', 'waterings', '- {watered_on: 2025-07-02, minutes: 4, flow_l_min: 9}\n', []],
  ['a count and a word beside it', 'waterings', '- {watered_on: 2025-07-02, cans: 4, roughly: plenty}\n', []],
  ['water nobody measured', 'waterings', '- {watered_on: 2025-07-02, roughly: some}\n', []],
  [
    'each of two spots watered',
    'waterings',
    '- {watered_on: 2025-07-02, spots: [M8, m1], cans_each: 1}\n',
    ['1:36 dangling-id', '1:40 id-spelling'],
  ],
  [
    'water of another year',
    'waterings',
    '- {watered_on: 2024-07-02, cans: 4}\n- {watered_on: 2025-07, cans: 30}\n',
    ['1:16 outside-season W'],
  ],
  ['a spot felt', 'soil', '- {felt_on: 2025-07-01, spots: [M3], top: dry}\n', ['1:33 dangling-id']],
  ['soil of another year', 'soil', '- {felt_on: 2024-07-02, top: dry}\n', ['1:13 outside-season W']],
  ['a dip in winter', 'dips', '- {dipped_on: 2025-01-12, depth_cm: 80}\n', []],
  ['a dip where no tank is told', 'dips', '- {dipped_on: 2025-07-02, depth_cm: 400, overflowed: yes}\n', []],
  [
    'dipped after it was written down',
    'dips',
    '- {dipped_on: 2025-07-02, depth_cm: 80, recorded_on: 2025-07-01}\n',
    ['1:54 written-before-event'],
  ],
  ['manure of the autumn before', 'feeding', '- {given_on: 2024-10-10, material: compost}\n', []],
  ['keeping that outlasts the season', 'keeping', '- {ended_on: 2025-12-11, fruit: F1, ended: eaten-sound}\n', []],
  [
    'written down before it happened',
    'shares',
    '- {shared_on: 2025-08-20, to: home, recorded_on: 2025-08-19}\n',
    ['1:50 written-before-event'],
  ],
  [
    'an id twice',
    'shares',
    '- {id: S1, shared_on: 2025-08-20, to: home}\n- {id: s1, shared_on: 2025-08-21, to: stall}\n',
    ['2:8 duplicate-id'],
  ],
  [
    'a lot of no variety',
    'lots',
    '- {id: A-24, variety: amber, from: bought}\n- {id: B, variety: cedar, from: saved}\n',
    ['2:20 dangling-id'],
  ],
  [
    'a lot twice, capitals aside',
    'lots',
    '- {id: A-24, variety: amber, from: bought}\n- {id: a-24, variety: amber, from: gift}\n',
    ['2:8 duplicate-id'],
  ],
  [
    'measured on the day it was picked',
    'girths',
    '- {measured_on: 2025-08-12, fruit: F1, girth_cm: 60}\n- {measured_on: 2025-09-12, fruit: F2, girth_cm: 60}\n',
    [],
  ],
  [
    'seed saved from a hybrid',
    'lots',
    '- {id: A-24, variety: amber, from: saved}\n- {id: B, variety: birch, from: saved}\n',
    ['2:33 saved-from-hybrid W'],
  ],
  [
    'more sprouted than tested',
    'lots',
    '- {id: A-24, variety: amber, from: bought, tests: [{tested_on: 2025-03-01, seeds: 10, sprouted: 11}]}\n',
    ['1:97 part-over-whole'],
  ],
];

describe('entries of the diary that cannot be', () => {
  test.each(CASES)('%s', (_name, kind, text, wrong) => expect(placesOf(kind, text)).toEqual(wrong));
});

test('an order takes six fruits and no seventh', () => {
  const fruits = Array.from({ length: 7 }, (_, at) => `- {id: G${at}, planting: P1, fate: growing}\n`).join('');
  const codesOf = (most: number): string[] => {
    const order = Array.from({ length: most }, (_, at) => `G${at}`).join(', ');
    const tastings = `- {tasted_on: 2025-08-20, best_first: [${order}]}\n`;
    return linked({ fruits, tastings }).problems.map(({ code, column }) => `${code} ${column}`);
  };
  expect(codesOf(6)).toEqual([]);
  expect(codesOf(7)).toEqual(['order-too-long 64']);
});

test('every complaint of a tasting says what to write instead', () => {
  const wrong = [
    'best_first: [F1]',
    'best_first: [F1, F1]',
    'fruit: F1',
    'fruit: F1, against: F1',
    'fruit: F1, best_first: [F1, F2]',
    'note: x',
  ];
  for (const rest of wrong) {
    const { problems } = linked({ tastings: `- {tasted_on: 2025-08-20, ${rest}}\n` });
    expect(
      problems.map(({ severity }) => severity),
      rest,
    ).toEqual(['error']);
    expect(problems[0]?.hint ?? '', rest).not.toBe('');
  }
});

describe('a linked diary', () => {
  const FEEDING =
    '- {given_on: 2025-06-02, material: compost, note: b}\n- {given_on: 2025-06-02, material: compost, note: a}\n- {id: early, given_on: about 2025-04-10, material: lime}\n- {given_on: unknown, material: other}\n';
  const season = (text: string) => linked({ feeding: text }).garden?.seasons[0];

  test('stands by day, and an entry without a name goes by its day', () => {
    expect(season(FEEDING)?.events.feeding.map(({ key }) => key)).toEqual([
      'feeding/2025/early',
      'feeding/2025/2025-06-02',
      'feeding/2025/2025-06-02 2',
      'feeding/2025/unknown',
    ]);
  });

  test('is the same whatever the order of its lines', () => {
    const turned = `${FEEDING.trim().split('\n').toReversed().join('\n')}\n`;
    expect(season(turned)?.events).toEqual(season(FEEDING)?.events);
  });

  test('has every kind, most of them empty', () => {
    const events = season('')?.events;
    expect(EVENT_KINDS).toHaveLength(12);
    expect(EVENT_KINDS.map((kind) => events?.[kind].length)).toEqual(EVENT_KINDS.map(() => 0));
  });
});

describe('the day of the book', () => {
  const { garden } = linked({
    shares:
      '- {shared_on: 2025-08-20, to: home}\n- {shared_on: 2025-08-25, to: stall, recorded_on: 2025-09-04}\n- {shared_on: unknown, to: other}\n',
    scouting: '- {looked_on: 2025-08-22..2025-08-24, found: none}\n',
  });
  if (!garden) throw new Error('no garden');

  test('is the last that anything of the diary tells of or was written on', () =>
    expect(lastDay(garden)).toBe('2025-09-04'));

  test.each([
    ['2025-08-19', ['unknown']],
    ['2025-08-23', ['2025-08-20', 'unknown']],
    ['2025-09-03', ['2025-08-22..2025-08-24', '2025-08-20', 'unknown']],
    ['2025-09-04', ['2025-08-22..2025-08-24', '2025-08-20', '2025-08-25', 'unknown']],
  ] as const)('of %s knows no more', (today, known) => {
    const [season] = asOf(garden, today as Day).seasons;
    expect(season && allEvents(season.events).map(({ day }) => day.text)).toEqual(known);
  });
});
