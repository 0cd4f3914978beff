import type { Facts, MatterChapter } from '../../src/book/chapter.ts';
import { recordTable } from '../../src/book/record-table.ts';
import type { Table } from '../../src/book/table.ts';
import type { Season } from '../../src/garden/garden.ts';

/** The records and tables under the book, to download. */
export const records: MatterChapter = {
  kind: 'matter',
  id: 'records',
  write: (facts, questions) => {
    const own = recordTables(facts);
    const computed = questions.flatMap(({ tables, charts }) => [...tables, ...charts.map(({ table }) => table)]);
    return [
      {
        path: 'records/',
        chapter: 'records',
        template: 'records/index.njk',
        title: 'The records themselves',
        finding: null,
        model: { records: listed(own), computed: listed(computed) },
        charts: [],
        tables: own,
        figures: [],
        cautions: [],
        listed: true,
      },
    ];
  },
};

const listed = (tables: readonly Table[]) =>
  tables.map(({ id, title, rows }) => ({ id, title, rows: rows.length })).sort((a, b) => (a.id < b.id ? -1 : 1));

function recordTables({ garden }: Facts): Table[] {
  const bySeason = (rows: (season: Season) => readonly object[]) =>
    garden.seasons.flatMap((season) => rows(season).map((record) => ({ season: season.label, record })));
  const timeless = (rows: readonly object[]) => rows.map((record) => ({ season: null, record }));
  const tables = [
    recordTable('varieties', 'Varieties', timeless(garden.varieties)),
    recordTable('season', 'Seasons', timeless(garden.seasons)),
    recordTable(
      'plantings',
      'Plantings',
      bySeason(({ plantings }) =>
        plantings.map((planting) => ({ ...planting, variety: planting.variety ?? 'unknown' })),
      ),
    ),
    recordTable(
      'pickings',
      'Pickings',
      bySeason(({ plantings }) => plantings.flatMap(({ pickings }) => pickings)),
    ),
    recordTable(
      'fruits',
      'Fruit register',
      bySeason(({ plantings }) => plantings.flatMap(({ fruits }) => fruits)),
    ),
    recordTable(
      'visits',
      'Visits',
      bySeason(({ visits }) => visits.flatMap(({ fruits, ...visit }) => fruits.map((look) => ({ ...visit, ...look })))),
    ),
    ...garden.stations.map(({ id, days }) => ({
      ...recordTable('weather', `Weather at ${id}`, timeless(days)),
      id: `weather-${id.toLowerCase()}`,
    })),
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}
