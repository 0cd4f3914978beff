import type { MatterChapter } from '../../src/book/chapter.ts';
import type { Table } from '../../src/book/table.ts';
import { recordTables } from './tables.ts';

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
        level: null,
        model: {
          records: listed(own),
          computed: listed(computed),
          placed: facts.garden.about.place !== null,
        },
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
