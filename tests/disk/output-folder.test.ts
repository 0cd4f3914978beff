import { chmodSync, lstatSync, mkdirSync, renameSync, rmSync, statSync, symlinkSync, utimesSync } from 'node:fs';
import { join, parse, relative } from 'node:path';
import { expect, test, vi } from 'vitest';
import { disk } from '../../src/disk/changes.ts';
import { readManifest } from '../../src/disk/output/manifest.ts';
import { IGNORE_TEXT, publishFolder, recover } from '../../src/disk/output-folder.ts';
import { systemError, unmovable, watched } from './broken-disk.ts';
import { plant, refusalCode, scratch, tree } from './scratch.ts';

const site = (files: Record<string, string | Uint8Array>) => new Map(Object.entries(files));
const ONE = site({ 'index.html': 'one', 'yield/index.html': 'y', 'old/gone.html': 'g' });
const TWO = site({ 'index.html': 'two', 'yield/index.html': 'y', 'new/come.html': 'c' });

/** What a folder holds but for the manifest. */
function pages(folder: string): Record<string, string> {
  const { '.groundspot-site': _, ...rest } = tree(folder);
  return rest;
}
const published = (files: ReadonlyMap<string, unknown>) => ({
  '.gitignore': IGNORE_TEXT,
  ...Object.fromEntries(files),
});

test('writes a site with its manifest and .gitignore, making parents, and leaves nothing beside it', () => {
  const folder = scratch();
  const result = publishFolder(join(folder, 'a/site'), site({ 'b.bin': new Uint8Array([1]), 'a/ü.html': 'ü' }));
  expect(result).toEqual({
    folder: join(folder, 'a/site'),
    way: 'swapped',
    changed: ['.gitignore', 'a/ü.html', 'b.bin'],
    removed: [],
    foreign: [],
    leftover: null,
  });
  expect([...(readManifest(join(folder, 'a/site')) ?? [])].map(([path]) => path)).toEqual(result.changed);
  expect(Object.keys(tree(join(folder, 'a'))).sort()).toEqual([
    'site/.gitignore',
    'site/.groundspot-site',
    'site/a/ü.html',
    'site/b.bin',
  ]);
});

test('the same site in another order is the same folder', () => {
  const folder = scratch();
  publishFolder(join(folder, 'a'), ONE);
  publishFolder(join(folder, 'b'), new Map([...ONE].reverse()));
  expect(tree(join(folder, 'a'))).toEqual(tree(join(folder, 'b')));
});

test.each(['swapped', 'in-place'] as const)(
  '%s: replaces a site, keeps the time of unchanged files, says what changed',
  (way) => {
    const target = join(scratch(), 'site');
    const changes = way === 'in-place' ? { changes: unmovable(target, 'EBUSY') } : {};
    publishFolder(target, ONE);
    utimesSync(join(target, 'yield/index.html'), 1000, 1000);
    expect(publishFolder(target, TWO, changes)).toMatchObject({
      way,
      changed: ['index.html', 'new/come.html'],
      removed: ['old/gone.html'],
      leftover: null,
    });
    expect(pages(target)).toEqual(published(TWO));
    expect(statSync(join(target, 'yield/index.html')).mtimeMs).toBe(1_000_000);
    expect(Object.keys(tree(join(target, '..'))).every((path) => path.startsWith('site/'))).toBe(true);
  },
);

test.each(['EXDEV', 'EBUSY', 'EPERM', 'EACCES'])(
  'a folder that answers a rename with %s is replaced in place',
  (code) => {
    const target = join(scratch(), 'site');
    mkdirSync(target);
    const changes = unmovable(target, code);
    expect(publishFolder(target, ONE, { changes }).way).toBe('in-place');
    publishFolder(target, TWO, { changes });
    expect(pages(target)).toEqual(published(TWO));
  },
);

test('so is one in a parent that is closed to new folders', () => {
  const target = join(scratch(), 'site');
  mkdirSync(target);
  const closed = unmovable(target, 'EBUSY');
  const makeFolder = (path: string, mode?: number): void => {
    if (path.startsWith(join(target, '..', '.site'))) throw systemError('EACCES');
    closed.makeFolder(path, mode);
  };
  expect(publishFolder(target, ONE, { changes: { ...closed, makeFolder } }).way).toBe('in-place');
  expect(pages(target)).toEqual(published(ONE));
});

test.each(['swapped', 'in-place'] as const)(
  '%s: a file may become a folder, a folder a file, and a name change case',
  (way) => {
    const target = join(scratch(), 'site');
    const changes = way === 'in-place' ? { changes: unmovable(target, 'EBUSY') } : {};
    publishFolder(target, site({ a: 'a', 'b/c': 'c', 'Plot.html': 'P' }), changes);
    const next = site({ 'a/d': 'd', b: 'b', 'plot.html': 'p' });
    expect(publishFolder(target, next, changes).way).toBe(way);
    expect(pages(target)).toEqual(published(next));
  },
);

