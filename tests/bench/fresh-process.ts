import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Watched } from './watched.ts';

export interface Ran extends Watched {
  readonly out: string;
}

/** Runs a script in a Node process of its own, watched by another. Throws Error when it fails. */
export function freshProcess(watched: string, script: string, args: readonly string[]): Ran {
  const folder = mkdtempSync(join(tmpdir(), 'groundspot-bench-'));
  try {
    const done = spawnSync(process.execPath, ['--import', pathToFileURL(watched).href, script, ...args], {
      encoding: 'utf8',
      env: { ...process.env, BENCH_WATCHED: join(folder, 'watched.json') },
    });
    if (done.status !== 0) throw new Error(`${script} ended with ${done.status}\n${done.stderr}`);
    return { ...(JSON.parse(readFileSync(join(folder, 'watched.json'), 'utf8')) as Watched), out: done.stdout };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
