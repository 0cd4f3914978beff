import { type RecordSheet, recordTable } from '../../src/book/record-table.ts';
import type { Column, Table } from '../../src/book/table.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop } from '../../src/garden/garden.ts';

const word = (key: string, title: string): Column => ({ key, title, unit: null });
const NAMES = [word('name', 'Name'), word('plural', 'Name of many')];

/**
 * Words by language, of which the book’s own names stand in columns of their own; and lists, which need more rows than
 * a crop has. Signs have a table of their own.
 */
const WITHOUT = [
  'names',
  'plurals',
  'signs',
  'too_late',
  'sowing.emergence',
  'water.stages',
  'flowering.female_looks',
  'troubles',
  'keeping.taking_off',
  'seed.crosses',
  'seed.cleaning',
];

/** The crops that are grown here, the garden's own and the shared ones alike, named in the book's language. */
export function cropsTable(crops: readonly Crop[], locale: string, publishedBy: RecordSheet['publishedBy']): Table {
  const sorted = [...crops].sort((a, b) => (a.id < b.id ? -1 : 1));
  const table = recordTable(
    { kind: 'crops', id: 'crops', title: 'Crops', without: WITHOUT, primaryKey: ['id'], publishedBy },
    sorted.map((record) => ({ season: null, record })),
  );
  return {
    ...table,
    columns: [...table.columns, ...NAMES],
    rows: sorted.map((crop, index) => {
      const { one, many } = cropNames(crop, locale);
      return [...(table.rows[index] ?? []), one, many];
    }),
  };
}
