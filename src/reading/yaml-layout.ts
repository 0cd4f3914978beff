import type { Fault, Slip } from './yaml-fault.ts';

/** The keys that records of lists begin with, in files as people write them. */
const BEGINNERS: readonly (string | null)[] = ['id', 'planting', 'fruit', 'date'];

interface Row {
  readonly indent: number;
  readonly isDashed: boolean;
  readonly key: string | null;
  readonly value: string;
}

/** A record whose dash is missing, or a line in the wrong column, from the rows about the parser's fault. */
export function layoutSlip(lines: readonly string[], line: number, fault: Fault): Slip | null {
  const row = rowOf(lines[line - 1] ?? '');
  if (fault.code === 'FIRST_KEY_TWICE') return BEGINNERS.includes(row.key) ? dashMissing(lines, line) : null;
  if (/compact mappings/.test(fault.message)) return besideKeyWithValue(lines, line, row);
  if (row.isDashed) {
    const head = headAbove(lines, line, row.indent);
    return head === null ? null : dashMissing(lines, head);
  }
  if (!/at node end/.test(fault.message) || fault.column > row.indent + 1 || !row.key) return null;
  return BEGINNERS.includes(row.key) ? dashMissing(lines, line) : outOfLine(lines, line);
}

function rowOf(text: string): Row {
  const [, indent = '', dashes = '', key, value = ''] = /^( *)((?:- +)*)(?:([\w-]+):(?=\s|$))?(.*)$/.exec(text) ?? [];
  return { indent: indent.length, isDashed: dashes !== '', key: key ?? null, value: value.replace(/#.*/, '').trim() };
}

const isBlank = (text: string | undefined): boolean => /^\s*(#|$)/.test(text ?? '');

/** `id: M1` with its other keys further in: a record without its dash, or a line that slipped. */
function besideKeyWithValue(lines: readonly string[], line: number, row: Row): Slip | null {
  const next = lines.findIndex((text, index) => index >= line && !isBlank(text));
  const below = next < 0 ? null : rowOf(lines[next] ?? '');
  if (!below?.key || below.indent <= row.indent || row.value === '') return null;
  return !row.isDashed && BEGINNERS.includes(row.key) ? dashMissing(lines, line) : tooFarIn(lines, next + 1);
}

/** The first line of a record without dash that stands directly above a dashed one; null where there is none. */
function headAbove(lines: readonly string[], line: number, dash: number): number | null {
  let head: number | null = null;
  for (let at = line - 1; at >= 1; at--) {
    if (isBlank(lines[at - 1])) continue;
    const row = rowOf(lines[at - 1] ?? '');
    if (row.indent < dash || row.isDashed) break;
    if (row.key) head = at;
  }
  return head !== null && BEGINNERS.includes(rowOf(lines[head - 1] ?? '').key) ? head : null;
}

function dashMissing(lines: readonly string[], line: number): Slip {
  const text = lines[line - 1] ?? '';
  return {
    line,
    column: rowOf(text).indent + 1,
    code: 'dash-missing',
    message: 'this record does not begin with a dash',
    hint: `write "- ${text.trim()}", and two spaces before its other keys`,
  };
}

const outOfLine = (lines: readonly string[], line: number): Slip => ({
  line,
  column: rowOf(lines[line - 1] ?? '').indent + 1,
  code: 'indent',
  message: 'the line does not line up with its record',
  hint: 'start it in the column of the key above; a new record begins with "- "',
});

const tooFarIn = (lines: readonly string[], line: number): Slip => ({
  line,
  column: rowOf(lines[line - 1] ?? '').indent + 1,
  code: 'indent',
  message: 'the line is further in than the key above, which has a value already',
  hint: 'start it in the column of the key above; a text of several lines goes in quotes',
});
