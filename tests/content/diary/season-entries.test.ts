import { expect, test } from 'vitest';
import { diaryRows } from '../../../content/diary/rows.ts';
import { seasonEntries } from '../../../content/diary/season-entries.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

const FRAME = {
  'garden.yaml':
    'name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}, {id: S2, kind: mound}, {id: S10, kind: mound}]\n',
  'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
  'varieties.yaml':
    '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown}\n',
  'lots.yaml': '- {id: A-24, variety: amber, from: bought}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
};
const PLANTINGS = ['S10', 'S2', 'S1']
  .map(
    (spot) =>
      `- {id: P-${spot}, spot: ${spot}, variety: amber, sown_on: 2025-04-20, planted_on: 2025-05-20, plants_set: 2}\n`,
  )
  .join('');

function gardenOf(files: Readonly<Record<string, string>>): Garden {
  const texts = Object.fromEntries(Object.entries(files).map(([name, text]) => [`seasons/2025/${name}.yaml`, text]));
  const { garden, problems } = linkTexts({ ...FRAME, 'seasons/2025/plantings.yaml': PLANTINGS, ...texts });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return garden;
}

const entriesOf = (files: Readonly<Record<string, string>>) => {
  const garden = gardenOf(files);
  const [season] = garden.seasons;
  if (!season) throw new Error('no season');
  return seasonEntries({ garden, reference }, season);
};

const told = (files: Readonly<Record<string, string>>): string[] =>
  entriesOf(files).map(({ date, code, word, count, names }) =>
    [date.text, code, word, count, names.join('+')].filter((part) => part !== null && part !== '').join(' '),
  );

test('plantings of one day are one entry, spots in their natural order', () =>
  expect(told({})).toEqual(['2025-04-20 sown Amber', '2025-05-20 planted 6 S1+S2+S10']));

test('a sowing takes the place of the plantings’ word for the same day, and names its lot’s variety', () =>
  expect(
    told({
      sowings:
        '- {sown_on: 2025-04-20, lot: A-24, seeds: 8, emerged: 7, emerged_on: 2025-04-27}\n- {sown_on: 2025-04-22, variety: birch, seeds: about 4}\n',
    }),
  ).toEqual([
    '2025-04-20 sown 8 Amber',
    '2025-04-22 sown 4 Birch',
    '2025-04-27 came-up 7 Amber',
    '2025-05-20 planted 6 S1+S2+S10',
  ]));

test('the larger of register and pickings tells what was picked, never both', () => {
  const fruits =
    '- {id: F1, planting: P-S1, fate: picked, set: {set_on: 2025-07-01}, pick: {picked_on: 2025-08-10}, cut: {cut_on: 2025-08-11}}\n- {id: F2, planting: P-S1, fate: lost, end: {ended_on: 2025-08-02, lost_to: animal}}\n';
  const picked = (more: string) => told({ fruits, pickings: more }).filter((line) => /picked|gone|cut|set /.test(line));
  expect(picked('')).toEqual([
    '2025-07-01 set 1 S1',
    '2025-08-02 gone lost-animal 1 S1',
    '2025-08-10 picked 1 S1',
    '2025-08-11 cut 1 S1',
  ]);
  expect(picked('- {planting: P-S1, picked_on: 2025-08-10, count: 1}\n').filter((line) => /picked/.test(line))).toEqual(
    ['2025-08-10 picked 1 S1'],
  );
  expect(picked('- {planting: P-S1, picked_on: 2025-08-12, count: 5}\n').filter((line) => /picked/.test(line))).toEqual(
    ['2025-08-12 picked 5 S1'],
  );
});

test('work of one kind and day is told once; a count nobody made is not added as nothing', () =>
  expect(
    told({
      scouting:
        '- {looked_on: 2025-07-01, spots: [S2], found: none}\n- {looked_on: 2025-07-01, spots: [S1], found: none}\n- {looked_on: 2025-07-08, spots: [S1], found: mildew, checked: 2, affected: 1}\n',
      flowering:
        '- {seen_on: 2025-07-02, planting: P-S1, what: tagged, flowers: 3}\n- {seen_on: 2025-07-02, planting: P-S2, what: tagged}\n',
      mulching: '- {laid_on: 2025-06-10, material: straw}\n',
      shares: '- {shared_on: 2025-08-20, to: food-bank, fruits: 2}\n',
      tastings: '',
    }).slice(2),
  ).toEqual([
    '2025-06-10 mulch-laid straw',
    '2025-07-01 scouted-none none S1+S2',
    '2025-07-02 tagged S1+S2',
    '2025-07-08 scouted mildew S1',
    '2025-08-20 shared food-bank 2',
  ]));

test('pairs tasted are counted; orders of one day name their fruits once and are counted apart', () => {
  const fruits = ['F1', 'F2', 'F10'].map((id) => `- {id: ${id}, planting: P-S1, fate: growing}\n`).join('');
  const tastings =
    '- {tasted_on: 2025-08-20, fruit: F1, against: F2}\n- {tasted_on: 2025-08-20, fruit: F2, against: F1}\n- {tasted_on: 2025-08-20, best_first: [F10, F1]}\n- {tasted_on: 2025-08-20, sweetest_first: [F2, F1]}\n';
  expect(told({ fruits, tastings }).filter((line) => /tasted/.test(line))).toEqual([
    '2025-08-20 tasted 2',
    '2025-08-20 tasted-in-order 2 F1+F2+F10',
  ]);
});

test('what was put on the ground goes by its name', () =>
  expect(
    told({ feeding: '- {given_on: 2025-04-02, material: manure-raw, barrows: 2}\n' }).filter((line) =>
      /fed/.test(line),
    ),
  ).toEqual(['2025-04-02 fed raw manure']));

test('spans and months stand by their first day, what has no day at the end, and one row holds a day', () => {
  const entries = entriesOf({
    feeding:
      '- {given_on: unknown, material: compost}\n- {given_on: 2025-05, material: compost}\n- {given_on: 2025-05-20..2025-05-22, material: lime}\n- {given_on: 2025-05-20, material: other}\n',
  });
  const rows = diaryRows(entries, null).map(({ date, entries: all }) => `${date.text} ${all.length}`);
  expect(rows).toEqual(
    ['2025-04-20 1', '2025-05-20 2', '2025-05-20..2025-05-22 1', '2025-05 1', 'unknown 1'].sort(byPlace),
  );
});

/** A day before a span that begins with it, a month by its first. */
const byPlace = (a: string, b: string): number =>
  ORDER.indexOf(a.split(' ')[0] ?? '') - ORDER.indexOf(b.split(' ')[0] ?? '');
const ORDER = ['2025-04-20', '2025-05', '2025-05-20', '2025-05-20..2025-05-22', 'unknown'];
