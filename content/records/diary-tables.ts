import { type RecordRow, type RecordSheet, recordTable } from '../../src/book/record-table.ts';
import type { ForeignKey, Table } from '../../src/book/table.ts';
import { EVENT_KINDS, type EventKind } from '../../src/garden/event.ts';
import type { Garden, Lot } from '../../src/garden/garden.ts';

const TITLES: Readonly<Record<EventKind, string>> = {
  sowings: 'Sowings',
  mulching: 'Mulch laid and taken off',
  feeding: 'Manure, compost and feed',
  waterings: 'Water given',
  soil: 'A finger in the soil',
  dips: 'Dips of the tank',
  flowering: 'Flowers and insects',
  girths: 'Girths of growing fruit',
  scouting: 'Looks for trouble',
  keeping: 'Fruit kept',
  shares: 'Fruit given away',
  tastings: 'Tastings, by pairs and in order',
};

const OF_SEASON: ForeignKey = { columns: ['season'], table: 'season', its: ['label'] };

/** Records an entry names. A planting may be left blank, and a fruit not be known on the day of the book: those are no keys. */
const POINTS_AT: Partial<Record<EventKind, readonly ForeignKey[]>> = {
  sowings: [{ columns: ['lot'], table: 'lots', its: ['id'] }],
};

/** The diary's kinds, each as one table. */
export const diaryTables = ({ seasons }: Garden, publishedBy: RecordSheet['publishedBy']): Table[] =>
  EVENT_KINDS.map((kind) =>
    recordTable(
      { kind, id: kind, title: TITLES[kind], publishedBy, foreignKeys: [OF_SEASON, ...(POINTS_AT[kind] ?? [])] },
      seasons.flatMap(({ label, events }) => events[kind].map((record): RecordRow => ({ season: label, record }))),
    ),
  );

/** Seed lots; germination tests stand in a table of their own. */
export const lotTables = ({ lots }: Garden, publishedBy: RecordSheet['publishedBy']): Table[] => {
  const OF_LOT: ForeignKey = { columns: ['lot'], table: 'lots', its: ['id'] };
  const OF_VARIETY: ForeignKey = { columns: ['variety'], table: 'varieties', its: ['id'] };
  const table = recordTable(
    { kind: 'lots', id: 'germination', title: 'Germination tests', at: ['tests', 0], publishedBy },
    lots.flatMap(testsOf),
  );
  return [
    recordTable(
      {
        kind: 'lots',
        id: 'lots',
        title: 'Seed lots',
        without: ['tests'],
        primaryKey: ['id'],
        foreignKeys: [OF_VARIETY],
        publishedBy,
      },
      lots.map((record) => ({ season: null, record })),
    ),
    {
      ...table,
      foreignKeys: [OF_LOT],
      columns: [{ key: 'lot', title: 'Seed lot', unit: null }, ...table.columns],
      rows: table.rows.map((row, index) => [lotIds(lots)[index] ?? null, ...row]),
    },
  ];
};

const testsOf = ({ tests }: Lot): RecordRow[] => (tests ?? []).map((record) => ({ season: null, record }));

const lotIds = (lots: readonly Lot[]): string[] => lots.flatMap(({ id, tests }) => (tests ?? []).map(() => id));
