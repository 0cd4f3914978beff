import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { Refusal } from '../../src/disk/refusal.ts';

/** An empty folder that goes away with the test; its path has no links in it. */
export function scratch(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'groundspot-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Writes files by relative path, making their folders. */
export function plant(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** Everything below a folder: text by path, `-> goal` for a link, `/` at the end of an empty folder. */
export function tree(folder: string): Record<string, string> {
  const found: [string, string][] = [];
  const walk = (below: string): void => {
    const entries = readdirSync(join(folder, below), { withFileTypes: true });
    if (entries.length === 0 && below !== '') found.push([`${below}/`, '']);
    for (const entry of entries) {
      const path = below === '' ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory()) walk(path);
      else found.push([path, textAt(join(folder, path), entry.isSymbolicLink())]);
    }
  };
  walk('');
  return Object.fromEntries(found.sort(([a], [b]) => (a < b ? -1 : 1)));
}

const textAt = (path: string, isLink: boolean): string =>
  isLink ? `-> ${readlinkSync(path)}` : readFileSync(path, 'utf8');

/** Root may read everything, so for tests of closed files it steps down for a moment. */
export function asNobody<T>(work: () => T): T {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.('nobody');
  try {
    return work();
  } finally {
    process.seteuid?.(0);
  }
}

/** The code of the Refusal that `work` throws; null when it throws none. Other errors go through. */
export function refusalCode(work: () => unknown): string | null {
  try {
    work();
    return null;
  } catch (error) {
    if (error instanceof Refusal) return error.code;
    throw error;
  }
}
