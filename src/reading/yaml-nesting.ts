import { CST, Lexer } from 'yaml';

/**
 * The line on which a YAML text first nests deeper than `most` lists and maps; null where it never does.
 * Levels are counted from the lexer's tokens, which needs no recursion and stops at that line: a parser
 * recursing over a hostile text would run out of stack.
 */
export function lineDeeperThan(text: string, most: number): number | null {
  if (depthAtMost(text) <= most) return null;
  return lineByTokens(text, most);
}

/** The same without a look ahead. */
export function lineByTokens(text: string, most: number): number | null {
  const indents: number[] = [];
  const place: Place = { line: 1, column: 0, atHead: true };
  let open = 0;
  let isScalar = false;
  for (const token of new Lexer().lex(text)) {
    const type: CST.TokenType | null = isScalar ? 'scalar' : CST.tokenType(token);
    isScalar = !isScalar && type === 'scalar';
    if (isScalar || type === 'doc-mode' || type === 'flow-error-end' || type === 'byte-order-mark') continue;
    if (type === 'flow-map-start' || type === 'flow-seq-start') open += 1;
    else if (type === 'flow-map-end' || type === 'flow-seq-end') open -= 1;
    else if (place.atHead && open === 0 && beginsLevel(type)) openLevel(indents, place.column);
    if (indents.length + open > most) return place.line;
    move(place, token, type);
  }
  return null;
}

const OPENS = /[[{]/g;
const CLOSES = /[\]}]/g;
const HEAD = /^[ \t?:-]*/;

/**
 * A depth that a text surely does not exceed, from its lines alone: a block level takes a column of its own before the
 * first word of a line, and outside quotes and comments every bracket between brackets is one. Infinity where quotes
 * may run on from line to line. Most files are shallow by this already, and their tokens need not be counted.
 */
export function depthAtMost(text: string): number {
  let [open, most, head] = [0, 0, 0];
  for (const line of text.split('\n')) {
    if (isOdd(line, '"') || isOdd(line, "'")) return Number.POSITIVE_INFINITY;
    head = Math.max(head, HEAD.exec(line)?.[0].length ?? 0);
    open += line.match(OPENS)?.length ?? 0;
    most = Math.max(most, open);
    if (!/["'#]/.test(line)) open = Math.max(0, open - (line.match(CLOSES)?.length ?? 0));
  }
  return head + 1 + most;
}

const isOdd = (line: string, sign: string): boolean => line.includes(sign) && line.split(sign).length % 2 === 0;

interface Place {
  line: number;
  column: number;
  /** True until the first token of a line that is no blank, dash, question mark or leading colon. */
  atHead: boolean;
}

const INDICATORS: readonly (CST.TokenType | null)[] = ['seq-item-ind', 'explicit-key-ind', 'map-value-ind'];

const beginsLevel = (type: CST.TokenType | null): boolean =>
  type !== 'space' && type !== 'newline' && type !== 'comment';

function openLevel(indents: number[], column: number): void {
  while ((indents.at(-1) ?? -1) >= column) indents.pop();
  indents.push(column);
}

function move(place: Place, token: string, type: CST.TokenType | null): void {
  if (type === 'newline') place.atHead = true;
  else if (type !== 'space' && !INDICATORS.includes(type)) place.atHead = false;
  const lastBreak = token.lastIndexOf('\n');
  if (lastBreak >= 0) place.line += token.split('\n').length - 1;
  place.column = lastBreak < 0 ? place.column + token.length : token.length - lastBreak - 1;
}
