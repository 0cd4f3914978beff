import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { packageRoot } from './package-root.ts';
import { systemCode } from './system-error.ts';

/** What decides a result beside the records: our own code, words, drawings and reference facts. */
const DECIDING = /\.(?:ts|js|njk|yaml|css|svg)$/;
const FOLDERS = ['src', 'content'];
const MORE = ['content', 'layouts', join('data', 'reference')];

/**
 * A hash that stands for this program: its own files, the packages installed beside it and the Node it runs on.
 * Whatever is kept under one mark would be made the same again.
 */
export function programMark(): string {
  const hash = createHash('sha256').update(process.version);
  const code = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
  const root = packageRoot();
  for (const folder of [...FOLDERS.map((one) => join(code, one)), ...MORE.map((one) => join(root, one))])
    for (const path of decidingFiles(folder))
      hash.update(path.slice(folder.length)).update('\0').update(readFileSync(path));
  for (const path of [join(root, 'package.json'), installedList()]) hash.update('\0').update(textAt(path));
  return hash.digest('hex');
}

const decidingFiles = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => DECIDING.test(path))
    .sort()
    .map((path) => join(folder, path));

/** npm's own list of what it installed, with versions, in the folder that holds our packages. */
function installedList(): string {
  const from = createRequire(import.meta.url).resolve('vega');
  const place = from.lastIndexOf('node_modules');
  return join(from.slice(0, place), 'node_modules', '.package-lock.json');
}

/** Other installers leave no such list; ours are pinned in package.json. */
function textAt(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (systemCode(error) === null) throw error;
    return '';
  }
}
