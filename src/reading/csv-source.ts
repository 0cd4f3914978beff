import { parse } from 'csv-parse/sync';
import { fileProblem, type Problem } from './problem.ts';
import { linesOf, problemAt, type ReadSource, type Source, type Tree } from './source.ts';

const MOST_ROWS = 100_000;

interface Row {
  readonly record: string[];
  readonly info: { readonly lines: number };
}

/** A table with one header line as a list of maps of text; blank cells are absent. One delimiter: comma, semicolon or tab. */
export function readCsv(file: string, text: string): ReadSource {
  const delimiter = delimiterOf(text);
  const rows = parseRows(text, delimiter);
  if ('fault' in rows)
    return {
      source: null,
      problems: [
        lineProblem(file, rows.line, 'csv', rows.fault, 'check the quotes of that line; in a note write none'),
      ],
    };
  const [header, ...body] = rows;
  if (!header)
    return {
      source: null,
      problems: [lineProblem(file, 1, 'csv-empty', 'the file has no header line', 'begin with a line of column names')],
    };
  const names = header.record.map((name) => name.trim());
  const lines = linesOf(text);
  // A row with a cell too many or too few has its values under the wrong names: its count is told, it is not read.
  const rowsRead = body.filter(({ record }) => record.length === names.length);
  const tree: Tree = rowsRead.map(({ record }) => mapOf(names, record));
  const source: Source = {
    file,
    text,
    tree,
    locate: ([row, name], part = 'value') => {
      const isHeader = typeof row !== 'number' || (part === 'key' && name !== undefined);
      const line = firstLine(isHeader ? header : rowsRead[row]);
      const cell = names.indexOf(String(name));
      return { line, column: cell < 0 ? 1 : cellColumn(lines[line - 1] ?? '', cell, delimiter) };
    },
  };
  return {
    source,
    problems: [...headerProblems(source, names), ...rowProblems(file, names, body), ...tooMany(source, body)],
  };
}

/** The parser counts to a row's last line; a quoted cell may hold several. */
const firstLine = (row: Row | undefined): number =>
  row ? row.info.lines - (row.record.join('').match(/\n/g)?.length ?? 0) : 1;

/** The delimiter met most in the header line, which comments and blank lines may precede. */
function delimiterOf(text: string): string {
  const header = /^(?!\s*(?:#|$)).*$/m.exec(text)?.[0] ?? '';
  const uses = (sign: string): number => header.split(sign).length;
  return [',', ';', '\t'].reduce((best, sign) => (uses(sign) > uses(best) ? sign : best));
}

function parseRows(text: string, delimiter: string): Row[] | { fault: string; line: number } {
  try {
    return parse(text, {
      delimiter,
      bom: true,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      comment: '#',
      comment_no_infix: true,
      trim: true,
    }) as unknown as Row[];
  } catch (error) {
    const { message, lines = 1, code } = error as { message: string; lines?: number; code?: string };
    const line = code === 'CSV_QUOTE_NOT_CLOSED' ? openQuoteLine(text) : lines;
    return { fault: `the table cannot be read: ${message.split(':')[0]?.toLowerCase()}`, line };
  }
}

/** The parser notices an open quote at the end of the file: the last line with an odd number of quotes opened it. */
function openQuoteLine(text: string): number {
  const isOdd = (line: string): boolean => line.split('"').length % 2 === 0;
  return linesOf(text).findLastIndex(isOdd) + 1;
}

function mapOf(names: readonly string[], cells: readonly string[]): { [key: string]: Tree } {
  const map: Record<string, Tree> = Object.create(null);
  names.forEach((name, index) => {
    const cell = cells[index]?.trim();
    if (cell) map[name] = cell;
  });
  return map;
}

function headerProblems(source: Source, names: readonly string[]): Problem[] {
  const twice = names.filter((name, index) => name !== '' && names.indexOf(name) !== index);
  return twice.map((name) =>
    problemAt(source, [], {
      code: 'column-twice',
      message: `the column "${name}" stands twice`,
      hint: 'keep one of them',
    }),
  );
}

function rowProblems(file: string, names: readonly string[], body: readonly Row[]): Problem[] {
  const hint =
    'write decimals with a point: 6.4, and a text with a comma in "quotes"; a blank cell keeps its delimiter';
  return body
    .filter(({ record }) => record.length !== names.length)
    .map((row) => {
      const message = `the row has ${row.record.length} cells, the header ${names.length}`;
      return lineProblem(file, firstLine(row), 'cell-count', message, hint);
    });
}

function tooMany(source: Source, body: readonly Row[]): Problem[] {
  if (body.length <= MOST_ROWS) return [];
  return [
    problemAt(source, [], {
      code: 'too-many-rows',
      message: `${body.length} rows are more than ${MOST_ROWS}`,
      hint: 'split the file by year',
    }),
  ];
}

/** Column of the nth cell of a line, delimiters inside quotes not counted. */
function cellColumn(line: string, cell: number, delimiter: string): number {
  let quoted = false;
  let seen = 0;
  for (let at = 0; at < line.length && seen <= cell; at++) {
    if (seen === cell) return at + 1;
    if (line[at] === '"') quoted = !quoted;
    else if (line[at] === delimiter && !quoted) seen += 1;
  }
  return line.length + 1;
}

const lineProblem = (file: string, line: number, code: string, message: string, hint: string): Problem =>
  fileProblem(file, { line, code, message, hint });
