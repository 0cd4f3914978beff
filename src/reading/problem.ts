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
