import { chmodSync, lstatSync, mkdirSync, readdirSync, statSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { copyTree } from '../../src/disk/copy-tree.ts';
import { asNobody, plant, refusalCode, scratch, tree } from './scratch.ts';

const STARTER = { 'garden.yaml': 'name: x\n', 'seasons/2031/season.yaml': 'a', 'seasons/2031/notes/n.yaml': 'b' };

test.each([
  ['new', false],
  ['empty', true],
])('copies into a %s folder and lists what it copied, sorted', (_, exists) => {
  const folder = scratch();
  plant(join(folder, 'starter'), STARTER);
  if (exists) mkdirSync(join(folder, 'mine'));
  expect(copyTree(join(folder, 'starter'), join(folder, 'mine'))).toEqual(Object.keys(STARTER).sort());
  expect(tree(join(folder, 'mine'))).toEqual(tree(join(folder, 'starter')));
});

test('copies can be edited even when the package cannot', () => {
  const folder = scratch();
  plant(join(folder, 'starter'), STARTER);
  chmodSync(join(folder, 'starter/garden.yaml'), 0o444);
  copyTree(join(folder, 'starter'), join(folder, 'mine'));
  expect(statSync(join(folder, 'mine/garden.yaml')).mode & 0o200).toBe(0o200);
});

test('a folder that holds anything, even a dot-file, is left alone', () => {
  const folder = scratch();
  plant(folder, { 'starter/a.yaml': 'a', 'mine/.keep': '', file: '' });
  expect(refusalCode(() => copyTree(join(folder, 'starter'), join(folder, 'mine')))).toBe('not-empty');
  expect(refusalCode(() => copyTree(join(folder, 'starter'), join(folder, 'file')))).toBe('not-a-folder');
  expect(refusalCode(() => copyTree(join(folder, 'starter'), join(folder, 'starter/in')))).toBe('not-empty');
  expect(refusalCode(() => copyTree(join(folder, 'none'), join(folder, 'new')))).toBe('not-found');
  expect(tree(folder)).toEqual({ 'starter/a.yaml': 'a', 'mine/.keep': '', file: '' });
});

test('a link in the source is refused before anything is copied', () => {
  const folder = scratch();
  plant(folder, { 'starter/a.yaml': 'a', secret: 's' });
  symlinkSync('../secret', join(folder, 'starter/z.yaml'));
  expect(refusalCode(() => copyTree(join(folder, 'starter'), join(folder, 'mine')))).toBe('not-a-file');
  expect(lstatSync(join(folder, 'mine'), { throwIfNoEntry: false })).toBeUndefined();
});

test.skipIf(process.platform === 'win32').each([false, true])(
  'a copy that fails half-way leaves nothing behind (target there before: %s)',
  (exists) => {
    const folder = scratch();
    chmodSync(folder, 0o777);
    plant(folder, { 'starter/a/a.yaml': 'a', 'starter/b.yaml': 'b', 'starter/c.yaml': 'c' });
    chmodSync(join(folder, 'starter/c.yaml'), 0);
    if (exists) mkdirSync(join(folder, 'mine'));
    if (exists) chmodSync(join(folder, 'mine'), 0o777);
    expect(asNobody(() => refusalCode(() => copyTree(join(folder, 'starter'), join(folder, 'mine'))))).toBe(
      'not-permitted',
    );
    expect(readdirSync(folder).sort()).toEqual(exists ? ['mine', 'starter'] : ['starter']);
    if (exists) expect(readdirSync(join(folder, 'mine'))).toEqual([]);
  },
);
