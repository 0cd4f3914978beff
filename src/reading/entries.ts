import type { z } from 'zod';
import { fieldProblems } from './field-problem.ts';
import { nearest } from './nearest.ts';
import type { Problem } from './problem.ts';
import { childOf, type Entry, problemAt, type Source, type Tree, type TreePath } from './source.ts';

export interface Read<T> {
  readonly entries: readonly Entry<T>[];
  /** Ids of records that were refused: references to them are not dangling. Null when not even their ids could be read. */
  readonly spoilt: readonly string[] | null;
  readonly problems: readonly Problem[];
}

/** The records of a file that holds a list; a bad record does not take its neighbours with it. */
export function readList<S extends z.ZodType>(source: Source, schema: S): Read<z.output<S>> {
  if (!Array.isArray(source.tree)) {
    if (Object.keys(source.tree).length === 0) return { entries: [], spoilt: [], problems: [] };
    const complaint = {
      code: 'dash-missing',
      message: 'this file holds a list, and its records do not begin with a dash',
      hint: 'write "- " before the first key of each record',
    };
    return { entries: [], spoilt: null, problems: [problemAt(source, [], complaint)] };
  }
  const read = source.tree.map((_, index) => readOne(source, [index], schema));
  return {
    entries: read.flatMap(({ entries }) => entries),
    spoilt: read.some(({ spoilt }) => spoilt === null) ? null : read.flatMap(({ spoilt }) => spoilt ?? []),
    problems: read.flatMap(({ problems }) => problems),
  };
}

/** The record of a file that holds one map. */
export function readMap<S extends z.ZodType>(source: Source, schema: S): Read<z.output<S>> {
  if (Array.isArray(source.tree)) {
    const complaint = {
      code: 'dash-extra',
      message: 'this file holds one record, not a list',
      hint: 'take away the dashes',
    };
    return { entries: [], spoilt: null, problems: [problemAt(source, [], complaint)] };
  }
  return readOne(source, [], schema);
}

function readOne<S extends z.ZodType>(source: Source, path: TreePath, schema: S): Read<z.output<S>> {
  const value = path.reduce<Tree | undefined>(childOf, source.tree);
  const result = schema.safeParse(value);
  if (result.success) return { entries: [{ record: result.data, source, path }], spoilt: [], problems: [] };
  const id = childOf(value, 'id');
  return {
    entries: [],
    spoilt: typeof id === 'string' ? [id] : null,
    problems: withoutEchoes(result.error.issues.flatMap((issue) => fieldProblems(source, path, schema, issue))),
  };
}

/** A misspelt key is also a missing one; its own problem says it. */
function withoutEchoes(problems: readonly Problem[]): Problem[] {
  const misspelt = problems.filter(({ code }) => code === 'unknown-key');
  const isEcho = ({ code, field }: Problem): boolean =>
    code === 'missing-key' &&
    misspelt.some(
      (other) => mapOf(other.field) === mapOf(field) && nearest(keyOf(other.field), [keyOf(field)]) !== null,
    );
  return problems.filter((problem) => !isEcho(problem));
}

const mapOf = (field: string | null): string => (field ?? '').split('.').slice(0, -1).join('.');
const keyOf = (field: string | null): string => (field ?? '').split('.').at(-1) ?? '';
