import { createHash } from 'node:crypto';
import type { Book } from '../book/book.ts';
import type { Table } from '../book/table.ts';
import { keepersOf } from '../garden/consent.ts';
import { describeData } from './description.ts';
import type { Messages } from './messages.ts';
import { slug } from './slug.ts';
import { tableSchema } from './table-schema.ts';

/**
 * The description of every table of the book, in the Tabular Data Package standard, version 1
 * (specs.frictionlessdata.io/tabular-data-package). Its day is the day of the book, whose hour nobody knows.
 */
export function dataPackage({ facts, tables }: Book, csv: ReadonlyMap<string, string>, messages: Messages): object {
  const { garden, today } = facts;
  const { named } = keepersOf(garden.people);
  const ids = new Set(tables.map(({ id }) => id));
  return {
    profile: 'tabular-data-package',
    name: slug(garden.about.name, 'garden'),
    title: messages('sharing.title', { garden: garden.about.name }),
    description: `${describeData(facts, messages)} ${messages('sharing.columns')}`,
    ...(today !== null && { created: `${today}T00:00:00Z` }),
    ...(named.length > 0 && { contributors: named.map((title) => ({ title, role: 'contributor' })) }),
    resources: tables.map((table) => resourceOf(table, csv.get(table.id) ?? '', ids)),
  };
}

const resourceOf = (table: Table, text: string, published: ReadonlySet<string>): object => ({
  profile: 'tabular-data-resource',
  name: slug(table.id, 'table'),
  path: `${table.id}.csv`,
  title: table.title,
  format: 'csv',
  mediatype: 'text/csv',
  encoding: 'utf-8',
  bytes: Buffer.byteLength(text),
  hash: `sha256:${createHash('sha256').update(text).digest('hex')}`,
  dialect: { delimiter: ',', doubleQuote: true, quoteChar: '"', lineTerminator: '\r\n', header: true },
  schema: tableSchema(table, published),
});