test.each(['swapped', 'in-place'] as const)('%s: carries over what is not ours, untouched', (way) => {
  const target = join(scratch(), 'site');
  const changes = way === 'in-place' ? { changes: unmovable(target, 'EBUSY') } : {};
  publishFolder(target, ONE);
  plant(target, { CNAME: 'x', 'yield/note.txt': 'n', 'old/mine/a': 'm', 'new/note.txt': 'n', '.git/objects/o': 'o' });
  mkdirSync(join(target, 'empty'));
  symlinkSync('../elsewhere', join(target, 'link'));
  const inode = statSync(join(target, '.git/objects/o')).ino;
  const { foreign } = publishFolder(target, TWO, changes);
  expect(foreign).toEqual(['.git', 'CNAME', 'empty', 'link', 'new/note.txt', 'old/mine', 'yield/note.txt']);
  expect(pages(target)).toEqual({
    ...published(TWO),
    CNAME: 'x',
    'yield/note.txt': 'n',
    'old/mine/a': 'm',
    'new/note.txt': 'n',
    '.git/objects/o': 'o',
    'empty/': '',
    link: '-> ../elsewhere',
  });
  expect(statSync(join(target, '.git/objects/o')).ino).toBe(inode);
});

test.each<[string, (target: string) => void, Record<string, string>]>([
  ['file', (target) => plant(target, { 'new.html': 'mine' }), { 'new.html': 'n' }],
  ['file of another case', (target) => plant(target, { 'NEW.html': 'mine' }), { 'new.html': 'n' }],
  ['file where a folder has to go', (target) => plant(target, { new: 'mine' }), { 'new/a.html': 'n' }],
  ['folder where a file has to go', (target) => plant(target, { 'new/mine': 'mine' }), { new: 'n' }],
  ['file in a folder that becomes a file', (target) => plant(target, { 'old/mine': 'mine' }), { old: 'n' }],
  ['link in place of a page of ours', (target) => linkInstead(join(target, 'index.html')), { 'index.html': 'n' }],
  ['link out of the folder', (target) => symlinkSync('..', join(target, 'new')), { 'new/a.html': 'n' }],
])('a foreign %s is not covered', (_, make, files) => {
  const target = join(scratch(), 'site');
  publishFolder(target, ONE);
  make(target);
  const before = tree(join(target, '..'));
  expect(refusalCode(() => publishFolder(target, site(files)))).toBe('in-the-way');
  expect(refusalCode(() => publishFolder(target, site(files), { changes: unmovable(target, 'EBUSY') }))).toBe(
    'in-the-way',
  );
  expect(tree(join(target, '..'))).toEqual(before);
});

function linkInstead(path: string): void {
  rmSync(path);
  symlinkSync('yield/index.html', path);
}

test('a disk that knows no second names gets copies', () => {
  const target = join(scratch(), 'site');
  publishFolder(target, ONE);
  const link = (): void => {
    throw systemError('ENOTSUP');
  };
  expect(publishFolder(target, TWO, { changes: { ...disk, link } }).way).toBe('swapped');
  expect(pages(target)).toEqual(published(TWO));
});

test('in place, a page comes after what it shows, and after an old page whose name differs by case', () => {
  const target = join(scratch(), 'site');
  publishFolder(target, site({ 'Plot.html': 'P' }));
  const steps: string[] = [];
  const noted = watched((_, step, paths) => {
    const last = paths.at(-1) ?? '';
    const isPromoted =
      step === 'rename' && !last.includes('staging') && !last.includes('.groundspot') && !last.endsWith('previous');
    if (last.startsWith(target) && (isPromoted || step === 'removeFile'))
      steps.push(`${step} ${relative(target, last)}`);
  });
  publishFolder(target, site({ 'a.html': 'a', 'plot.html': 'p', 'z.svg': 'z' }), {
    changes: unmovable(target, 'EBUSY', noted),
  });
  expect(steps.filter((step) => !step.includes('staging'))).toEqual([
    'removeFile Plot.html',
    'rename .gitignore',
    'rename z.svg',
    'rename a.html',
    'rename plot.html',
  ]);
});

test.each(['swapped', 'in-place'] as const)(
  '%s: nothing is deleted behind a link put where a folder of ours was',
  (way) => {
    const folder = scratch();
    const target = join(folder, 'site');
    publishFolder(target, site({ 'old/x/gone.html': 'g' }));
    plant(folder, { 'mine/x/gone.html': 'precious' });
    // The folder of ours is moved away and a link of the same name stands there.
    mkdirSync(join(folder, 'aside'));
    publishFolder(target, site({ 'old/x/gone.html': 'g', 'k/k.html': 'k' }));
    const moved = join(folder, 'aside/old');
    renameSync(join(target, 'old'), moved);
    symlinkSync('../mine', join(target, 'old'));
    publishFolder(target, TWO, way === 'in-place' ? { changes: unmovable(target, 'EBUSY') } : {});
    expect(tree(folder)).toMatchObject({
      'mine/x/gone.html': 'precious',
      'site/old': '-> ../mine',
      'aside/old/x/gone.html': 'g',
    });
  },
);

