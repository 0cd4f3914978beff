import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { publishFolder } from '../../src/disk/output-folder.ts';
import { type ReadFolderOptions, readFolder } from '../../src/disk/read-folder.ts';
import { asNobody, plant, refusalCode, scratch } from './scratch.ts';

const OPTIONS: ReadFolderOptions = { extensions: ['.yaml', '.csv'], maxBytes: 100, maxFiles: 20 };

const read = (root: string, options: Partial<ReadFolderOptions> = {}) => {
  const { files, refused } = readFolder(root, { ...OPTIONS, ...options });
  return {
    files: files.map(({ path, bytes }) => [path, Buffer.from(bytes).toString()]),
    refused: refused.map(({ path, code }) => [path, code]),
  };
};
const paths = (root: string, options: Partial<ReadFolderOptions> = {}) =>
  read(root, options).files.map(([path]) => path);

test('finds the wanted files, by code unit, whatever order they were made in', () => {
  // Under a locale's order "a.yaml" stands before "B.yaml", and "ä" before "z"; by code unit it is the other way round.
  const names = ['z.yaml', 'a.yaml', 'B.yaml', 'ä.yaml', 'a/b.CSV', 'a-b.yaml', 'a/b/c.yaml'];
  const expected = ['B.yaml', 'a-b.yaml', 'a.yaml', 'a/b.CSV', 'a/b/c.yaml', 'z.yaml', 'ä.yaml'];
  for (const order of [names, names.toReversed(), names.toSorted()]) {
    const root = scratch();
    for (const name of order) plant(root, { [name]: name });
    expect(read(root)).toEqual({ files: expected.map((name) => [name, name]), refused: [] });
  }
});

test('passes over dot names, node_modules, other extensions, skipped paths and a published site', () => {
  const root = scratch();
  plant(root, {
    'garden.yaml': '',
    'notes.txt': '',
    '.git/a.yaml': '',
    '._garden.yaml': '',
    'node_modules/a/b.yaml': '',
    'old/a.yaml': '',
    'old.yaml': '',
    'seasons/old/a.yaml': '',
  });
  publishFolder(join(root, 'site'), new Map([['table.csv', 'x']]));
  expect(paths(root, { skip: ['old'] })).toEqual(['garden.yaml', 'old.yaml', 'seasons/old/a.yaml']);
});

test('refuses a file that is too big and reads the others', () => {
  const root = scratch();
  plant(root, { 'a.csv': 'x'.repeat(101), 'b.csv': 'x'.repeat(100) });
  expect(read(root)).toEqual({ files: [['b.csv', 'x'.repeat(100)]], refused: [['a.csv', 'too-big']] });
});

test('more files than allowed is one refusal, not a part of the garden', () => {
  const root = scratch();
  plant(root, { 'a.yaml': '', 'b.yaml': '', 'c.yaml': '' });
  expect(refusalCode(() => readFolder(root, { ...OPTIONS, maxFiles: 2 }))).toBe('too-many-files');
  expect(paths(root, { maxFiles: 3 })).toHaveLength(3);
});

test('follows a link only within the root, and reads nothing twice', () => {
  const outer = scratch();
  const root = join(outer, 'garden');
  plant(outer, { 'secret.yaml': 'secret', 'far/a.yaml': 'far', 'garden/z.yaml': 'z', 'garden/.store/s.csv': 's' });
  symlinkSync('z.yaml', join(root, 'a.yaml'));
  symlinkSync('.store', join(root, 'weather'));
  symlinkSync('.store/s.csv', join(root, 'station.csv'));
  symlinkSync('../secret.yaml', join(root, 'b.yaml'));
  symlinkSync(join(outer, 'far'), join(root, 'far'));
  symlinkSync('nowhere.yaml', join(root, 'c.yaml'));
  expect(read(root)).toEqual({
    files: [
      ['station.csv', 's'],
      ['z.yaml', 'z'],
    ],
    refused: [
      ['a.yaml', 'read-twice'],
      ['b.yaml', 'outside'],
      ['c.yaml', 'dangling-link'],
      ['far', 'outside'],
      ['weather/s.csv', 'read-twice'],
    ],
  });
});

test('a root that is itself a link is read', () => {
  const outer = scratch();
  plant(outer, { 'garden/a.yaml': 'a' });
  symlinkSync('garden', join(outer, 'link'));
  expect(paths(join(outer, 'link'))).toEqual(['a.yaml']);
});

test('refuses loops of every kind', () => {
  const root = scratch();
  plant(root, { 'a/b/x.yaml': 'x', 'c/y.yaml': 'y' });
  symlinkSync('..', join(root, 'a/up'));
  symlinkSync('.', join(root, 'a/here'));
  symlinkSync('self.yaml', join(root, 'self.yaml'));
  symlinkSync('../c', join(root, 'a/c'));
  symlinkSync('../a', join(root, 'c/a'));
  expect(read(root)).toEqual({
    files: [
      ['a/b/x.yaml', 'x'],
      ['c/y.yaml', 'y'],
    ],
    refused: [
      ['a/c', 'read-twice'],
      ['a/here', 'loop'],
      ['a/up', 'loop'],
      ['c/a', 'read-twice'],
      ['self.yaml', 'loop'],
    ],
  });
});

test.skipIf(process.platform === 'win32')('a pipe is refused and not waited for', () => {
  const root = scratch();
  expect(spawnSync('mkfifo', [join(root, 'a.csv')]).status).toBe(0);
  mkdirSync(join(root, 'b.csv'));
  expect(read(root)).toEqual({ files: [], refused: [['a.csv', 'not-a-file']] });
});

test.skipIf(process.platform === 'win32')('folders and files that are closed to us are listed', () => {
  const root = scratch();
  plant(root, { 'a.yaml': 'a', 'b.yaml': 'b', 'list/c.yaml': 'c', 'shut/d.yaml': 'd' });
  chmodSync(root, 0o755);
  chmodSync(join(root, 'b.yaml'), 0);
  chmodSync(join(root, 'list'), 0o444);
  chmodSync(join(root, 'shut'), 0);
  const found = asNobody(() => read(root));
  chmodSync(join(root, 'list'), 0o755);
  chmodSync(join(root, 'shut'), 0o755);
  const refused = ['b.yaml', 'list', 'shut'].map((path) => [path, 'unreadable']);
  expect(found).toEqual({ files: [['a.yaml', 'a']], refused });
});

test('a root that is missing, a file or a printed site is refused', () => {
  const root = scratch();
  plant(root, { 'a.yaml': '' });
  publishFolder(join(root, 'site'), new Map());
  expect(refusalCode(() => readFolder(join(root, 'none'), OPTIONS))).toBe('not-found');
  expect(refusalCode(() => readFolder(join(root, 'a.yaml'), OPTIONS))).toBe('not-a-folder');
  expect(refusalCode(() => readFolder(join(root, 'site'), OPTIONS))).toBe('output-folder');
});
