import { describe, expect, test } from 'vitest';
import { linkTexts } from '../reading/garden-texts.ts';

const garden = {
  'garden.yaml':
    'name: Test\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nweather: {station: post, read: evening}\nspots:\n  - {id: M1, kind: mound}\n  - {id: M2, kind: mound}\n',
  'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\nbounds: {mass_kg_low: 1, mass_kg_high: 9, girth_cm_high: 90, brix_low: 3, brix_high: 16, days_set_to_pick_low: 20, days_set_to_pick_high: 70, source: house-bounds}\n`,
  'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-01\n',
  'seasons/2025/plantings.yaml': '- {id: P1, spot: M1, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n',
  'seasons/2025/fruits.yaml': '- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2025-08-12, mass_kg: 4}}\n',
  'weather/post.csv': 'date,rain_mm,tmax_c,tmin_c\n2025-05-01,0,20,9\n',
};

const PLANTINGS = 'seasons/2025/plantings.yaml';
const FRUITS = 'seasons/2025/fruits.yaml';
const PICKINGS = 'seasons/2025/pickings.yaml';
const planting = (more: string): string =>
  `- {id: P1, spot: M1, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n${more}`;
const fruit = (body: string): string => `- {id: F1, planting: P1, ${body}}\n`;
const pick = (body: string): string => fruit(`fate: picked, pick: {picked_on: 2025-08-12, ${body}}`);

/** What is wrong, in which file, and the code it goes by; W marks a warning. */
const CASES: readonly [string, string, string, string][] = [
  ['a variety that is not there', PLANTINGS, planting('').replace('amber', 'umber'), 'dangling-id'],
  [
    'an id twice, capitals aside',
    PLANTINGS,
    planting('- {id: p1, spot: M2, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n'),
    'duplicate-id',
  ],
  ['a fruit picked twice', FRUITS, pick('mass_kg: 4') + pick('mass_kg: 5'), 'picked-twice'],
  [
    'a spot planted twice',
    PLANTINGS,
    planting('- {id: P2, spot: M1, variety: amber, planted_on: 2025-06-20, plants_set: 2}\n'),
    'replanted-spot W',
  ],
  [
    'a block forgotten',
    PLANTINGS,
    planting('- {id: P2, spot: M2, block: B, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n'),
    'block-missing W',
  ],
  [
    'more plants alive than set',
    PLANTINGS,
    planting('').replace('plants_set: 2', 'plants_set: 2, plants_alive: 3'),
    'more-alive-than-set',
  ],
  [
    'planted before it was sown',
    PLANTINGS,
    planting('').replace('planted_on', 'sown_on: 2025-06-01, planted_on'),
    'planted-before-sown',
  ],
  ['planted in another year', PLANTINGS, planting('').replace('2025-05-20', '2024-05-20'), 'outside-season W'],
  ['set before it was planted', FRUITS, fruit('fate: growing, set: {set_on: 2025-05-01}'), 'set-before-planted'],
  [
    'picked before it was set',
    FRUITS,
    fruit('fate: picked, set: {set_on: 2025-08-20}, pick: {picked_on: 2025-08-12}'),
    'picked-before-set',
  ],
  [
    'cut before it was picked',
    FRUITS,
    fruit('fate: picked, pick: {picked_on: 2025-08-12}, cut: {cut_on: 2025-08-11}'),
    'cut-before-picked',
  ],
  [
    'lost before it was first seen',
    FRUITS,
    fruit('fate: lost, set: {first_seen_on: 2025-08-20}, end: {ended_on: 2025-08-01}'),
    'ended-before-first-seen',
  ],
  ['written down before it happened', FRUITS, pick('recorded_on: 2025-08-01'), 'written-before-event'],
  ['lost, and picked all the same', FRUITS, fruit('fate: lost, pick: {picked_on: 2025-08-12}'), 'fate-differs'],
  [
    'thinned, and lost to something',
    FRUITS,
    fruit('fate: thinned, end: {ended_on: 2025-07-12, lost_to: rot}'),
    'fate-differs',
  ],
  ['picked, and nothing said of it', FRUITS, fruit('fate: picked'), 'pick-missing W'],
  ['a mass that is unlikely', FRUITS, pick('mass_kg: 90'), 'unlikely W'],
  [
    'ripe in no time',
    FRUITS,
    fruit('fate: picked, set: {set_on: 2025-08-01}, pick: {picked_on: 2025-08-12}'),
    'unlikely W',
  ],
  [
    'more sound than picked',
    PICKINGS,
    '- {planting: P1, picked_on: 2025-08-12, count: 1, sound_count: 2}\n',
    'more-sound-than-picked',
  ],
  [
    'sound fruit heavier than all',
    PICKINGS,
    '- {planting: P1, picked_on: 2025-08-12, count: 1, mass_kg: 2, sound_mass_kg: 3}\n',
    'more-sound-than-picked',
  ],
  [
    'a picking entered twice',
    PICKINGS,
    '- {planting: P1, picked_on: 2025-08-12, count: 1}\n'.repeat(2),
    'picking-twice W',
  ],
  ['register and pickings apart', PICKINGS, '- {planting: P1, picked_on: 2025-08-12, count: 3}\n', 'counts-differ W'],
  ['a day of weather twice', 'weather/post.csv', 'date,rain_mm\n2025-05-01,0\n2025-05-01,2\n', 'day-twice'],
  ['a night warmer than its day', 'weather/post.csv', 'date,tmax_c,tmin_c\n2025-05-01,9,20\n', 'min-above-max'],
  ['gauge and word at odds', 'weather/post.csv', 'date,rain_mm,rain\n2025-05-01,trace,none\n', 'rain-differs'],
  [
    'looked over when it was gone',
    'seasons/2025/visits.yaml',
    '- {id: V1, visited_on: 2025-08-20, fruits: [{fruit: F1, tendril: dry}]}\n',
    'visited-after-picked W',
  ],
  [
    'a season in the wrong folder',
    'seasons/2025/season.yaml',
    'label: 2024\nstarts_on: 2025-04-01\nends_on: 2025-10-01\n',
    'season-folder',
  ],
  [
    'a season that ends first',
    'seasons/2025/season.yaml',
    'label: 2025\nstarts_on: 2025-10-01\nends_on: 2025-04-01\n',
    'season-order',
  ],
  [
    'two seasons at once',
    'seasons/2025B/season.yaml',
    'label: 2025B\nstarts_on: 2025-08-01\nends_on: 2025-12-01\n',
    'season-overlap W',
  ],
  ['a season without its file', 'seasons/2026/pickings.yaml', '', 'season-missing'],
  [
    'a crop file of another name',
    'crops/other.yaml',
    'id: globule\nnames: {en: g}\nplurals: {en: g}\nslip: none\nfruit_on_ground: no\n',
    'file-name',
  ],
];

