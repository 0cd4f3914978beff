import { join, relative } from 'node:path';
import picocolors from 'picocolors';
import { codeFrame, harmless } from '../reading/code-frame.ts';
import type { Problem } from '../reading/problem.ts';
import type { Say } from './say.ts';

/** Frames shown for so many problems; the others still get their line. */
const MOST_FRAMES = 40;

export interface Count {
  readonly errors: number;
  readonly warnings: number;
}

export const countProblems = (problems: readonly Problem[]): Count => ({
  errors: problems.filter(({ severity }) => severity === 'error').length,
  warnings: problems.filter(({ severity }) => severity === 'warning').length,
});

/** All problems as a person reads them, each with its line of the file and what to type instead. */
export function problemReport(problems: readonly Problem[], folder: string, textOf: (path: string) => string): string {
  return problems
    .map((problem, index) => onePiece(problem, folder, index < MOST_FRAMES ? textOf(problem.file) : ''))
    .join('');
}

export interface Checked {
  readonly folder: string;
  readonly problems: readonly Problem[];
  readonly textOf: (path: string) => string;
  /** How many files were read. */
  readonly files: number;
}

/** What a verb that makes something says of the records first: warnings unless it is to be quiet, errors always. */
export function tellProblems({ folder, problems, textOf, files }: Checked, quiet: boolean, say: Say): Count {
  const count = countProblems(problems);
  if (count.errors > 0 || !quiet) process.stderr.write(problemReport(problems, folder, textOf));
  say(`checked  ${countLine(count, files).trim()}`);
  return count;
}

function onePiece(problem: Problem, folder: string, text: string): string {
  const { file, line, column, code, message, hint, severity } = problem;
  const path = relative(process.cwd(), join(folder, file)) || file;
  const kind = severity === 'warning' ? ' (warning)' : '';
  const head = `${picocolors.bold(harmless(`${path}:${line}:${column}:`))} ${harmless(message)} [${code}]${kind}\n`;
  const frame = text ? codeFrame(text, problem) : '';
  return `${head}${frame ? `${picocolors.dim(frame)}\n` : ''}${hint ? `  ${harmless(hint)}\n` : ''}`;
}

export function countLine({ errors, warnings }: Count, files: number): string {
  return `${number(errors, 'error')}, ${number(warnings, 'warning')} in ${number(files, 'file')}\n`;
}

const number = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;
