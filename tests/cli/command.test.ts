import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { groundspot, hashOf } from './command.ts';

const root = realpathSync(mkdtempSync(join(tmpdir(), 'groundspot-command-')));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** A new garden in a folder of its own. */
function begun(name: string): string {
  const folder = join(root, name);
  expect(groundspot(['new', folder], root).code).toBe(0);
  return folder;
}

function edit(folder: string, path: string, from: string, to: string): void {
  const text = readFileSync(join(folder, path), 'utf8');
  if (!text.includes(from)) throw new Error(`invalid edit: "${from}" is not in ${path}`);
  writeFileSync(join(folder, path), text.replace(from, to));
}

describe('new', () => {
  test('begins a garden that checks clean and builds at once', () => {
    const folder = begun('beside the café');
    expect(readFileSync(join(folder, '.gitignore'), 'utf8')).toContain('/site/');
    expect(groundspot(['check'], folder)).toMatchObject({ code: 0, out: '0 errors, 0 warnings in 15 files\n' });
    const built = groundspot(['build'], folder);
    expect(built.code).toBe(0);
    expect(
      built.err
        .trim()
        .split('\n')
        .map((line) => line.split(' ')[0]),
    ).toEqual(['read', 'checked', 'computed', 'set', 'written']);
    expect(existsSync(join(folder, 'site/index.html'))).toBe(true);
  });

  test('leaves a folder that holds something as it is', () => {
    const folder = join(root, 'full');
    mkdirSync(folder);
    writeFileSync(join(folder, 'mine.txt'), 'mine');
    const before = hashOf(folder);
    expect(groundspot(['new', folder], root).code).toBe(1);
    expect(hashOf(folder)).toBe(before);
    expect(existsSync(join(folder, 'garden.yaml'))).toBe(false);
  });
});

describe('check', () => {
  test('says where and what to type, and exits 1', () => {
    const folder = begun('typed-badly');
    edit(folder, 'seasons/2025/fruits.yaml', 'mass_kg: 3.35', 'mass_kg: 3,35');
    const { code, out } = groundspot(['check', folder], root);
    expect(code).toBe(1);
    expect(out).toContain('typed-badly/seasons/2025/fruits.yaml:14:14: "3,35" has a decimal comma [decimal-comma]\n');
    expect(out).toContain('^^^^');
    expect(out).toContain('  write 3.35\n');
    expect(out).toContain('1 error, 0 warnings in 15 files\n');
  });

  test('--json gives the same to other programs; a warning alone exits 0', () => {
    const folder = begun('warned');
    edit(folder, 'seasons/2025/fruits.yaml', 'mass_kg: 3.35', 'mass_kg: 335');
    const { code, out } = groundspot(['check', '--json', folder], root);
    const said = JSON.parse(out);
    expect(code).toBe(0);
    expect(said).toMatchObject({
      errors: 0,
      warnings: 1,
      problems: [{ severity: 'warning', code: 'unlikely', record: 'M1-F1', field: 'pick.mass_kg' }],
    });
    expect(Object.keys(said.problems[0])).toEqual([
      'severity',
      'file',
      'line',
      'column',
      'record',
      'field',
      'code',
      'message',
      'hint',
    ]);
  });

  test('a record cannot speak to the terminal', () => {
    const folder = begun('loud');
    edit(folder, 'seasons/2025/fruits.yaml', 'reason: damage', 'reason: "da\\e[31mmage"');
    expect(groundspot(['check', folder], root).out).not.toMatch(/\u001b/);
  });

  test('colours its places for a person, and not where NO_COLOR forbids it', () => {
    const folder = begun('coloured');
    edit(folder, 'seasons/2025/fruits.yaml', 'mass_kg: 3.35', 'mass_kg: 3,35');
    const said = (env: Record<string, string>): boolean =>
      groundspot(['check', folder], root, env).out.includes('\u001b[');
    expect(said({ NO_COLOR: '', FORCE_COLOR: '1' })).toBe(true);
    expect(said({ NO_COLOR: '1', FORCE_COLOR: '1' })).toBe(false);
  });

  test('names files as seen from the folder it is run in', () => {
    const folder = begun('far away');
    edit(folder, 'seasons/2025/fruits.yaml', 'mass_kg: 3.35', 'mass_kg: 3,35');
    const place = 'seasons/2025/fruits.yaml:14:14:';
    expect(groundspot(['check'], folder).out.split('\n')[0]).toMatch(new RegExp(`^${place}`));
    expect(groundspot(['check', folder], '/').out.split('\n')[0]).toContain(`${folder.slice(1)}/${place}`);
  });

  test('an empty folder is no garden', () => {
    const folder = join(root, 'empty');
    mkdirSync(folder);
    expect(groundspot(['check', folder], root)).toMatchObject({ code: 1 });
    expect(groundspot(['check', join(root, 'nowhere')], root).code).toBe(1);
  });
});

