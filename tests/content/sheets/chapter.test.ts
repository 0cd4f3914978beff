import { expect, test } from 'vitest';
import { sheets } from '../../../content/sheets/chapter.ts';
import type { BlankSheet } from '../../../src/book/blank-sheet.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { planting, smallGarden } from '../../ledger/small-garden.ts';

const reference = loadReference('data/reference');

function sheet(id: string, garden: Garden): BlankSheet {
  const page = sheets.write(bookOf({ reference }, garden, null).facts, []).find(({ path }) => path === `sheets/${id}/`);
  const model = page?.model as { sheet: BlankSheet } | undefined;
  if (!model) throw new Error(`there is no sheet ${id}`);
  return model.sheet;
}
const keys = (id: string, garden: Garden): string[] => sheet(id, garden).columns.map(({ key }) => key);

const TWO = smallGarden({
  plantings: `${planting('P2', 'S2')}${planting('P1', 'S1', ', plants_alive: 2')}`,
  fruits:
    '- {id: F1, planting: P1, fate: growing, set: {set_on: 2025-07-01}}\n- {id: F2, planting: P2, fate: picked, pick: {picked_on: 2025-08-01}}\n',
});

const { about: TANKED } = smallGarden({ plantings: planting('P1', 'S1'), settings: 'tank: {holds_l: 200}\n' });

test('the list of plantings follows the spots and leaves the plants alive to be counted', () => {
  expect(sheet('planting-list', TWO).known).toEqual([
    ['S1', 'P1', 'Amber', '', '20 May', '2'],
    ['S2', 'P2', 'Amber', '', '20 May', '2'],
  ]);
});

test('the register keeps a line for a fruit of every plant and one over', () => {
  expect(sheet('fruit-register', TWO).known.map(([id]) => id)).toEqual(['P1', 'P1', 'P1', 'P2', 'P2', 'P2']);
});

test('fruits still on the vine stand on the visits sheet, those picked do not', () => {
  expect(sheet('visits', TWO).known).toEqual([['F1']]);
});

test('slip is asked of kinds that part from their stalk, and of no other', () => {
  expect(keys('visits', TWO)).not.toContain('fruits.slip');
  const slipping = {
    ...TWO,
    seasons: TWO.seasons.map((season) => ({
      ...season,
      plantings: season.plantings.map((one) => ({
        ...one,
        variety: one.variety && { ...one.variety, crop: { ...one.variety.crop, slip: 'full' as const } },
      })),
    })),
  };
  expect(keys('visits', slipping)).toContain('fruits.slip');
});

test('units are the garden’s', () => {
  const us = { ...TWO, about: { ...TWO.about, units: 'us' as const } };
  expect([keys('picking-and-cut', TWO)[2], keys('picking-and-cut', us)[2]]).toEqual(['pick.mass_kg', 'pick.mass_lb']);
  expect(keys('weather-log', us)).toEqual(['date', 'rain_in', 'rain', 'tmax_f', 'tmin_f', 'note']);
});

test('what is given is written by weight or by volume, in the garden’s units, with its cautions on the back', () => {
  const us = { ...TWO, about: { ...TWO.about, units: 'us' as const } };
  expect(keys('feeding-log', TWO).slice(0, 5)).toEqual(['given_on', 'spots', 'material', 'mass_kg', 'volume_l']);
  expect(keys('feeding-log', us).slice(3, 5)).toEqual(['mass_lb', 'volume_gal']);
  expect(sheet('feeding-log', TWO).cautions).toEqual(expect.arrayContaining(['raw-manure', 'feeds']));
});

test('water is written with what the soil felt like before it, and with its cautions on the back', () => {
  expect(keys('watering-log', TWO)).toEqual([
    'watered_on',
    'spots',
    'top',
    'below',
    'cans_each',
    'minutes',
    'roughly',
    'how',
    'from',
    'by',
  ]);
  const { columns, cautions } = sheet('watering-log', TWO);
  const toCircle = (key: string) => columns.find((column) => column.key === key)?.words.map(({ word }) => word);
  expect(['top', 'below', 'from'].map(toCircle)).toEqual([
    ['dry', 'damp', 'wet'],
    ['dry', 'damp', 'wet'],
    ['tank', 'mains', 'other'],
  ]);
  expect(cautions).toEqual(expect.arrayContaining(['tank-water', 'heat']));
});

test('a dip is written in the garden’s units, with a yes or no to circle and the cautions of water', () => {
  const tank = { ...TWO, about: TANKED };
  const us = { ...TWO, about: { ...TANKED, units: 'us' as const } };
  expect(keys('tank-log', tank)).toEqual(['dipped_on', 'depth_cm', 'overflowed', 'by', 'note']);
  expect(keys('tank-log', us)[1]).toBe('depth_in');
  expect(sheet('tank-log', tank).columns[2]?.words.map(({ word }) => word)).toEqual(['yes', 'no']);
  expect(sheet('tank-log', tank).cautions).toEqual(['tank-water', 'tank-inside', 'tank-shut']);
});

test('sheets stand in the order of the year, water after feed and before flowers', () => {
  const pathsOf = (garden: typeof TWO): string[] =>
    sheets.write(bookOf({ reference }, garden, null).facts, []).map(({ path }) => path);
  const paths = pathsOf({ ...TWO, about: TANKED });
  // A garden without a tank has no sheet for one.
  expect(pathsOf(TWO)).toEqual(paths.filter((path) => path !== 'sheets/tank-log/'));
  expect(paths.slice(paths.indexOf('sheets/feeding-log/'), paths.indexOf('sheets/flower-tally/') + 1)).toEqual([
    'sheets/feeding-log/',
    'sheets/watering-log/',
    'sheets/tank-log/',
    'sheets/flower-tally/',
  ]);
});

test('before the first season the sheets are blank and there all the same', () => {
  const none = { ...TWO, seasons: [] };
  expect(['planting-list', 'fruit-register', 'visits'].map((id) => sheet(id, none).known)).toEqual([[], [], []]);
});
