import { codeFrame } from '../../reading/code-frame.ts';
import type { Problem } from '../../reading/problem.ts';

/** One line of a record file beside a problem; `marked` is the piece at fault, empty on the lines around it. */
export interface MarkedLine {
  readonly number: string;
  readonly before: string;
  readonly marked: string;
  readonly after: string;
}

/** The frame of a problem for a page: a mark in the line in place of a row of signs under it. */
export function markedLines(text: string, problem: Problem): MarkedLine[] {
  const rows = codeFrame(text, problem).split('\n');
  const [gutter = '', signs = ''] = split(rows.at(-1) ?? '');
  const start = signs.indexOf('^');
  if (start < 0) return [];
  return rows.slice(0, -1).map((row, index) => {
    const line = row.slice(gutter.length + BAR.length);
    const isAtFault = index === rows.length - 2;
    const [from, to] = isAtFault ? [start, signs.length] : [line.length, line.length];
    const number = row.slice(0, gutter.length).trim();
    return { number, before: line.slice(0, from), marked: line.slice(from, to), after: line.slice(to) };
  });
}

const BAR = ' | ';

/** A row of a frame before and after its first bar. */
function split(row: string): [string, string] {
  const place = row.indexOf(BAR);
  return [row.slice(0, place), row.slice(place + BAR.length)];
}
