import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { onTestFinished } from 'vitest';
import { openPreview } from '../../src/cli/preview.ts';
import { scratch } from '../disk/scratch.ts';
import { ask } from '../site/preview/asking.ts';

export interface Previewed {
  readonly folder: string;
  readonly address: string;
  /** Everything said so far. */
  readonly said: string[];
  /** Builds after the first. */
  readonly builds: () => number;
  /** Waits for builds until the test is met: one save may be two builds on a busy machine, so none is counted on. */
  readonly until: (isMet: () => Promise<boolean>) => Promise<void>;
  /** Waits for builds until what stands at an address holds the words. */
  readonly becomes: (target: string, words: string) => Promise<void>;
  /** Replaces text in a record file. Throws Error when it is not there. */
  readonly edit: (path: string, from: string, to: string) => void;
  readonly close: () => Promise<void>;
}

/** A garden's copy in a folder of its own, shown on any free port until the test ends. */
export async function previewed(garden: string, prepare: (folder: string) => void = () => {}): Promise<Previewed> {
  const folder = join(scratch(), 'garden');
  cpSync(resolve(garden), folder, { recursive: true });
  prepare(folder);
  const said: string[] = [];
  let builds = 0;
  let wake: (() => void)[] = [];
  const nextBuild = (): Promise<void> => new Promise((done) => wake.push(done));
  const options = { port: 0, today: null, version: '0.0.0' };
  const effects = {
    say: (text: string) => void said.push(text),
    shown: () => {
      builds += 1;
      const waiting = wake;
      wake = [];
      for (const done of waiting) done();
    },
  };
  const { address, close } = await openPreview(folder, options, effects);
  onTestFinished(close);
  const until = async (isMet: () => Promise<boolean>): Promise<void> => {
    for (let shown = nextBuild(); !(await isMet()); shown = nextBuild()) await shown;
  };
  return {
    folder,
    address,
    said,
    close,
    builds: () => builds,
    until,
    becomes: (target, words) => until(async () => (await ask(address, target)).text.includes(words)),
    edit: (path, from, to) => {
      const text = readFileSync(join(folder, path), 'utf8');
      if (!text.includes(from)) throw new Error(`invalid edit: "${from}" is not in ${path}`);
      writeFileSync(join(folder, path), text.replace(from, to));
    },
  };
}