test('the garden they are tried in has no problem', () => {
  expect(linkTexts(garden).problems).toEqual([]);
});

describe('a contradiction is told where it stands', () => {
  for (const [name, path, text, expected] of CASES) {
    test(name, () => {
      const [code, warning] = expected.split(' ');
      const { problems } = linkTexts({ ...garden, [path]: text });
      const found = problems.find((problem) => problem.code === code);
      expect(found, JSON.stringify(problems)).toMatchObject({ severity: warning ? 'warning' : 'error' });
      expect(found?.file).toMatch(
        path.startsWith('seasons/2026')
          ? /^seasons\/2026/
          : expected.startsWith('counts')
            ? /plantings/
            : new RegExp(`^${path}`),
      );
      expect(found?.hint).not.toBe('');
    });
  }

  test('a barren planting nobody wrote of, once the season is over', () => {
    const two = planting('- {id: P2, spot: M2, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n');
    const running = linkTexts({ ...garden, [PLANTINGS]: two });
    expect(running.problems).toEqual([]);
    const left = `${garden[FRUITS]}- {id: F2, planting: P1, fate: left, end: {ended_on: 2025-10-01}}\n`;
    const over = linkTexts({ ...garden, [PLANTINGS]: two, [FRUITS]: left });
    expect(over.problems).toMatchObject([{ severity: 'warning', code: 'harvest-missing', record: 'P2' }]);
    const none = '- {planting: P2, picked_on: unknown, count: 0}\n';
    expect(linkTexts({ ...garden, [PLANTINGS]: two, [FRUITS]: left, [PICKINGS]: none }).problems).toEqual([]);
  });

  const codesOf = (texts: Readonly<Record<string, string>>): string[] =>
    linkTexts({ ...garden, [FRUITS]: '', ...texts }).problems.map(({ code }) => code);

  test('a number that was reckoned contradicts no other', () => {
    const picking = (rest: string): Record<string, string> => ({
      [PICKINGS]: `- {planting: P1, picked_on: 2025-08-12, ${rest}}\n`,
    });
    expect(codesOf(picking('count: 3, sound_count: 4'))).toEqual(['more-sound-than-picked']);
    expect(codesOf(picking('count: about 3, sound_count: 4'))).toEqual([]);
    expect(codesOf(picking('count: 3, sound_count: about 4'))).toEqual([]);
    expect(codesOf(picking('count: 3, mass_kg: about 3, sound_mass_kg: 3.2'))).toEqual([]);
  });

  test('a date that is sure of nothing contradicts no other', () => {
    const told = (date: string): string[] => codesOf({ [FRUITS]: fruit(`fate: picked, pick: {picked_on: ${date}}`) });
    expect(told('2025-05-01')).toEqual(['picked-before-planted']);
    for (const date of ['about 2025-05-01', '2025-05', '2025-05-01..2025-05-20', 'unknown'])
      expect(told(date), date).toEqual([]);
  });

  test('about a day outside the season is not surely outside', () => {
    const told = (date: string): string[] => codesOf({ [FRUITS]: fruit(`fate: picked, pick: {picked_on: ${date}}`) });
    expect(told('2025-10-02')).toEqual(['outside-season']);
    expect(told('about 2025-10-02')).toEqual([]);
    expect(told('2025-10')).toEqual([]);
    expect(told('2025-11')).toEqual(['outside-season']);
  });

  test('an impossible order is not unlikely as well', () => {
    const set = fruit('fate: picked, set: {set_on: 2025-08-20}, pick: {picked_on: 2025-08-12}');
    expect(codesOf({ [FRUITS]: set })).toEqual(['picked-before-set']);
  });

  test('a mass in pounds is pointed at where it stands', () => {
    const heavier = '- {planting: P1, picked_on: 2025-08-12, count: 1, mass_kg: 2, sound_mass_lb: 9}\n';
    const { problems } = linkTexts({ ...garden, [FRUITS]: '', [PICKINGS]: heavier });
    expect(problems).toMatchObject([{ code: 'more-sound-than-picked', line: 1, column: heavier.indexOf('9}') + 1 }]);
    const unlikely = pick('mass_lb: 90');
    expect(linkTexts({ ...garden, [FRUITS]: unlikely }).problems).toMatchObject([
      { code: 'unlikely', column: unlikely.indexOf('90') + 1 },
    ]);
  });

  test('a folder without garden.yaml', () => {
    const { 'garden.yaml': _, ...rest } = garden;
    expect(linkTexts(rest).problems.map(({ code }) => code)).toContain('garden-missing');
  });
});

