import {
  chmodSync,
  closeSync,
  fchmodSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  renameSync,
  rmdirSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';

/**
 * Every way the output is changed, handed in so that a test can cut the power between any two of them.
 * All throw the system's errors.
 */
export interface Changes {
  /** Makes a folder with its parents; `mode` holds for the last one. */
  makeFolder(path: string, mode?: number): void;
  /** Writes a file that must not exist yet, and waits until it is on the disk. */
  write(path: string, data: string | Uint8Array, mode?: number): void;
  /** Gives a file a second name. */
  link(from: string, to: string): void;
  rename(from: string, to: string): void;
  removeFile(path: string): void;
  /** Removes an empty folder. */
  removeFolder(path: string): void;
  /** Waits until a folder's list of names is on the disk, where the system can do that. */
  flush(folder: string): void;
}

export const disk: Changes = {
  makeFolder(path, mode) {
    mkdirSync(path, { recursive: true });
    if (mode !== undefined) chmodSync(path, mode & 0o7777);
  },
  write(path, data, mode) {
    const file = openSync(path, 'wx');
    try {
      if (mode !== undefined) fchmodSync(file, mode & 0o7777);
      writeFileSync(file, data);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  },
  link: linkSync,
  rename: renameSync,
  removeFile: unlinkSync,
  removeFolder: rmdirSync,
  flush: flushFolder,
};

function flushFolder(folder: string): void {
  let handle: number | null = null;
  try {
    handle = openSync(folder, 'r');
    fsyncSync(handle);
  } catch {
    // Windows and some network disks cannot flush a folder; the files themselves are flushed.
  } finally {
    if (handle !== null) closeSync(handle);
  }
}
