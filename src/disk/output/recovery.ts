import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Changes } from '../changes.ts';
import { entryAt } from '../presence.ts';
import { isRunning } from '../running.ts';
import { recoverInPlace } from './in-place.ts';
import { MANIFEST_FILE } from './manifest.ts';
import type { Place } from './place.ts';
import { removeStaging } from './staging.ts';
import { IGNORE_FILE, isBare } from './standing.ts';
import { settle } from './swap.ts';

/** What a recovery did: put the last good site back, finished a publication that had already swapped, or nothing. */
export type Recovery = 'put-back' | 'finished' | 'nothing';

export const stagingBeside = (place: Place): string => join(place.parent, `.${place.name}.staging-${process.pid}`);

/** Tidies what a crash left at a place. Folders that only look like ours by their names are left alone. */
export function recoverPlace(place: Place, changes: Changes): Recovery {
  const done = recoverPrevious(place, changes);
  for (const staging of staleStagings(place)) removeStaging(staging, changes);
  recoverInPlace(place.folder, changes);
  return done;
}

function recoverPrevious(place: Place, changes: Changes): Recovery {
  const { previous, folder } = place;
  if (!isOurs(previous)) return 'nothing';
  if (hasManifest(folder)) {
    settle(place, changes);
    return 'finished';
  }
  if (entryAt(folder)) {
    if (!isBare(folder)) return 'nothing';
    clearBare(place, changes);
  }
  changes.rename(previous, folder);
  changes.flush(place.parent);
  return 'put-back';
}

/** Somebody made the target anew, empty, while what stood there before was aside. */
function clearBare({ folder, previous }: Place, changes: Changes): void {
  const ignore = join(folder, IGNORE_FILE);
  if (entryAt(ignore)) {
    if (entryAt(join(previous, IGNORE_FILE))) changes.removeFile(ignore);
    else changes.rename(ignore, join(previous, IGNORE_FILE));
  }
  changes.removeFolder(folder);
}

const hasManifest = (folder: string): boolean => entryAt(join(folder, MANIFEST_FILE))?.isFile() === true;

const isOurs = (folder: string): boolean =>
  entryAt(folder)?.isDirectory() === true && (hasManifest(folder) || isBare(folder));

/** Staging folders beside the target whose process is gone. One of our own number is stale too: publishing is synchronous. */
function staleStagings({ parent, name }: Place): string[] {
  if (!entryAt(parent)) return [];
  const start = `.${name}.staging-`;
  return readdirSync(parent)
    .filter((each) => each.startsWith(start) && /^\d+$/.test(each.slice(start.length)))
    .filter((each) => isStale(Number(each.slice(start.length))))
    .map((each) => join(parent, each))
    .filter(isOurs);
}

const isStale = (pid: number): boolean => pid === process.pid || !isRunning(pid);
