import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { entryAt } from '../presence.ts';
import { Refusal } from '../refusal.ts';
import { MANIFEST_FILE, type Manifest, readManifest } from './manifest.ts';
import { fold, foldersOf, parentsOf } from './site-path.ts';

/** The one file of the output that is committed, so it may stand in a folder we have never written. */
export const IGNORE_FILE = '.gitignore';

const NOTHING: Manifest = new Map();

/** The manifest of what stands in a folder. Throws a Refusal `not-ours` when the folder holds things and has none. */
export function manifestAt(folder: string): Manifest {
  if (!entryAt(folder)) return NOTHING;
  const manifest = readManifest(folder);
  if (manifest) return manifest;
  if (isBare(folder)) return NOTHING;
  throw new Refusal(
    'not-ours',
    `${folder} holds files that were not written by groundspot`,
    'Choose an empty or new folder with --out; nothing there was touched.',
  );
}

/** True for an existing folder with nothing in it but, at most, its `.gitignore`. */
export const isBare = (folder: string): boolean =>
  readdirSync(folder, { withFileTypes: true }).every((entry) => entry.name === IGNORE_FILE && entry.isFile());

/** The paths in a folder that we wrote: its manifest's, the manifest itself and the `.gitignore`. */
export const ownPaths = (manifest: Manifest): ReadonlySet<string> =>
  new Set([...manifest.keys(), MANIFEST_FILE, IGNORE_FILE]);

/**
 * What stands in `folder` and is not ours, sorted. A folder in which neither `own` nor `wanted` has a place is one
 * entry, however much is in it; links and other special files are never ours.
 */
export function foreignEntries(folder: string, own: ReadonlySet<string>, wanted: Iterable<string>): string[] {
  if (!entryAt(folder)) return [];
  const shared = new Set([...foldersOf([...own, ...wanted])].map(fold));
  const below = (parent: string): string[] =>
    readdirSync(join(folder, parent), { withFileTypes: true }).flatMap((entry) => {
      const path = parent === '' ? entry.name : `${parent}/${entry.name}`;
      if (entry.isDirectory() && shared.has(fold(path))) return below(path);
      return entry.isFile() && own.has(path) ? [] : [path];
    });
  return below('').sort();
}

/** Throws a Refusal `in-the-way` when a wanted path would cover something foreign. */
export function checkClear(folder: string, foreign: readonly string[], wanted: readonly string[]): void {
  const files = new Set(wanted.map(fold));
  const folders = new Set([...foldersOf(wanted)].map(fold));
  const covered = (path: string): boolean =>
    files.has(path) || folders.has(path) || parentsOf(path).some((above) => files.has(above));
  const first = foreign.find((path) => covered(fold(path)));
  if (first === undefined) return;
  throw new Refusal(
    'in-the-way',
    `${join(folder, first)} was not written by groundspot and stands where a page has to go`,
    'Move it away; nothing there was touched.',
  );
}
