import type { Book } from '../book/book.ts';
import { tableCsv } from './csv.ts';

/** The book's figures, the records under them, and its tables, as files below the site. */
export function dataFiles({ facts, figures, tables }: Book): Map<string, string> {
  const stated = {
    garden: facts.garden.about.name,
    as_of: facts.today,
    figures: Object.fromEntries(figures.map(({ id, ...figure }) => [id, figure])),
  };
  return new Map([
    ['data/figures.json', json(stated)],
    ['data/bases.json', json(facts.ledger.bases.all())],
    ...tables.map((table): [string, string] => [`data/${table.id}.csv`, tableCsv(table)]),
  ]);
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;
