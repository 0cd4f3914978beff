import nunjucks from 'nunjucks';
import { harmless } from '../../reading/code-frame.ts';
import type { Problem } from '../../reading/problem.ts';
import { type MarkedLine, markedLines } from './marked-lines.ts';
import { lastGoodAddress } from './shelf.ts';

/** Why there is no new handbook; or, `missing`, no page at an address. */
export type Fault =
  | { readonly kind: 'records'; readonly problems: readonly Problem[]; readonly textOf: (path: string) => string }
  | { readonly kind: 'refused'; readonly message: string; readonly hint: string | null }
  | { readonly kind: 'program'; readonly message: string }
  | { readonly kind: 'missing' };

export interface FaultSettings {
  /** Folder of templates, styles and words. */
  readonly layouts: string;
  /** Name of the garden, or of its folder where the name cannot be read. */
  readonly garden: string;
  /** Whether there is a last good handbook to go to. */
  readonly hasGood: boolean;
}

/** Lines of the file are shown for so many problems, and so many are listed at all: the first ones are mended first. */
const MOST_FRAMES = 40;
const MOST_LISTED = 400;

interface Listed extends Pick<Problem, 'file' | 'line' | 'column' | 'message' | 'hint'> {
  readonly lines: readonly MarkedLine[];
}

/** The page that stands in for every other while something is wrong, in the look of the book. */
export function faultPage(fault: Fault, { layouts, garden, hasGood }: FaultSettings): string {
  const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader(layouts), {
    autoescape: true,
    throwOnUndefined: true,
  });
  const told = fault.kind === 'records' ? recordsModel(fault) : fault;
  return environment.render('diagnostics.njk', { garden, lastGood: hasGood ? lastGoodAddress : null, fault: told });
}

function recordsModel({ kind, problems, textOf }: Extract<Fault, { kind: 'records' }>): object {
  const errors = problems.filter(({ severity }) => severity === 'error');
  const warnings = problems.filter(({ severity }) => severity === 'warning');
  const listed = [...errors, ...warnings].slice(0, MOST_LISTED).map((problem, index) => ({
    severity: problem.severity,
    shown: shown(problem, index < MOST_FRAMES ? textOf(problem.file) : ''),
  }));
  const of = (wanted: Problem['severity']): Listed[] =>
    listed.filter(({ severity }) => severity === wanted).map((one) => one.shown);
  return {
    kind,
    errorCount: errors.length,
    errors: of('error'),
    warnings: of('warning'),
    unlisted: problems.length - listed.length,
  };
}

function shown(problem: Problem, text: string): Listed {
  const { file, line, column, message, hint } = problem;
  return {
    file: harmless(file),
    line,
    column,
    message: harmless(message),
    hint: hint === null ? null : harmless(hint),
    lines: text ? markedLines(text, problem) : [],
  };
}
