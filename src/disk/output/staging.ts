import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Changes } from '../changes.ts';
import { entryAt } from '../presence.ts';
import { systemCode } from '../system-error.ts';
import { MANIFEST_FILE, type Manifest, manifestText } from './manifest.ts';
import { foldersOf } from './site-path.ts';

/** A site on its way out: bytes by path, and their manifest. */
export interface Site {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly manifest: Manifest;
}

/**
 * Writes a whole site into the new folder `staging`. A file whose bytes already stand in `old` becomes a second name
 * of that file, so it keeps its time and costs no writing. The manifest goes first: it marks the folder as ours.
 */
export function stage(staging: string, site: Site, old: string, changes: Changes): void {
  changes.makeFolder(staging, entryAt(old)?.mode);
  changes.write(join(staging, MANIFEST_FILE), manifestText(site.manifest));
  const folders = [...foldersOf(site.files.keys())].map((folder) => join(staging, folder));
  for (const folder of folders) changes.makeFolder(folder);
  for (const [path, bytes] of site.files) {
    const [to, from] = [join(staging, path), join(old, path)];
    if (!isSame(from, bytes) || !linked(from, to, changes)) changes.write(to, bytes);
  }
  for (const folder of [...folders, staging, dirname(staging)]) changes.flush(folder);
}

/** True when a plain file stands at `path` with exactly these bytes. */
export function isSame(path: string, bytes: Uint8Array): boolean {
  const entry = entryAt(path);
  return entry?.isFile() === true && entry.size === bytes.length && readFileSync(path).equals(bytes);
}

/** False on a disk that knows no second names. */
function linked(from: string, to: string, changes: Changes): boolean {
  try {
    changes.link(from, to);
    return true;
  } catch (error) {
    if (systemCode(error) === null) throw error;
    return false;
  }
}

/** Deletes a folder we staged with all that is in it, its manifest last, so that a half-deleted one is still known. */
export function removeStaging(staging: string, changes: Changes): void {
  if (!entryAt(staging)) return;
  removeWithin(staging, changes);
  if (entryAt(join(staging, MANIFEST_FILE))) changes.removeFile(join(staging, MANIFEST_FILE));
  changes.removeFolder(staging);
}

function removeWithin(folder: string, changes: Changes): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.name === MANIFEST_FILE) continue;
    if (!entry.isDirectory()) changes.removeFile(path);
    else {
      removeWithin(path, changes);
      changes.removeFolder(path);
    }
  }
}