/** A tank in braces, what was dipped and read, and each problem with its field and place; W marks a warning. */
const TANKS: readonly [name: string, tank: string, dips: string, wrong: string[]][] = [
  ['an upright drum that is told whole', 'shape: upright, diameter_cm: 57, height_cm: 87, tap_cm: 8', '', []],
  ['a lying drum that is told whole', 'shape: lying, diameter_cm: 90, length_cm: 120, tap_in: 3', '', []],
  ['a box that is told whole', 'shape: box, length_in: 48, width_in: 40, height_in: 46', '', []],
  ['a tank known by its label', 'holds_l: 210, count: 2', '', []],
  [
    'an upright drum without its height',
    'shape: upright, diameter_cm: 57',
    '',
    ['garden.yaml tank.shape 6:15 tank-unmeasured W: height_cm'],
  ],
  [
    'a lying drum measured as if it stood',
    'shape: lying, diameter_cm: 57, height_cm: 87',
    '',
    ['garden.yaml tank.shape 6:15 tank-unmeasured W: length_cm'],
  ],
  [
    'a box with one side',
    'length_in: 48, shape: box',
    '',
    ['garden.yaml tank.shape 6:30 tank-unmeasured W: width_cm and height_cm'],
  ],
  [
    'a tap above the brim',
    'shape: upright, diameter_cm: 57, height_cm: 87, tap_cm: 90',
    '',
    ['garden.yaml tank.tap_cm 6:64 tap-above-tank'],
  ],
  ['a tap at the brim', 'height_cm: 80, tap_cm: 80', '', ['garden.yaml tank.tap_cm 6:31 tap-above-tank']],
  [
    'a tap above a drum on its side, which is as high as it is wide',
    'shape: lying, diameter_cm: 60, length_cm: 200, tap_cm: 61',
    '',
    ['garden.yaml tank.tap_cm 6:63 tap-above-tank'],
  ],
  [
    'a dip over the brim, and one at it',
    'shape: upright, diameter_cm: 57, height_cm: 87',
    '- {dipped_on: 2025-06-01, depth_cm: 87}\n- {dipped_on: 2025-06-08, overflowed: yes, depth_cm: 87.5}\n',
    ['seasons/2025/dips.yaml depth_cm 2:54 dip-over-tank'],
  ],
  [
    'a dip at the brim of a box in inches',
    'shape: box, length_in: 48, width_in: 40, height_in: 46',
    '- {dipped_on: 2025-06-01, depth_in: 46}\n',
    [],
  ],
  [
    'a dip in a drum on its side',
    'shape: lying, diameter_cm: 60, length_cm: 200',
    '- {dipped_on: 2025-06-01, depth_cm: 61}\n',
    ['seasons/2025/dips.yaml depth_cm 1:37 dip-over-tank'],
  ],
  [
    'more read off than two such drums hold',
    'holds_l: 210, count: 2',
    '- {dipped_on: 2025-06-01, volume_l: 420}\n- {dipped_on: 2025-06-08, volume_l: 421}\n',
    ['seasons/2025/dips.yaml volume_l 2:37 dip-over-tank'],
  ],
];

describe('a tank and what was dipped in it', () => {
  test.each(TANKS)('%s', (_name, tank, dips, wrong) => {
    const { problems } = linkTexts({
      ...garden,
      'garden.yaml': garden['garden.yaml'].replace('weather:', `tank: {${tank}}\nweather:`),
      'seasons/2025/dips.yaml': dips,
    });
    const told = problems.map(({ file, field, line, column, code, severity, message }) => {
      const missing = /needs (.*) too/.exec(message)?.[1];
      return `${file} ${field} ${line}:${column} ${code}${severity === 'warning' ? ' W' : ''}${missing ? `: ${missing}` : ''}`;
    });
    expect(told).toEqual(wrong);
    expect(problems.every(({ hint }) => hint !== '')).toBe(true);
  });
});
