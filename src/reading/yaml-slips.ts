import type { LineCounter, YAMLError } from 'yaml';
import type { Problem } from './problem.ts';

interface Explanation {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

/** The parser's complaint in a grower's words, with what to type instead. */
export function explainYaml(
  file: string,
  lines: readonly string[],
  lineCounter: LineCounter,
  fault: YAMLError,
): Problem {
  const { line, col } = lineCounter.linePos(fault.pos[0]);
  const row = lines[line - 1] ?? '';
  const { code, message, hint } =
    colonInText(row) ?? dashMissing(row, fault.code) ?? EXPLAINED[fault.code] ?? unexplained(fault);
  return {
    severity: 'error',
    file,
    line: Math.max(line, 1),
    column: Math.max(col, 1),
    record: null,
    field: null,
    code,
    message,
    hint,
  };
}

/** A tab before the first word of a line: named before parsing, since a parser loses its way after one. */
export function tabIndents(file: string, lines: readonly string[]): Problem[] {
  const { code, message, hint } = TAB;
  return lines.flatMap((row, index): Problem[] => {
    const indent = /^ *\t\s*(?=[^\s#])/.exec(row);
    if (!indent) return [];
    const column = row.indexOf('\t') + 1;
    return [{ severity: 'error', file, line: index + 1, column, record: null, field: null, code, message, hint }];
  });
}

/** A text with ": " in it, not in quotes: the commonest slip of all. */
function colonInText(row: string): Explanation | null {
  const match = /^\s*(?:- +)*([\w-]+): +([^"'[{|>\s].*: .*|[^"'[{|>\s].*:)$/.exec(row.replace(/\s#.*$/, '').trimEnd());
  if (!match) return null;
  const [, key = '', value = ''] = match;
  return {
    code: 'colon-in-text',
    message: `the text after "${key}:" has a colon in it`,
    hint: `put the text in quotes: ${key}: "${value.replace(/"/g, "'")}"`,
  };
}

/** Only lists have ids, so a second id at the margin is a record begun without its dash. */
function dashMissing(row: string, code: string): Explanation | null {
  if (code !== 'DUPLICATE_KEY' || !row.startsWith('id:')) return null;
  return {
    code: 'dash-missing',
    message: 'this record does not begin with a dash',
    hint: `write "- ${row.trim()}", and two spaces before its other keys`,
  };
}

const TAB: Explanation = {
  code: 'tab-indent',
  message: 'the line is indented with a tab',
  hint: 'use two spaces for each step in',
};

const EXPLAINED: Readonly<Record<string, Explanation>> = {
  TAB_AS_INDENT: TAB,
  DUPLICATE_KEY: {
    code: 'key-twice',
    message: 'the same key stands twice in one record',
    hint: 'keep one of them; a new record begins with "- "',
  },
  BAD_SCALAR_START: {
    code: 'odd-start',
    message: 'a text cannot begin with this sign',
    hint: 'put the whole text in quotes',
  },
  TAG_RESOLVE_FAILED: { code: 'tag', message: 'a text cannot begin with "!"', hint: 'put the whole text in quotes' },
  NON_STRING_KEY: { code: 'key-form', message: 'a key has to be one word', hint: 'write key: value' },
  MULTILINE_IMPLICIT_KEY: {
    code: 'colon-space',
    message: 'a key needs a colon and a space after it',
    hint: 'write key: value, with the space',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    code: 'two-keys',
    message: 'two keys stand on one line',
    hint: 'put each on its own line, or the text in quotes',
  },
  BAD_INDENT: {
    code: 'indent',
    message: 'the line does not line up with the one it belongs to',
    hint: 'start it in the same column as its neighbours',
  },
  BLOCK_IN_FLOW: { code: 'bracket-open', message: 'a bracket above is not closed', hint: 'close it with ] or }' },
};

function unexplained(fault: YAMLError): Explanation {
  if (/closing/.test(fault.message)) {
    return { code: 'quote-open', message: 'a quote or bracket is not closed', hint: 'close it on the same line' };
  }
  if (/without - indicator/.test(fault.message)) {
    return {
      code: 'indent',
      message: 'the line does not line up with its record',
      hint: 'start it in the column of the key above; a new record begins with "- "',
    };
  }
  if (/need to be followed by map values/.test(fault.message)) {
    return {
      code: 'colon-space',
      message: 'a key needs a colon and a space after it',
      hint: 'write key: value, with the space',
    };
  }
  return {
    code: 'yaml',
    message: 'the line cannot be read',
    hint: `check its quotes, colons and spaces (the reader says: ${fault.message})`,
  };
}
