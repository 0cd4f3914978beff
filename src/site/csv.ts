import { stringify } from 'csv-stringify/sync';
import type { Table } from '../book/table.ts';

/** A table as CSV, RFC 4180: full precision, blank for null, text that a spreadsheet would run made harmless. */
export function tableCsv({ columns, rows }: Table): string {
  return stringify([columns.map(({ key }) => key), ...rows.map((row) => [...row])], {
    escape_formulas: true,
    record_delimiter: 'windows',
  });
}
