import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Changes } from '../changes.ts';
import { entryAt } from '../presence.ts';
import { tidy } from '../tidy.ts';
import { intactManifest, MANIFEST_FILE, type Manifest, manifestText, readManifest, sha256 } from './manifest.ts';
import { fold, OWN_PREFIX } from './site-path.ts';
import { removeStaging, type Site, stage } from './staging.ts';
import { removeOwn } from './swap.ts';

/** Inside the target: a mount point's own disk is the only one its files can be renamed on. */
const INNER_STAGING = `${OWN_PREFIX}staging`;
const BOTH_FILE = `${OWN_PREFIX}both`;

/**
 * Publishes into a folder that cannot be renamed: everything is first written inside it, then renamed file by file.
 * A reader may meet pages of two builds for a moment; after a crash the next start finishes or drops the build.
 */
export function replaceInPlace(folder: string, site: Site, changes: Changes): void {
  changes.makeFolder(folder);
  const staging = join(folder, INNER_STAGING);
  try {
    stage(staging, site, folder, changes);
  } catch (error) {
    tidy(() => removeStaging(staging, changes));
    throw error;
  }
  promote(folder, site.manifest, changes);
}

/** Finishes a build in place that was cut off with all its files written; drops one that was cut off before. */
export function recoverInPlace(folder: string, changes: Changes): void {
  const staging = join(folder, INNER_STAGING);
  if (!entryAt(staging)?.isDirectory()) return;
  const staged = intactManifest(staging);
  if (staged && isComplete(folder, staging, staged)) promote(folder, staged, changes);
  else removeStaging(staging, changes);
}

const isComplete = (folder: string, staging: string, manifest: Manifest): boolean =>
  [...manifest].every(([path, sum]) => {
    const at = [join(staging, path), join(folder, path)].find((each) => entryAt(each)?.isFile());
    return at !== undefined && sha256(readFileSync(at)) === sum;
  });

/** Can be cut off anywhere and run again: the staged manifest takes its place last. */
function promote(folder: string, manifest: Manifest, changes: Changes): void {
  const staging = join(folder, INNER_STAGING);
  const before = readManifest(folder) ?? new Map<string, string>();
  writeBoth(folder, new Map([...before, ...manifest]), changes);
  const dropped = [...before.keys()].filter((path) => !manifest.has(path));
  removeOwn(folder, dropped.filter(isInTheWayOf([...manifest.keys()])), changes);
  for (const path of pagesLast(manifest.keys())) {
    if (!entryAt(join(staging, path))) continue;
    changes.makeFolder(dirname(join(folder, path)));
    changes.rename(join(staging, path), join(folder, path));
  }
  removeOwn(folder, dropped, changes);
  changes.rename(join(staging, MANIFEST_FILE), join(folder, MANIFEST_FILE));
  removeStaging(staging, changes);
  changes.flush(folder);
}

/** While files of two builds stand in the folder, its manifest claims both. */
function writeBoth(folder: string, both: Manifest, changes: Changes): void {
  const draft = join(folder, INNER_STAGING, BOTH_FILE);
  if (entryAt(draft)) changes.removeFile(draft);
  changes.write(draft, manifestText(both));
  changes.rename(draft, join(folder, MANIFEST_FILE));
}

/** A dropped file must go before the new ones come when it is a folder now, lay in what is a file now, or changed case. */
function isInTheWayOf(wanted: readonly string[]): (path: string) => boolean {
  const folded = wanted.map(fold);
  return (path) => {
    const old = fold(path);
    return folded.some((now) => now === old || now.startsWith(`${old}/`) || old.startsWith(`${now}/`));
  };
}

/** Pictures and tables before the pages that show them. */
const pagesLast = (paths: Iterable<string>): string[] => {
  const all = [...paths].sort();
  const isPage = (path: string): boolean => path.endsWith('.html');
  return [...all.filter((path) => !isPage(path)), ...all.filter(isPage)];
};
