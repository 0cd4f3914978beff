import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { entryAt, holds } from './presence.ts';
import { Refusal } from './refusal.ts';
import { inPlainWords } from './system-error.ts';
import { tidy } from './tidy.ts';

/**
 * Copies the plain files below `from` into `to`, a new or empty folder, and gives their relative paths with `/`, sorted.
 * Copies get the usual mode, since a package's own files can be read-only. When one fails, those made are taken away.
 * Throws a Refusal: `not-empty`, `not-a-folder`, `not-a-file` (a link or device in `from`), or what the disk answers.
 */
export function copyTree(from: string, to: string): readonly string[] {
  inPlainWords(to, () => checkTarget(from, to));
  const paths = inPlainWords(from, () => plainFiles(from, ''));
  inPlainWords(to, () => copyAll(from, to, paths));
  return paths;
}

function checkTarget(from: string, to: string): void {
  const entry = entryAt(to);
  if (holds(resolve(from), resolve(to))) throw new Refusal('not-empty', `${to} lies in the folder that is copied`);
  if (!entry) return;
  if (entry.isFile()) throw new Refusal('not-a-folder', `${to} is a file`, CHOOSE);
  if (readdirSync(to).length > 0) throw new Refusal('not-empty', `${to} already holds something`, CHOOSE);
}

const CHOOSE = 'Choose a new or empty folder.';

function plainFiles(root: string, folder: string): string[] {
  const entries = readdirSync(join(root, folder), { withFileTypes: true });
  const found = entries.flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return plainFiles(root, path);
    if (entry.isFile()) return [path];
    throw new Refusal('not-a-file', `${join(root, path)} is not a plain file`);
  });
  return found.sort();
}

function copyAll(from: string, to: string, paths: readonly string[]): void {
  const made: string[] = [];
  try {
    for (const path of ['', ...paths.map(dirname)]) {
      // The first folder made, of all those that were missing.
      const first = mkdirSync(join(to, path), { recursive: true });
      if (first !== undefined) made.push(first);
    }
    for (const path of paths) {
      writeFileSync(join(to, path), readFileSync(join(from, path)), { flag: 'wx' });
      made.push(join(to, path));
    }
  } catch (error) {
    for (const path of made.reverse()) tidy(() => rmSync(path, { recursive: true, force: true }));
    throw error;
  }
}