test('a folder with anything in it and no manifest is not ours, and is not touched', () => {
  const folder = scratch();
  plant(folder, { 'site/index.html': 'mine', '.site.previous/a': 'mine' });
  mkdirSync(join(folder, 'dots/.git'), { recursive: true });
  plant(folder, { 'ignored/.gitignore/a': '' });
  const before = tree(folder);
  for (const name of ['site', 'dots', 'ignored']) {
    expect(refusalCode(() => publishFolder(join(folder, name), ONE))).toBe('not-ours');
  }
  expect(tree(folder)).toEqual(before);
});

test("a folder with only a .gitignore counts as empty, and its .gitignore is its owner's", () => {
  const target = join(scratch(), 'site');
  plant(target, { '.gitignore': '# mine\n' });
  publishFolder(target, ONE);
  expect(pages(target)).toEqual({ ...published(ONE), '.gitignore': '# mine\n' });
  publishFolder(target, site({ '.gitignore': 'given' }));
  expect(pages(target)).toEqual({ '.gitignore': 'given' });
});

test('a name that leads out of the folder is refused before anything is made', () => {
  const folder = scratch();
  for (const path of ['../out.html', '/out.html', 'a/../../out.html', 'a\\..\\out.html']) {
    expect(refusalCode(() => publishFolder(join(folder, 'site'), site({ [path]: 'x' })))).toBe('bad-name');
  }
  expect(tree(folder)).toEqual({});
});

test('a disk, the home folder, the working folder, a garden, and what holds them are protected', () => {
  const folder = scratch();
  for (const name of ['home/me', 'work/here', 'gardens/mine', 'other'])
    mkdirSync(join(folder, name), { recursive: true });
  vi.stubEnv('HOME', join(folder, 'home/me'));
  vi.stubEnv('USERPROFILE', join(folder, 'home/me'));
  const cwd = vi.spyOn(process, 'cwd').mockReturnValue(join(folder, 'work/here'));
  const code = (path: string) => refusalCode(() => publishFolder(path, ONE, { keep: [join(folder, 'gardens/mine')] }));
  const protectedOnes = ['home', 'home/me', 'work', 'work/here', 'gardens', 'gardens/mine'].map((name) =>
    join(folder, name),
  );
  const codes = [parse(folder).root, '', ...protectedOnes].map(code);
  const allowed = code(join(folder, 'gardens/mine/site'));
  cwd.mockRestore();
  vi.unstubAllEnvs();
  expect(refusalCode(() => recover(parse(folder).root))).toBe('protected-folder');
  expect(codes).toEqual(codes.map(() => 'protected-folder'));
  expect(allowed).toBeNull();
});

test('a target that is a file, or lies behind one, is refused', () => {
  const folder = scratch();
  plant(folder, { file: 'mine' });
  expect(refusalCode(() => publishFolder(join(folder, 'file'), ONE))).toBe('not-a-folder');
  expect(refusalCode(() => publishFolder(join(folder, 'file/site'), ONE))).toBe('not-a-folder');
  expect(refusalCode(() => publishFolder(join(folder, 'a\0b'), ONE))).toBe('bad-name');
  expect(tree(folder)).toEqual({ file: 'mine' });
});

test('a target that is a link stays one, also when its end is not there yet', () => {
  const folder = scratch();
  mkdirSync(join(folder, 'far'));
  symlinkSync('far/www', join(folder, 'site'));
  for (const files of [ONE, TWO]) {
    expect(publishFolder(join(folder, 'site'), files).folder).toBe(join(folder, 'far/www'));
    expect(lstatSync(join(folder, 'site')).isSymbolicLink()).toBe(true);
    expect(pages(join(folder, 'far/www'))).toEqual(published(files));
  }
  symlinkSync('round', join(folder, 'round'));
  expect(refusalCode(() => publishFolder(join(folder, 'round'), ONE))).toBe('loop');
});

test('the folder keeps its mode', () => {
  const target = join(scratch(), 'site');
  publishFolder(target, ONE);
  chmodSync(target, 0o750);
  publishFolder(target, TWO);
  expect(statSync(target).mode & 0o777).toBe(0o750);
});

test('a damaged manifest is refused and nothing is deleted by it', () => {
  const folder = scratch();
  publishFolder(join(folder, 'site'), ONE);
  plant(folder, { precious: 'p', 'site/.groundspot-site': `# groundspot site 1\n${'0'.repeat(64)}  ../precious\n` });
  const before = tree(folder);
  expect(refusalCode(() => publishFolder(join(folder, 'site'), TWO))).toBe('manifest-damaged');
  expect(tree(folder)).toEqual(before);
});

test('folders beside the target that only look like ours stay', () => {
  const folder = scratch();
  publishFolder(join(folder, 'site'), ONE);
  plant(folder, { '.site.staging-1x/.groundspot-site': '', '.site.staging-999999999/mine': '' });
  const before = tree(folder);
  expect(recover(join(folder, 'site'))).toBe('nothing');
  expect(tree(folder)).toEqual(before);
  plant(folder, { '.site.previous/mine': 'm' });
  expect(refusalCode(() => publishFolder(join(folder, 'site'), TWO))).toBe('previous-left');
  expect(pages(join(folder, 'site'))).toEqual(published(ONE));
});
