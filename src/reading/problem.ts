/** What is wrong with a record, where, and what to type instead. Data until the command prints it. */
export interface Problem {
  readonly severity: 'error' | 'warning';
  /** Path relative to the garden's folder, with forward slashes. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units. */
  readonly column: number;
  /** Id of the record, where it has one. */
  readonly record: string | null;
  /** Dotted path of the field inside the record. */
  readonly field: string | null;
  /** Stable, kebab-case. */
  readonly code: string;
  readonly message: string;
  readonly hint: string | null;
}

/** A problem of a whole file or one of its lines, an error on its first line unless said otherwise. */
export function fileProblem(
  file: string,
  complaint: Pick<Problem, 'code' | 'message' | 'hint'> & Partial<Pick<Problem, 'severity' | 'line' | 'column'>>,
): Problem {
  const { code, message, hint } = complaint;
  const { severity = 'error', line = 1, column = 1 } = complaint;
  return { severity, file, line, column, record: null, field: null, code, message, hint };
}

/** By file, then place, then code: the same list for any reading order. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      compareText(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      compareText(a.code, b.code) ||
      compareText(a.message, b.message),
  );
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
