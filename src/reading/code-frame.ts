import type { Problem } from './problem.ts';
import { linesOf } from './source.ts';

/** The line of a problem with one before it and a mark under the place, for a terminal. */
export function codeFrame(text: string, { line, column }: Pick<Problem, 'line' | 'column'>): string {
  const lines = linesOf(text);
  const row = lines[line - 1];
  if (row === undefined) return '';
  const gutter = String(line).length + 2;
  const numbered = (number: number): string =>
    `${String(number).padStart(gutter)} | ${visible(lines[number - 1] ?? '')}`;
  const before = line > 1 ? [numbered(line - 1)] : [];
  const length = Math.max(
    1,
    /^(?:"[^"]*"|'[^']*'|[^\s}\]]+)/.exec(row.slice(column - 1))?.[0].replace(/,$/, '').length ?? 1,
  );
  const mark = `${' '.repeat(gutter)} | ${' '.repeat(visible(row.slice(0, column - 1)).length)}${'^'.repeat(Math.min(length, 60))}`;
  return [...before, numbered(line), mark].join('\n');
}

const WIDEST = 120;

/** Text of a record without what a terminal would obey. */
export const harmless = (text: string): string =>
  text.replace(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '·');

/** Tabs and control characters shown, long lines cut. */
function visible(row: string): string {
  const shown = harmless(row.replace(/\t/g, '→ '));
  return shown.length > WIDEST ? `${shown.slice(0, WIDEST)}…` : shown;
}
