/** A record as it is written down: text, whole numbers, or named parts. */
export interface Row {
  readonly [key: string]: string | number | Row;
}

/** A list of records, one a line. Text goes in as it is: it must need no quotes. */
export const listText = (rows: readonly Row[]): string =>
  rows.length === 0 ? '[]\n' : rows.map((row) => `- ${flow(row)}\n`).join('');

/** One record, a key a line. */
export const mapText = (row: Row): string =>
  Object.entries(row)
    .map(([key, value]) => `${key}: ${typeof value === 'object' ? flow(value) : value}\n`)
    .join('');

function flow(row: Row): string {
  const pairs = Object.entries(row).map(([key, value]) => `${key}: ${typeof value === 'object' ? flow(value) : value}`);
  return `{${pairs.join(', ')}}`;
}
