import { existsSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { groundspot } from '../cli/command.ts';

const root = realpathSync(mkdtempSync(join(tmpdir(), 'groundspot-print-')));
const garden = join(root, 'garden');
beforeAll(() => void groundspot(['new', garden], root));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** The options of Node under which a package cannot be found, as where it was not installed. */
function without(name: string): string {
  const hooks = join(root, `without-${name}.mjs`);
  const start = join(root, `start-${name}.mjs`);
  writeFileSync(
    hooks,
    `export async function resolve(wanted, context, next) {
      if (wanted === ${JSON.stringify(name)}) throw Object.assign(new Error('gone'), { code: 'ERR_MODULE_NOT_FOUND' });
      return next(wanted, context);
    }`,
  );
  writeFileSync(
    start,
    `import { register } from 'node:module'; register(${JSON.stringify(pathToFileURL(hooks).href)});`,
  );
  return `--import=${pathToFileURL(start).href}`;
}

const refused = (env: Record<string, string>): ReturnType<typeof groundspot> => {
  const ran = groundspot(['print', garden], root, env);
  expect(ran.code).toBe(1);
  expect(ran.err).not.toContain('    at ');
  expect(existsSync(join(garden, 'print'))).toBe(false);
  expect(existsSync(join(garden, '.groundspot/lock'))).toBe(false);
  return ran;
};

test('without a Chromium the command says what to do, and stops before any work', () => {
  const { err } = refused({ CHROMIUM_PATH: join(root, 'nowhere') });
  expect(err).toContain('[no-chromium]');
  expect(err).toContain('open it in any browser');
  expect(err).not.toContain('read ');
});

test.each(['playwright-core', 'pdf-lib'])('without the package %s it names it, before anything is drawn', (name) => {
  const { err } = refused({ CHROMIUM_PATH: process.execPath, NODE_OPTIONS: without(name) });
  expect(err).toContain(`printing takes the package ${name}`);
  expect(err).toContain('[print-package-missing]');
  expect(err).not.toContain('set ');
});

test('a program that is no browser is told from one that is', () => {
  const { err } = refused({ CHROMIUM_PATH: process.execPath });
  expect(err).toContain('[chromium-failed]');
});

test('records with errors print nothing; a paper that does not exist is not understood', () => {
  const bad = join(root, 'bad');
  mkdirSync(bad);
  writeFileSync(join(bad, 'garden.yaml'), 'name: Bad\n');
  const ran = groundspot(['print', bad], root, { CHROMIUM_PATH: process.execPath });
  expect(ran.code).toBe(1);
  expect(ran.err).toContain('stopped  nothing was printed');
  expect(groundspot(['print', garden, '--paper', 'A5'], root).code).toBe(2);
});
