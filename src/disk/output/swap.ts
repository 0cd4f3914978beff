import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Changes } from '../changes.ts';
import { entryAt } from '../presence.ts';
import { systemCode } from '../system-error.ts';
import { MANIFEST_FILE, readManifest } from './manifest.ts';
import type { Place } from './place.ts';
import { foldersOf, parentsOf } from './site-path.ts';
import { foreignEntries, ownPaths } from './standing.ts';

/** What a system answers that will not move a folder: another disk, a mount point, a folder in use, a closed parent. */
const WILL_NOT_MOVE: ReadonlySet<string> = new Set(['EXDEV', 'EBUSY', 'EPERM', 'EACCES', 'EROFS', 'ENOTSUP']);

export const willNotMove = (error: unknown): boolean => WILL_NOT_MOVE.has(systemCode(error) ?? '');

/**
 * Puts a complete staged folder in the target's place by two renames; between them the last site stands at
 * `place.previous`. When the second fails, the first is undone. Throws the system's errors.
 */
export function swap(place: Place, staging: string, changes: Changes): void {
  const standing = entryAt(place.folder) !== null;
  if (standing) changes.rename(place.folder, place.previous);
  try {
    changes.rename(staging, place.folder);
  } catch (error) {
    if (standing) changes.rename(place.previous, place.folder);
    throw error;
  }
  changes.flush(place.parent);
}

/**
 * After a swap: moves what is not ours from the previous folder into the new one, then deletes the rest of the previous
 * folder. Foreign files are only ever renamed, never copied or deleted; one whose place is taken stays where it is, and
 * the previous folder with it. Can be cut off anywhere and run again: the manifest goes last.
 */
export function settle(place: Place, changes: Changes): void {
  const { previous, folder } = place;
  const own = ownPaths(readManifest(previous) ?? new Map());
  const wanted = readManifest(folder)?.keys() ?? [];
  for (const path of foreignEntries(previous, own, wanted)) {
    const to = join(folder, path);
    if (entryAt(to)) return;
    changes.makeFolder(dirname(to));
    changes.rename(join(previous, path), to);
  }
  removeOwn(previous, own, changes);
  if (entryAt(join(previous, MANIFEST_FILE))) changes.removeFile(join(previous, MANIFEST_FILE));
  changes.removeFolder(previous);
}

/**
 * Deletes the plain files among `own` but the manifest, and the folders that this leaves empty. Never goes through a
 * link, since what lies behind one is not ours.
 */
export function removeOwn(folder: string, own: Iterable<string>, changes: Changes): void {
  const paths = [...own].filter((path) => path !== MANIFEST_FILE);
  const folders = [...foldersOf(paths)].sort().reverse();
  const real = new Set(folders.filter((path) => entryAt(join(folder, path))?.isDirectory()));
  const isReached = (path: string): boolean => parentsOf(path).every((above) => real.has(above));
  for (const path of paths.filter(isReached)) {
    if (entryAt(join(folder, path))?.isFile()) changes.removeFile(join(folder, path));
  }
  for (const path of folders.filter((each) => real.has(each) && isReached(each))) {
    if (readdirSync(join(folder, path)).length === 0) changes.removeFolder(join(folder, path));
  }
}
