import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from './command.ts';

const MINUTES = 60_000;

describe('packed and installed elsewhere', () => {
  const root = mkdtempSync(join(tmpdir(), 'groundspot-package-'));
  const project = join(root, 'project');
  let packed: string[] = [];

  beforeAll(() => {
    // The test run has compiled already; packing must not compile under the other tests' feet.
    const pack = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', root], resolve('.'));
    packed = JSON.parse(pack.out)[0].files.map(({ path }: { path: string }) => path);
    const tarball = readdirSync(root).find((name) => name.endsWith('.tgz')) ?? '';
    mkdirSync(project);
    writeFileSync(join(project, 'package.json'), '{"name":"elsewhere","private":true}');
    writeFileSync(join(project, '.gitignore'), 'node_modules\n');
    const installed = run(
      'npm',
      ['install', '--prefer-offline', '--no-audit', '--no-fund', join(root, tarball)],
      project,
    );
    expect(installed.err).not.toContain('npm error');
  }, 4 * MINUTES);

  afterAll(() => rmSync(root, { recursive: true, force: true }));

  const bin = join(project, 'node_modules/.bin/groundspot');

  test('the package holds what runs and nothing else', () => {
    expect(packed).toContain('.build/src/cli/main.js');
    expect(packed).toContain('content/yield/index.njk');
    expect(packed).toContain('data/starter/garden.yaml');
    const odd = packed.filter((path) => /^(tests|data\/garden|site|\.ci)\//.test(path) || /\.tsx?$/.test(path));
    expect(odd).toEqual([]);
  });

  // A home of `/root` is not named by a file called `root-zone`.
  const names = (text: string, place: string): boolean =>
    text
      .split(place)
      .slice(1)
      .some((rest) => !/^[\w-]/.test(rest));

  test('no file of it names the machine it was packed on', () => {
    const installed = join(project, 'node_modules/groundspot');
    const named = packed.filter((path) => {
      const text = readFileSync(join(installed, path), 'latin1');
      return [resolve('.'), homedir()].some((place) => place.length > 1 && names(text, place));
    });
    expect(packed.length).toBeGreaterThan(100);
    expect(named).toEqual([]);
  });

  test(
    'it builds from the root of the disk',
    () => {
      const garden = join(root, 'one');
      expect(run(bin, ['new', garden], '/').code).toBe(0);
      expect(run(bin, ['build', garden], '/').err).toContain('written');
    },
    MINUTES,
  );

  test(
    'it builds from a folder whose .gitignore names node_modules, and through npx',
    () => {
      expect(run('npx', ['--no-install', 'groundspot', 'new', 'two'], project).code).toBe(0);
      const built = run('npx', ['--no-install', 'groundspot', 'build', 'two'], project);
      expect(built.err).toContain('written');
      expect(readdirSync(join(project, 'two/site')).length).toBeGreaterThan(5);
    },
    MINUTES,
  );
});
