import {
  closeSync,
  type Dirent,
  fstatSync,
  openSync,
  readdirSync,
  readFileSync,
  realpathSync,
  type Stats,
  statSync,
} from 'node:fs';
import { extname, join } from 'node:path';
import { MANIFEST_FILE } from './output/manifest.ts';
import { entryAt, holds } from './presence.ts';
import { Refusal } from './refusal.ts';
import { inPlainWords, systemCode } from './system-error.ts';

export interface ReadFolderOptions {
  /** With the dot, lower case; a file's own case does not matter. */
  readonly extensions: readonly string[];
  /** Of one file. */
  readonly maxBytes: number;
  readonly maxFiles: number;
  /** Relative paths, with `/`, of folders and files to pass over. */
  readonly skip?: readonly string[];
}

export interface FoundFile {
  /** Relative to the root, with `/`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Codes: `too-big`, `outside`, `loop`, `read-twice`, `dangling-link`, `not-a-file`, `unreadable`. */
export interface RefusedPath {
  readonly path: string;
  readonly code: string;
  readonly message: string;
}

export interface FolderContents {
  readonly files: readonly FoundFile[];
  readonly refused: readonly RefusedPath[];
}

/** What one reading knows while it goes through the tree. */
interface Walk {
  readonly root: string;
  readonly options: ReadFolderOptions;
  readonly files: FoundFile[];
  readonly refused: RefusedPath[];
  /** Links wait until everything that stands under its own name is read. */
  readonly links: string[];
  /** True places of the folders and files already met. */
  readonly met: Set<string>;
}

/**
 * All files with one of the extensions below `root`, sorted by path by code unit, so the result does not depend on the
 * order of the directory. Names that start with a dot, `node_modules` and published sites are passed over. A link is
 * followed only within the root, and nothing is read twice. What could not be read is listed, never dropped in silence.
 * Throws a Refusal `not-found`, `not-a-folder`, `output-folder` (the root is a published site) or `too-many-files`.
 */
export function readFolder(root: string, options: ReadFolderOptions): FolderContents {
  const walk: Walk = { root: realRoot(root), options, files: [], refused: [], links: [], met: new Set() };
  meetFolder(walk, '');
  // A link to a folder can bring further links: they join the list and are met in this same loop.
  for (const link of walk.links) followLink(walk, link);
  return { files: walk.files.sort(byPath), refused: walk.refused.sort(byPath) };
}

const byPath = (a: { readonly path: string }, b: { readonly path: string }): number => (a.path < b.path ? -1 : 1);

function realRoot(root: string): string {
  return inPlainWords(root, () => {
    const real = realpathSync.native(root);
    if (!statSync(real).isDirectory()) throw new Refusal('not-a-folder', `${root} is not a folder`);
    if (!isSite(real)) return real;
    throw new Refusal('output-folder', `${root} is a printed site, not a garden`, 'Name the folder with the records.');
  });
}

const isSite = (folder: string): boolean => entryAt(join(folder, MANIFEST_FILE)) !== null;

function walkFolder(walk: Walk, folder: string): void {
  const entries = guarded(walk, folder, () => readdirSync(join(walk.root, folder), { withFileTypes: true })) ?? [];
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (!isPassedOver(entry.name, path, walk.options)) meet(walk, path, entry);
  }
}

const isPassedOver = (name: string, path: string, { skip = [] }: ReadFolderOptions): boolean =>
  name.startsWith('.') || name === 'node_modules' || skip.includes(path);

function meet(walk: Walk, path: string, entry: Dirent): void {
  if (entry.isSymbolicLink()) walk.links.push(path);
  else if (entry.isDirectory()) meetFolder(walk, path);
  else if (isWanted(walk, path)) meetFile(walk, path, entry.isFile());
}

function meetFolder(walk: Walk, path: string): void {
  const site = guarded(walk, path, () => isSite(join(walk.root, path)));
  if (site === false && isFirst(walk, path)) walkFolder(walk, path);
}

const isWanted = (walk: Walk, path: string): boolean => walk.options.extensions.includes(extname(path).toLowerCase());

/** A pipe or device is not opened: reading one can wait for ever. */
function meetFile(walk: Walk, path: string, isPlain: boolean): void {
  if (!isPlain) refuse(walk, path, 'not-a-file', 'is not a plain file');
  if (!isPlain || !isFirst(walk, path)) return;
  if (walk.files.length >= walk.options.maxFiles) {
    throw new Refusal('too-many-files', `${walk.root} holds more than ${walk.options.maxFiles} files of records`);
  }
  const full = join(walk.root, path);
  const bytes = guarded(walk, path, () => bytesOf(full, walk.options.maxBytes));
  if (bytes) walk.files.push({ path, bytes });
  else if (bytes === null) refuse(walk, path, 'too-big', `has more than ${walk.options.maxBytes} bytes`);
}

/** False, and one more refused path, for what has been read under another name or cannot be reached. */
function isFirst(walk: Walk, path: string): boolean {
  const real = guarded(walk, path, () => realpathSync.native(join(walk.root, path)));
  if (real === undefined) return false;
  const known = walk.met.has(real);
  if (known) refuse(walk, path, 'read-twice', 'is a link to what is read under another name');
  walk.met.add(real);
  return !known;
}

/** Null when the file is larger than the limit. */
function bytesOf(path: string, maxBytes: number): Uint8Array | null {
  const file = openSync(path, 'r');
  try {
    return fstatSync(file).size > maxBytes ? null : readFileSync(file);
  } finally {
    closeSync(file);
  }
}

function followLink(walk: Walk, path: string): void {
  const goal = guarded(walk, path, () => goalOf(join(walk.root, path)), LINK_WORDS);
  if (!goal) return;
  const { real, entry } = goal;
  if (!entry.isDirectory() && !isWanted(walk, path)) return;
  const isLoop = entry.isDirectory() && holds(real, join(walk.root, path));
  if (!holds(walk.root, real)) refuse(walk, path, 'outside', 'is a link that leads out of the folder');
  else if (isLoop) refuse(walk, path, 'loop', 'is a link to a folder that it lies in');
  else if (entry.isDirectory()) meetFolder(walk, path);
  else meetFile(walk, path, entry.isFile());
}

function goalOf(link: string): { real: string; entry: Stats } {
  const real = realpathSync.native(link);
  return { real, entry: statSync(real) };
}

const LINK_WORDS: Readonly<Record<string, readonly [code: string, message: string]>> = {
  ENOENT: ['dangling-link', 'is a link to something that is not there'],
  ELOOP: ['loop', 'is a link that leads back to itself'],
};

/** The outcome of `work`; undefined, and one more refused path, when the system says no. */
function guarded<T>(
  walk: Walk,
  path: string,
  work: () => T,
  words: Readonly<Record<string, readonly [code: string, message: string]>> = {},
): T | undefined {
  try {
    return work();
  } catch (error) {
    const system = systemCode(error);
    if (system === null) throw error;
    const [code, message] = words[system] ?? ['unreadable', `cannot be read (${system})`];
    refuse(walk, path, code, message);
    return undefined;
  }
}

function refuse(walk: Walk, path: string, code: string, message: string): void {
  walk.refused.push({ path, code, message: `${path} ${message}` });
}
