import type { Problem } from './problem.ts';

/** A file's content as plain text scalars in lists and maps, and the place of each in the file. */
export type Tree = string | readonly Tree[] | { readonly [key: string]: Tree };
export type TreePath = readonly (string | number)[];

export interface Place {
  readonly line: number;
  readonly column: number;
}

export interface Source {
  readonly file: string;
  readonly text: string;
  readonly tree: Tree;
  /** Where the value (or its key) at a path stands; the nearest existing parent when it is absent. */
  readonly locate: (path: TreePath, part?: 'key' | 'value') => Place;
}

/** A file read as far as it goes. */
export interface ReadSource {
  /** Null when nothing of the file can be used. */
  readonly source: Source | null;
  readonly problems: readonly Problem[];
}

/** A source whose tree is known; the file is only parsed again when somebody asks where a value stands. */
export function treeAgain(file: string, text: string, tree: Tree, parse: () => ReadSource): Source {
  let locate: Source['locate'] | null = null;
  return {
    file,
    text,
    tree,
    locate: (path, part) => {
      locate ??= parse().source?.locate ?? (() => ({ line: 1, column: 1 }));
      return locate(path, part);
    },
  };
}

/** The lines of a text, however they end. */
export const linesOf = (text: string): string[] => text.split(/\r\n|\n|\r/);

/** One record with the place it came from. */
export interface Entry<T> {
  readonly record: T;
  readonly source: Source;
  readonly path: TreePath;
}

interface Complaint {
  readonly code: string;
  readonly message: string;
  readonly hint?: string | null;
  readonly severity?: Problem['severity'];
  readonly part?: 'key' | 'value';
}

/** A problem at a path of a source. */
export function problemAt(source: Source, path: TreePath, complaint: Complaint): Problem {
  const { line, column } = source.locate(path, complaint.part);
  return {
    severity: complaint.severity ?? 'error',
    file: source.file,
    line,
    column,
    record: recordId(source.tree, path),
    field: fieldName(path),
    code: complaint.code,
    message: complaint.message,
    hint: complaint.hint ?? null,
  };
}

/** A problem at a field inside an entry. */
export const problemIn = (entry: Entry<unknown>, field: TreePath, complaint: Complaint): Problem =>
  problemAt(entry.source, [...entry.path, ...field], complaint);

function recordId(tree: Tree, path: TreePath): string | null {
  let node: Tree | undefined = tree;
  let found: string | null = null;
  for (const step of path) {
    node = childOf(node, step);
    const id = childOf(node, 'id');
    if (typeof id === 'string') found = id;
  }
  return found;
}

/** The child of a list or map; undefined where there is none. Inherited names are not children. */
export function childOf(node: Tree | undefined, step: string | number): Tree | undefined {
  if (typeof node !== 'object') return undefined;
  return Object.hasOwn(node, step) ? (node as Record<string | number, Tree>)[step] : undefined;
}

/** The path below the last list position, or the whole path where there is none. */
function fieldName(path: TreePath): string | null {
  const first = typeof path[0] === 'number' ? 1 : 0;
  return path.length > first ? path.slice(first).join('.') : null;
}
