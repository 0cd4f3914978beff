import { cpSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { programMark } from '../../src/disk/program-mark.ts';
import { run } from '../cli/command.ts';
import { scratch } from './scratch.ts';

test('the mark is the same in every process, and another for another program', () => {
  expect(programMark()).toBe(programMark());
  const folder = scratch();
  for (const part of ['.build', 'content', 'layouts', 'data/reference', 'package.json'])
    cpSync(part, join(folder, part), { recursive: true });
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  const mark = (): string =>
    run(
      process.execPath,
      [
        '--input-type=module',
        '--eval',
        `import { programMark } from ${JSON.stringify(join(folder, '.build/src/disk/program-mark.js'))}; process.stdout.write(programMark());`,
      ],
      folder,
    ).out;
  const first = mark();
  expect(first).toMatch(/^[0-9a-f]{64}$/);
  expect(mark()).toBe(first);
  const seen = new Set([first]);
  for (const path of [
    '.build/src/figure.js',
    '.build/content/more.js',
    'content/yield/index.njk',
    'layouts/messages/en.yaml',
    'data/reference/methods.yaml',
    'package.json',
  ]) {
    writeFileSync(join(folder, path), path === 'package.json' ? '{"imports":{"#package.json":"./package.json"}}' : 'x');
    seen.add(mark());
  }
  expect(seen.size).toBe(7);
});
