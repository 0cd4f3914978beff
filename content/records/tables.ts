import type { Facts } from '../../src/book/chapter.ts';
import { publishedPlace } from '../../src/book/published-place.ts';
import { type RecordRow, type RecordSheet, recordTable } from '../../src/book/record-table.ts';
import type { ForeignKey, Table } from '../../src/book/table.ts';
import { publishedBy } from '../../src/garden/consent.ts';
import type { Garden, Season } from '../../src/garden/garden.ts';
import { cropsTable } from './crops-table.ts';
import { diaryTables, lotTables } from './diary-tables.ts';
import { peopleTable } from './people-table.ts';

const to = (table: string, its: string, column = its): ForeignKey => ({ columns: [column], table, its: [its] });
const OF_SEASON = to('season', 'label', 'season');
const OF_PLANTING: ForeignKey = { columns: ['season', 'planting'], table: 'plantings', its: ['season', 'id'] };

/** Every kind of record the garden has, each as one table; a kind it has none of is left out. */
export function recordTables({ garden }: Facts): Table[] {
  const by = publishedBy(garden.people);
  const tables = [
    ...ofGarden(garden, by),
    ...lotTables(garden, by),
    ...ofSeasons(garden, by),
    ...diaryTables(garden, by),
    ...ofWeather(garden, by),
    peopleTable(garden.people),
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}

type PublishedBy = RecordSheet['publishedBy'];

const timeless = (rows: readonly object[]): RecordRow[] => rows.map((record) => ({ season: null, record }));

/** Height above the sea would tell the place more nearly than its rounded degrees. */
const OF_PLACE = ['place.elevation_m', 'place.elevation_ft'];

function ofGarden({ about, crops, spots, varieties }: Garden, by: PublishedBy): Table[] {
  const grown = [...crops.values()].filter(({ id }) => varieties.some(({ crop }) => crop.id === id));
  const sheet = { kind: 'garden', publishedBy: by } as const;
  return [
    recordTable(
      { ...sheet, id: 'garden', title: 'Garden', without: ['beds', 'spots', ...OF_PLACE] },
      timeless([{ ...about, place: publishedPlace(about) }]),
    ),
    recordTable(
      { ...sheet, id: 'beds', title: 'Beds', at: ['beds', 0], primaryKey: ['id'] },
      timeless(about.beds ?? []),
    ),
    recordTable(
      {
        ...sheet,
        id: 'spots',
        title: 'Spots',
        at: ['spots', 0],
        primaryKey: ['id'],
        foreignKeys: [to('beds', 'id', 'bed')],
      },
      timeless(spots),
    ),
    cropsTable(grown, about.locale, by),
    recordTable(
      {
        kind: 'varieties',
        id: 'varieties',
        title: 'Varieties',
        publishedBy: by,
        primaryKey: ['id'],
        foreignKeys: [to('crops', 'id', 'crop')],
      },
      timeless(varieties),
    ),
  ];
}

function ofSeasons({ seasons }: Garden, by: PublishedBy): Table[] {
  const bySeason = (rows: (season: Season) => readonly object[]): RecordRow[] =>
    seasons.flatMap((season) => rows(season).map((record) => ({ season: season.label, record })));
  const sheet = { publishedBy: by, primaryKey: ['season', 'id'] };
  return [
    recordTable(
      { kind: 'season', id: 'season', title: 'Seasons', publishedBy: by, primaryKey: ['label'] },
      timeless(seasons),
    ),
    recordTable(
      // A planting of an unknown variety names none of varieties.csv.
      {
        ...sheet,
        kind: 'plantings',
        id: 'plantings',
        title: 'Plantings',
        foreignKeys: [OF_SEASON, to('spots', 'id', 'spot')],
      },
      bySeason(({ plantings }) =>
        plantings.map((planting) => ({ ...planting, variety: planting.variety ?? 'unknown' })),
      ),
    ),
    recordTable(
      { kind: 'pickings', id: 'pickings', title: 'Pickings', publishedBy: by, foreignKeys: [OF_PLANTING] },
      bySeason(({ plantings }) => plantings.flatMap(({ pickings }) => pickings)),
    ),
    recordTable(
      { ...sheet, kind: 'fruits', id: 'fruits', title: 'Fruit register', foreignKeys: [OF_PLANTING] },
      bySeason(({ plantings }) => plantings.flatMap(({ fruits }) => fruits)),
    ),
    recordTable(
      // A visit may look at a fruit twice, or at one the register did not know yet on the day of the book.
      { kind: 'visits', id: 'visits', title: 'Visits', publishedBy: by, foreignKeys: [OF_SEASON] },
      bySeason(({ visits }) => visits.flatMap(looksOf)),
    ),
  ];
}

/** A visit once for each fruit looked at; one that looked at none stands by itself. */
const looksOf = ({ fruits, ...visit }: Season['visits'][number]): object[] =>
  fruits.length === 0 ? [visit] : fruits.map((look) => ({ ...visit, ...look }));

const ofWeather = ({ stations }: Garden, by: PublishedBy): Table[] =>
  stations.map(({ id, days }) =>
    recordTable(
      {
        kind: 'weather',
        id: `weather-${id.toLowerCase()}`,
        title: `Weather at ${id}`,
        publishedBy: by,
        primaryKey: ['date'],
      },
      timeless(days),
    ),
  );
