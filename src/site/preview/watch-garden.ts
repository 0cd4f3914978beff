import type { Stats } from 'node:fs';
import { basename, extname, join, relative, sep } from 'node:path';
import { watch } from 'chokidar';

/** Output of our own that may stand in the garden. */
const MADE: readonly string[] = ['site', 'print'];
const RECORDS: readonly string[] = ['.yaml', '.yml', '.csv'];

export interface GardenWatch {
  readonly close: () => Promise<void>;
}

export interface WatchEffects {
  /** A record was saved, added or taken away; its path below the garden, with `/`. */
  readonly changed: (path: string) => void;
  /** The system cannot watch a part of it, for instance because it has no more watches to give. */
  readonly failed: (error: Error) => void;
}

/** Watches the records of a garden; resolves when nothing saved from now on goes unseen. `root` has no links in it. */
export function watchGarden(root: string, { changed, failed }: WatchEffects): Promise<GardenWatch> {
  const below = (path: string): string => relative(root, path).split(sep).join('/');
  const tell = (path: string): void => {
    if (!isPassedOver(below(path))) changed(below(path));
  };
  const watcher = watch(root, {
    ignored: (path: string, stats?: Stats) =>
      isPassedOver(below(path)) || (stats?.isFile() === true && !isRecord(path)),
    ignoreInitial: true,
    atomic: false,
    disableGlobbing: true,
    // The records are read through links within the garden only, and those stand in it under their own names.
    followSymlinks: false,
  });
  // The watcher's own events pass over what comes within 50 to 100 ms of the last one; the system's do not.
  watcher.on('raw', (_event: string, name: string | null, { watchedPath }: { watchedPath: string }) => {
    if (name !== null && isRecord(name)) tell(basename(watchedPath) === name ? watchedPath : join(watchedPath, name));
  });
  watcher.on('all', (event, path) => {
    if (event === 'unlinkDir' || isRecord(path)) tell(path);
  });
  watcher.on('error', failed);
  return new Promise((done) => watcher.on('ready', () => done({ close: () => watcher.close() })));
}

const isRecord = (path: string): boolean => RECORDS.includes(extname(path).toLowerCase());

/** What the reader of a garden passes over, and what the program itself writes. */
function isPassedOver(path: string): boolean {
  if (path === '') return false;
  const parts = path.split('/');
  return MADE.includes(parts[0] ?? '') || parts.some((part) => part.startsWith('.') || part === 'node_modules');
}
