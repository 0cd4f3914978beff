import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { entryAt } from '../presence.ts';
import { Refusal } from '../refusal.ts';
import { pathProblem } from './site-path.ts';

/** Marks a folder as written by us, and lists what we wrote there. */
export const MANIFEST_FILE = '.groundspot-site';

const HEAD = '# groundspot site 1';
const LINE = /^([0-9a-f]{64}) {2}(.+)$/;

/** Relative path → sha256 of its bytes as 64 hex digits. */
export type Manifest = ReadonlyMap<string, string>;

export const sha256 = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

export const manifestOf = (files: ReadonlyMap<string, Uint8Array>): Manifest =>
  new Map([...files].map(([path, bytes]) => [path, sha256(bytes)]));

/** The check-sum list of GNU coreutils, sorted by path, so that `sha256sum -c .groundspot-site` verifies a site. */
export function manifestText(manifest: Manifest): string {
  const lines = [...manifest.keys()].sort().map((path) => `${manifest.get(path)}  ${path}`);
  return `${[HEAD, ...lines].join('\n')}\n`;
}

/**
 * The manifest of a folder; null when it has none. Throws a Refusal `manifest-damaged` for one that cannot be trusted:
 * files are deleted by it, so each of its paths is checked like a new one.
 */
export function readManifest(folder: string): Manifest | null {
  const path = join(folder, MANIFEST_FILE);
  if (!entryAt(path)) return null;
  const manifest = intactManifest(folder);
  if (manifest) return manifest;
  throw new Refusal(
    'manifest-damaged',
    `${path} is not as it was written, so it is not known which files there are ours`,
    'Move that folder away, or choose another one with --out.',
  );
}

/** The manifest of a folder that a crash may have caught half-written; null when it has no whole one. */
export function intactManifest(folder: string): Manifest | null {
  const path = join(folder, MANIFEST_FILE);
  return entryAt(path)?.isFile() ? parseManifest(readFileSync(path, 'utf8')) : null;
}

function parseManifest(text: string): Manifest | null {
  const [head, ...lines] = text.split('\n');
  if (head !== HEAD || lines.pop() !== '') return null;
  const manifest = new Map<string, string>();
  for (const line of lines) {
    const [, sum, path] = LINE.exec(line) ?? [];
    if (sum === undefined || path === undefined || pathProblem(path) || manifest.has(path)) return null;
    manifest.set(path, sum);
  }
  return manifest;
}
