import type { Book } from '../book/book.ts';
import { tableCsv } from './csv.ts';
import { dataPackage } from './data-package.ts';
import { datasetText } from './dataset.ts';
import { json } from './json.ts';
import type { Messages } from './messages.ts';

/** The book's figures, the records under them, its tables, and what describes them, as files below the site. */
export function dataFiles(book: Book, messages: Messages): Map<string, string> {
  const { facts, figures, tables } = book;
  const stated = {
    garden: facts.garden.about.name,
    as_of: facts.today,
    figures: Object.fromEntries(figures.map(({ id, ...figure }) => [id, figure])),
  };
  const csv = new Map(tables.map((table) => [table.id, tableCsv(table)]));
  return new Map([
    ['data/figures.json', json(stated)],
    ['data/bases.json', json(facts.ledger.bases.all())],
    ['data/datapackage.json', json(dataPackage(book, csv, messages))],
    ['data/dataset.jsonld', datasetText(book, '', messages)],
    ...[...csv].map(([id, text]): [string, string] => [`data/${id}.csv`, text]),
  ]);
}
