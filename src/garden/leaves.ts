import { childOf, type Entry, type Tree, type TreePath } from '../reading/source.ts';

/** One text of a record as it was typed, and the field it stands in. */
export interface Leaf {
  readonly entry: Entry<unknown>;
  readonly field: TreePath;
  readonly text: string;
}

/** Every text of a record, in the order it was written. */
export function leavesOf(entry: Entry<unknown>): Leaf[] {
  const walk = (node: Tree | undefined, field: TreePath): Leaf[] => {
    if (typeof node !== 'object') return node === undefined ? [] : [{ entry, field, text: node }];
    return Object.entries(node).flatMap(([step, inner]) =>
      walk(inner, [...field, Array.isArray(node) ? Number(step) : step]),
    );
  };
  return walk(entry.path.reduce<Tree | undefined>(childOf, entry.source.tree), []);
}
