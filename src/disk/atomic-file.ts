import { realpathSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { type Changes, disk } from './changes.ts';
import { entryAt } from './presence.ts';
import { inPlainWords } from './system-error.ts';
import { tidy } from './tidy.ts';

/**
 * Writes a file so that a reader, or the next start after a crash, finds the old bytes or the new ones, never a part.
 * The folder must exist. A link stays a link: the file it points at is replaced. An existing file keeps its mode bits.
 * Throws a Refusal in plain words when the disk says no.
 */
export function writeAtomic(path: string, data: string | Uint8Array, changes: Changes = disk): void {
  inPlainWords(path, () => {
    const isLink = entryAt(path)?.isSymbolicLink() === true;
    replace(isLink ? realpathSync(path) : path, data, changes);
  });
}

function replace(path: string, data: string | Uint8Array, changes: Changes): void {
  const mode = entryAt(path)?.mode;
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.tmp`);
  // A killed process that had our number may have left one.
  if (entryAt(temporary)) changes.removeFile(temporary);
  try {
    changes.write(temporary, data, mode);
    changes.rename(temporary, path);
  } catch (error) {
    tidy(() => changes.removeFile(temporary));
    throw error;
  }
  changes.flush(dirname(path));
}
