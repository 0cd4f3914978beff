import { fileProblem, type Problem } from './problem.ts';
import { enclosureSlip } from './yaml-enclosed.ts';
import type { Explanation, Fault, Slip } from './yaml-fault.ts';
import { layoutSlip } from './yaml-layout.ts';

/** The parser's complaint in a grower's words, with what to type instead. */
export function explainYaml(file: string, lines: readonly string[], fault: Fault): Problem {
  const { line, column } = fault;
  const slip: Slip = colonInText(lines, fault) ??
    layoutSlip(lines, line, fault) ??
    enclosureSlip(lines, line, fault) ?? { line, column, ...(EXPLAINED[fault.code] ?? unexplained(fault)) };
  return fileProblem(file, slip);
}

/** A tab before the first word of a line: named before parsing, since a parser loses its way after one. */
export function tabIndents(file: string, lines: readonly string[]): Problem[] {
  return lines.flatMap((row, index): Problem[] => {
    const indent = /^ *\t\s*(?=[^\s#])/.exec(row);
    if (!indent) return [];
    const column = row.indexOf('\t') + 1;
    return [fileProblem(file, { line: index + 1, column, ...TAB })];
  });
}

/** A text with ": " in it, not in quotes: the commonest slip of all. */
function colonInText(lines: readonly string[], { line, column, code }: Fault): Slip | null {
  if (code === 'DUPLICATE_KEY' || code === 'FIRST_KEY_TWICE') return null;
  const row = lines[line - 1] ?? '';
  const match = /^\s*(?:- +)*([\w-]+): +([^"'[{|>\s].*: .*|[^"'[{|>\s].*:)$/.exec(row.replace(/\s#.*$/, '').trimEnd());
  if (!match) return null;
  const [, key = '', value = ''] = match;
  return {
    line,
    column,
    code: 'colon-in-text',
    message: `the text after "${key}:" has a colon in it`,
    hint: `put the text in quotes: ${key}: "${value.replace(/"/g, "'")}"`,
  };
}

const TAB: Explanation = {
  code: 'tab-indent',
  message: 'the line is indented with a tab',
  hint: 'use two spaces for each step in',
};

const KEY_TWICE: Explanation = {
  code: 'key-twice',
  message: 'the same key stands twice in one record',
  hint: 'keep one of them; a new record begins with "- "',
};

const EXPLAINED: Readonly<Record<string, Explanation>> = {
  TAB_AS_INDENT: TAB,
  DUPLICATE_KEY: KEY_TWICE,
  FIRST_KEY_TWICE: KEY_TWICE,
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

function unexplained(fault: Fault): Explanation {
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
