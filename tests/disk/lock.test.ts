import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { withLock } from '../../src/disk/lock.ts';
import { plant, scratch, tree } from './scratch.ts';

const deadPid = (): number => spawnSync(process.execPath, ['--version']).pid;
const lockText = (pid: number, host = hostname(), started_ms = 1): string => JSON.stringify({ pid, host, started_ms });
const done = async (): Promise<string> => 'done';

test('holds the lock while the work runs, then gives it back', async () => {
  const folder = join(scratch(), 'garden/.groundspot');
  const seen = await withLock(folder, async () => JSON.parse(readFileSync(join(folder, 'lock'), 'utf8')));
  expect(seen).toMatchObject({ pid: process.pid, host: hostname() });
  expect(tree(folder)).toEqual({});
});

test('gives it back when the work fails, and passes the failure on', async () => {
  const folder = scratch();
  const failure = new Error('no');
  await expect(withLock(folder, () => Promise.reject(failure))).rejects.toBe(failure);
  await expect(
    withLock(folder, () => {
      throw failure;
    }),
  ).rejects.toBe(failure);
  expect(existsSync(join(folder, 'lock'))).toBe(false);
});

test('a second holder is refused by name and does not disturb the first', async () => {
  const folder = scratch();
  await withLock(folder, async () => {
    const second = withLock(folder, done);
    await expect(second).rejects.toMatchObject({ code: 'locked', message: expect.stringContaining(`${process.pid}`) });
    expect(existsSync(join(folder, 'lock'))).toBe(true);
  });
  expect(await withLock(folder, done)).toBe('done');
});

test('of many at once, one gets in', async () => {
  const folder = scratch();
  let inside = 0;
  const work = async (): Promise<number> => {
    inside += 1;
    await new Promise((resolve) => setTimeout(resolve, 30));
    return inside;
  };
  const all = await Promise.allSettled(Array.from({ length: 8 }, () => withLock(folder, work)));
  expect(all.filter((each) => each.status === 'fulfilled')).toEqual([{ status: 'fulfilled', value: 1 }]);
});

test('a live process keeps its lock', async () => {
  const folder = scratch();
  plant(folder, { lock: lockText(process.ppid) });
  await expect(withLock(folder, done)).rejects.toMatchObject({ code: 'locked' });
  expect(tree(folder)).toEqual({ lock: lockText(process.ppid) });
});

test('so does one of another machine, which cannot be asked', async () => {
  const folder = scratch();
  plant(folder, { lock: lockText(deadPid(), 'shed') });
  await expect(withLock(folder, done)).rejects.toMatchObject({
    code: 'locked',
    message: expect.stringContaining('shed'),
  });
});

test.each([
  ['a dead process', (): string => lockText(deadPid())],
  ['an earlier process of our number', (): string => lockText(process.pid)],
  ['a power cut while it was written', (): string => ''],
])('the lock of %s is taken over', async (_, text) => {
  const folder = scratch();
  plant(folder, { lock: text() });
  expect(await withLock(folder, done)).toBe('done');
  expect(tree(folder)).toEqual({});
});

test('a lock that another process took over meanwhile is not removed', async () => {
  const folder = scratch();
  await withLock(folder, async () => plant(folder, { lock: lockText(process.ppid) }));
  expect(tree(folder)).toEqual({ lock: lockText(process.ppid) });
});

test('a file where the folder should be is a refusal', async () => {
  const folder = scratch();
  plant(folder, { '.groundspot': '' });
  await expect(withLock(join(folder, '.groundspot'), done)).rejects.toMatchObject({ code: 'in-the-way' });
});
