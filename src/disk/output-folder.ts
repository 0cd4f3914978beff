import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type Changes, disk } from './changes.ts';
import { replaceInPlace } from './output/in-place.ts';
import { type Manifest, manifestOf } from './output/manifest.ts';
import { type Place, placeOf } from './output/place.ts';
import { type Recovery, recoverPlace, stagingBeside } from './output/recovery.ts';
import { checkPaths } from './output/site-path.ts';
import { removeStaging, type Site, stage } from './output/staging.ts';
import { checkClear, foreignEntries, IGNORE_FILE, manifestAt, ownPaths } from './output/standing.ts';
import { settle, swap, willNotMove } from './output/swap.ts';
import { entryAt } from './presence.ts';
import { Refusal } from './refusal.ts';
import { inPlainWords } from './system-error.ts';
import { tidy } from './tidy.ts';

/** Keeps the output out of a repository, but for this one file. */
export const IGNORE_TEXT = '*\n!.gitignore\n';

export interface PublishOptions {
  /** Folders that the target may neither be nor hold, such as the garden. The home and working folder always are. */
  readonly keep?: readonly string[];
  readonly changes?: Changes;
}

export interface Published {
  /** The folder written, absolute, links resolved. */
  readonly folder: string;
  /** `in-place` on a mount point and wherever else a folder cannot be renamed. */
  readonly way: 'swapped' | 'in-place';
  /** Sorted relative paths; unchanged files keep their time. */
  readonly changed: readonly string[];
  readonly removed: readonly string[];
  /** What stood there and is not ours; carried over untouched. */
  readonly foreign: readonly string[];
  /** A folder of the last site that could not be tidied away, or null. */
  readonly leftover: string | null;
}

/**
 * Writes a whole site, `files` by relative path with `/`, so that a failed or interrupted build leaves the last one.
 * Throws a Refusal: `not-ours`, `in-the-way`, `bad-name`, `protected-folder`, `not-a-folder`, `manifest-damaged`,
 * `previous-left`, or what the disk answers (`disk-full`, `not-permitted`, …); the last good site then still stands.
 */
export function publishFolder(
  target: string,
  files: ReadonlyMap<string, string | Uint8Array>,
  options: PublishOptions = {},
): Published {
  return inPlainWords(target, () => {
    const place = placeOf(target, [homedir(), process.cwd(), ...(options.keep ?? [])]);
    checkPaths([...files.keys()]);
    const changes = options.changes ?? disk;
    // Before anything is moved: a folder that is not ours is not tidied either.
    manifestAt(place.folder);
    recoverPlace(place, changes);
    checkPrevious(place);
    return publish(place, siteOf(place.folder, files), changes);
  });
}

/** Puts the last good site back, or finishes the new one, after a crash. Publishing does this itself first. */
export function recover(target: string, options: PublishOptions = {}): Recovery {
  return inPlainWords(target, () => recoverPlace(placeOf(target, options.keep ?? []), options.changes ?? disk));
}

function checkPrevious({ previous }: Place): void {
  if (!entryAt(previous)) return;
  throw new Refusal(
    'previous-left',
    `${previous} is in the way: it holds files that could not be carried over, or was not written by groundspot`,
    'Move what you need out of it and delete it.',
  );
}

/** A `.gitignore` of the target is kept as its owner left it; without one, ours is written. */
function siteOf(folder: string, files: ReadonlyMap<string, string | Uint8Array>): Site {
  const ignore = join(folder, IGNORE_FILE);
  const own = entryAt(ignore)?.isFile() ? readFileSync(ignore) : IGNORE_TEXT;
  const all = [...new Map([[IGNORE_FILE, own], ...files])].sort(([a], [b]) => (a < b ? -1 : 1));
  const bytes = new Map(all.map(([path, data]) => [path, typeof data === 'string' ? Buffer.from(data) : data]));
  return { files: bytes, manifest: manifestOf(bytes) };
}

function publish(place: Place, site: Site, changes: Changes): Published {
  const { folder, previous } = place;
  const before = manifestAt(folder);
  const wanted = [...site.files.keys()];
  const foreign = foreignEntries(folder, ownPaths(before), wanted);
  checkClear(folder, foreign, wanted);
  const change = changeBetween(before, site.manifest);
  const way = stagedAndSwapped(place, site, changes) ? 'swapped' : 'in-place';
  if (way === 'in-place') replaceInPlace(folder, site, changes);
  return { folder, way, ...change, foreign, leftover: entryAt(previous) ? previous : null };
}

function changeBetween(before: Manifest, after: Manifest): Pick<Published, 'changed' | 'removed'> {
  const changed = [...after].filter(([path, sum]) => before.get(path) !== sum).map(([path]) => path);
  return { changed, removed: [...before.keys()].filter((path) => !after.has(path)) };
}

/** False, with nothing changed, where folders cannot be made beside the target or renamed. */
function stagedAndSwapped(place: Place, site: Site, changes: Changes): boolean {
  const staging = stagingBeside(place);
  try {
    stage(staging, site, place.folder, changes);
    swap(place, staging, changes);
  } catch (error) {
    tidy(() => removeStaging(staging, changes));
    if (willNotMove(error)) return false;
    throw error;
  }
  tidy(() => {
    if (entryAt(place.previous)) settle(place, changes);
  });
  return true;
}
