import { join, relative } from 'node:path';
import { writeAtomic } from '../disk/atomic-file.ts';
import { copyTree } from '../disk/copy-tree.ts';
import { packageRoot } from '../disk/package-root.ts';

/** Written by code: a package leaves out the ignore files it holds. */
const IGNORED =
  '# The handbook, its papers and the working folder are made anew from the records.\n/site/\n/print/\n/.groundspot/\n';

/** Begins a garden in a folder from the commented starter. Throws Refusal when something stands there already. */
export function newGarden(folder: string): void {
  const copied = copyTree(join(packageRoot(), 'data', 'starter'), folder);
  writeAtomic(join(folder, '.gitignore'), IGNORED);
  const path = relative(process.cwd(), folder) || '.';
  process.stdout.write(`A small garden stands in ${path}: ${copied.length} files, each explained at its top.\n`);
  process.stdout.write(`Change them to yours, then:\n  groundspot check ${path}\n  groundspot build ${path}\n`);
}
