import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';

interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a program and waits for it. */
export function run(program: string, args: readonly string[], cwd: string, env: Record<string, string> = {}): Ran {
  const done = spawnSync(program, args, { cwd, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1', ...env } });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

/** Runs the compiled command, as it is installed. */
export const groundspot = (args: readonly string[], cwd: string, env: Record<string, string> = {}): Ran =>
  run(process.execPath, [resolve('.build/src/cli/main.js'), ...args], cwd, env);

/** One hash for all files of a folder, names and bytes. */
export function hashOf(folder: string): string {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  const hash = createHash('sha256');
  for (const path of paths) hash.update(relative(folder, path)).update('\0').update(readFileSync(path)).update('\0');
  return hash.digest('hex');
}
