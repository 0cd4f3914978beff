import type { Fault, Slip } from './yaml-fault.ts';

/** A quote or bracket left open, named where it opens, and a text that goes on after its closing quote. */
export function enclosureSlip(lines: readonly string[], line: number, fault: Fault): Slip | null {
  const quote = /Missing closing (["'])/.exec(fault.message)?.[1];
  if (quote) return openQuote(lines, quote);
  if (fault.code === 'BLOCK_IN_FLOW') return colonInBraces(lines, line) ?? openBracket(lines, line);
  if (/^Flow .* must be/.test(fault.message)) return openBracket(lines, line - 1);
  const row = lines[line - 1] ?? '';
  const isAfterQuote = /at node end/.test(fault.message) && /["']/.test(row.slice(0, fault.column - 1));
  return isAfterQuote ? { line, column: fault.column, ...AFTER_QUOTE } : null;
}

const AFTER_QUOTE = {
  code: 'after-quote',
  message: 'the text goes on after its closing quote',
  hint: 'put the whole text in "double quotes", and use no others inside it',
};

/** Had another quote of its kind followed, it would be closed: so the last of the file opened it. */
function openQuote(lines: readonly string[], quote: string): Slip | null {
  const index = lines.findLastIndex((row) => row.includes(quote));
  const column = (lines[index] ?? '').lastIndexOf(quote) + 1;
  const hint = `write a closing ${quote} at the end of the text`;
  return index < 0 ? null : { line: index + 1, column, code: 'quote-open', message: 'a quote is not closed', hint };
}

function openBracket(lines: readonly string[], line: number): Slip | null {
  const count = (row: string, signs: RegExp): number => row.match(signs)?.length ?? 0;
  const isOpen = (row: string): boolean => count(row, /[[{]/g) > count(row, /[\]}]/g);
  const index = lines.slice(0, line).findLastIndex(isOpen);
  if (index < 0) return null;
  const row = lines[index] ?? '';
  const column = Math.max(row.lastIndexOf('{'), row.lastIndexOf('[')) + 1;
  const closing = row[column - 1] === '{' ? '}' : ']';
  return {
    line: index + 1,
    column,
    code: 'bracket-open',
    message: 'a bracket is not closed',
    hint: `close it with ${closing}`,
  };
}

/** A text with ": " in it between braces. */
function colonInBraces(lines: readonly string[], line: number): Slip | null {
  const match = /([{,]\s*)([\w-]+): +([^"'[{,}\]]*: [^,}\]]*)/.exec(lines[line - 1] ?? '');
  if (!match) return null;
  const [, before = '', key = '', value = ''] = match;
  return {
    line,
    column: match.index + before.length + 1,
    code: 'colon-in-text',
    message: `the text after "${key}:" has a colon in it`,
    hint: `put the text in quotes: ${key}: "${value.trim()}"`,
  };
}
