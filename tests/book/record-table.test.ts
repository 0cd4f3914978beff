import { expect, test } from 'vitest';
import { type RecordRow, recordTable } from '../../src/book/record-table.ts';
import type { Table } from '../../src/book/table.ts';
import { linkTexts } from '../reading/garden-texts.ts';

const { garden } = linkTexts({
  'garden.yaml':
    'name: Test\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nbeds: [{id: E, area_m2: about 12, note: secret}]\nspots:\n  - {id: M1, kind: mound, bed: E}\n',
  'varieties.yaml': '- {id: amber, name: Amber, crop: watermelon, seed: unknown, yardstick: yes, note: printed}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-01\n',
  'seasons/2025/plantings.yaml': '- {id: P1, spot: M1, variety: amber, planted_on: about 2025-05-20, plants_set: 2}\n',
  'seasons/2025/pickings.yaml':
    '- {planting: P1, picked_on: 2025-08, count: about 4, mass_lb: about 10, sound_count: 1, by: K, note: secret}\n',
  'seasons/2025/fruits.yaml':
    '- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2025-08-12, mass_kg: about 4, by: L}, cut: {cut_on: 2025-08-12, bitter: no}}\n',
  'weather/post.csv': 'date,rain_in,tmin_c\n2025-05-01,trace,-3.5\n2025-05-02,,\n',
});
const season = garden?.seasons[0];
const publishedBy = (by: string | null) => (by === 'K' ? 'plum' : null);
const rows = (records: readonly object[], label: string | null = null): RecordRow[] =>
  records.map((record) => ({ season: label, record }));

const cellOf = ({ columns, rows: all }: Table, key: string, row = 0) =>
  all[row]?.[columns.findIndex((column) => column.key === key)];
const holdsOf = ({ columns }: Table, key: string) => columns.find((column) => column.key === key)?.holds;
const keysOf = ({ columns }: Table): string[] => columns.map(({ key }) => key);

const pickings = recordTable(
  { kind: 'pickings', id: 'pickings', title: 'Pickings', publishedBy },
  rows(season?.plantings[0]?.pickings ?? [], '2025'),
);
const fruits = recordTable(
  { kind: 'fruits', id: 'fruits', title: 'Fruits', publishedBy },
  rows(season?.plantings[0]?.fruits ?? [], '2025'),
);
const weather = recordTable(
  { kind: 'weather', id: 'weather', title: 'Weather', publishedBy },
  rows(garden?.stations[0]?.days ?? []),
);

test('numbers stand bare, and how they were entered in a column of its own', () => {
  expect(cellOf(pickings, 'count')).toBe(4);
  expect(cellOf(pickings, 'mass_lb')).toBe(10);
  expect(cellOf(pickings, 'sound_count')).toBe(1);
  expect(cellOf(pickings, 'entered')).toBe('count about; mass_kg about');
  expect(cellOf(fruits, 'pick.mass_kg')).toBe(4);
  expect(cellOf(fruits, 'entered')).toBe('pick.mass_kg about');
  expect([cellOf(weather, 'rain_in'), cellOf(weather, 'rain_mm'), cellOf(weather, 'entered')]).toEqual([
    0,
    0,
    'rain_mm trace',
  ]);
  expect([cellOf(weather, 'rain_mm', 1), cellOf(weather, 'entered', 1)]).toEqual([null, null]);
});

test('an order of taste keeps its places, ids with blanks between; a pair leaves it blank', () => {
  const tastings = recordTable({ kind: 'tastings', id: 'tastings', title: 'Tastings', publishedBy }, [
    { season: '2025', record: { best_first: ['F3', 'F1', 'F2'], sweetest_first: null } },
    { season: '2025', record: { fruit: 'F1', against: 'F3', best_first: null } },
  ]);
  expect([0, 1].map((row) => cellOf(tastings, 'best_first', row))).toEqual(['F3 F1 F2', null]);
  expect([0, 1].map((row) => cellOf(tastings, 'fruit', row))).toEqual([null, 'F1']);
  expect(['fruit', 'against', 'best_first'].map((key) => holdsOf(tastings, key)?.required)).toEqual([
    false,
    false,
    false,
  ]);
});

test('a table whose numbers are always exact has no such column', () => {
  const visits = recordTable({ kind: 'visits', id: 'visits', title: 'Visits', publishedBy }, []);
  expect(keysOf(visits)).not.toContain('entered');
  expect(keysOf(weather).at(-1)).toBe('entered');
});

test('who wrote a record is only what may be published, and notes stay, but for a variety’s', () => {
  expect(cellOf(pickings, 'by')).toBe('plum');
  expect(cellOf(fruits, 'pick.by')).toBeNull();
  const beds = recordTable(
    { kind: 'garden', id: 'beds', title: 'Beds', at: ['beds', 0], publishedBy },
    rows(garden?.about.beds ?? []),
  );
  expect(keysOf(beds)).toEqual(['id', 'area_m2', 'area_ft2', 'soil', 'entered']);
  const varieties = recordTable({ kind: 'varieties', id: 'v', title: 'V', publishedBy }, rows(garden?.varieties ?? []));
  expect(cellOf(varieties, 'note')).toBe('printed');
  expect(cellOf(varieties, 'yardstick')).toBe('yes');
  expect(JSON.stringify([pickings, fruits, beds, weather])).not.toContain('secret');
});

test('keys that are left out are left out whole', () => {
  const table = recordTable(
    { kind: 'garden', id: 'g', title: 'G', without: ['beds', 'spots', 'place.elevation_m'], publishedBy },
    rows([garden?.about ?? {}]),
  );
  expect(keysOf(table)).toContain('place.latitude');
  expect(keysOf(table)).toContain('place.elevation_ft');
  expect(keysOf(table)).not.toContain('place.elevation_m');
  expect(keysOf(table).filter((key) => /kind|area/.test(key))).toEqual([]);
});

test('a column tells what it holds, as its schema does', () => {
  expect(holdsOf(pickings, 'count')).toMatchObject({ type: 'integer', required: true, minimum: 0, maximum: 100_000 });
  expect(holdsOf(pickings, 'season')).toMatchObject({ type: 'string', required: true });
  expect(holdsOf(pickings, 'picked_on')).toMatchObject({ type: 'string', required: true });
  expect(holdsOf(pickings, 'picked_on')?.description).toContain('2025-08-10..2025-08-14');
  expect(holdsOf(pickings, 'recorded_on')).toMatchObject({ type: 'date', required: false });
  expect(holdsOf(fruits, 'pick.picked_on')).toMatchObject({ required: false });
  expect(holdsOf(fruits, 'cut.bitter')).toMatchObject({ type: 'boolean', words: null });
  expect(holdsOf(fruits, 'fate')).toMatchObject({ type: 'string', required: true });
  expect(holdsOf(fruits, 'fate')?.words).toContain('aborted');
  expect(holdsOf(fruits, 'pick.girth_cm')).toMatchObject({ type: 'number', unit: 'cm' });
});

test('bounds hold for what was written; a value converted to SI may pass a rounded one', () => {
  expect(holdsOf(fruits, 'pick.mass_lb')).toMatchObject({ minimum: 0, maximum: 881.85 });
  expect(holdsOf(fruits, 'pick.mass_kg')).toMatchObject({ minimum: 0, maximum: null });
  expect(holdsOf(weather, 'tmin_f')).toMatchObject({ minimum: -76, maximum: 140 });
  expect(holdsOf(weather, 'tmin_c')).toMatchObject({ minimum: null, maximum: null });
  expect(holdsOf(fruits, 'cut.brix_centre')).toMatchObject({ minimum: 0, maximum: 40 });
});