describe('build', () => {
  test('a record with an error leaves the last handbook byte for byte', () => {
    const folder = begun('failing');
    groundspot(['build', folder], root);
    const before = hashOf(join(folder, 'site'));
    edit(folder, 'garden.yaml', 'units: metric', 'units: cubits');
    const failed = groundspot(['build', folder], root);
    expect(failed.code).toBe(1);
    expect(failed.err).toContain('[unknown-word]');
    expect(failed.err).not.toContain('written  ');
    expect(hashOf(join(folder, 'site'))).toBe(before);
  });

  test('--today makes the book of that day; --quiet says nothing', () => {
    const folder = begun('replayed');
    expect(groundspot(['build', folder, '--quiet'], root)).toMatchObject({ code: 0, err: '', out: '' });
    const today = groundspot(['build', folder, '--today', '2025-08-20', '--out', join(root, 'then')], root);
    expect(today.err).toContain('as of 2025-08-20, ');
    expect(today.err).not.toContain('the last record');
    const [now, then] = [join(folder, 'site'), join(root, 'then')].map((site) =>
      JSON.parse(readFileSync(join(site, 'data/figures.json'), 'utf8')),
    );
    expect(then.figures['yield.2025.spot.M1.fruits'].value).toBe(1);
    expect(now.figures['yield.2025.spot.M1.fruits'].value).toBe(2);
  });

  test('--out takes a folder of ours or an empty one, and no other', () => {
    const folder = begun('elsewhere');
    const out = join(root, 'out');
    mkdirSync(out);
    writeFileSync(join(out, '.gitignore'), '*\n');
    expect(groundspot(['build', folder, '--out', out], root).code).toBe(0);
    expect(groundspot(['build', folder, '--out', out], root).code).toBe(0);
    writeFileSync(join(out, '.gitignore'), '# mine\n');
    expect(groundspot(['build', folder, '--out', out], root).code).toBe(0);
    expect(readFileSync(join(out, '.gitignore'), 'utf8')).toBe('# mine\n');
    const foreign = join(root, 'foreign');
    mkdirSync(foreign);
    writeFileSync(join(foreign, 'letter.txt'), 'dear');
    const refused = groundspot(['build', folder, '--out', foreign], root);
    expect(refused).toMatchObject({ code: 1 });
    expect(refused.err).toContain('[not-ours]');
    expect(readFileSync(join(foreign, 'letter.txt'), 'utf8')).toBe('dear');
  });

  test('wrong use exits 2 with a hint', () => {
    for (const args of [
      ['biuld'],
      ['build', '--todya', '2025-08-20'],
      ['build', '--today', 'tomorrow'],
      ['check', 'a', 'b'],
    ]) {
      const { code, err } = groundspot(args, root);
      expect(code, args.join(' ')).toBe(2);
      expect(err, args.join(' ')).toMatch(/See groundspot .*--help/);
    }
    expect(groundspot(['--version'], root).code).toBe(0);
  });

  test('the same bytes in three time zones, from any folder', () => {
    const garden = join(root, 'zones');
    cpSync(resolve('tests/books/three-spots/garden'), garden, { recursive: true });
    const hashes = ['Pacific/Auckland', 'America/Los_Angeles', 'UTC'].map((zone, index) => {
      const out = join(root, `zone-${index}`);
      // Nothing is to be taken over from another zone.
      rmSync(join(garden, '.groundspot'), { recursive: true, force: true });
      expect(groundspot(['build', garden, '--out', out, '--quiet'], index === 0 ? '/' : root, { TZ: zone }).code).toBe(
        0,
      );
      return hashOf(out);
    });
    expect(new Set(hashes).size).toBe(1);
  });
});
