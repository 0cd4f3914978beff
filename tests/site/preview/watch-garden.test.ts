import { cpSync, mkdirSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, onTestFinished, test, vi } from 'vitest';
import { watchGarden } from '../../../src/site/preview/watch-garden.ts';
import { plant, scratch } from '../../disk/scratch.ts';

/** Long enough for the system to have told of anything. */
const WHILE_MS = 150;

async function watched(files: Record<string, string>): Promise<{ root: string; seen: string[] }> {
  const root = join(scratch(), 'a [garden]');
  mkdirSync(root);
  plant(root, files);
  const seen: string[] = [];
  const failed = (error: Error): never => {
    throw error;
  };
  const { close } = await watchGarden(root, { changed: (path) => seen.push(path), failed });
  onTestFinished(close);
  return { root, seen };
}

const sees = (seen: string[], path: string): Promise<void> =>
  vi.waitFor(() => expect(seen).toContain(path), { timeout: 3000, interval: 10 });

test('sees a record saved in place, saved by renaming, added and taken away', async () => {
  const { root, seen } = await watched({
    'garden.yaml': 'a',
    'seasons/2025/fruits.yaml': 'a',
    'weather/porch.csv': 'a',
  });
  writeFileSync(join(root, 'garden.yaml'), 'b');
  await sees(seen, 'garden.yaml');
  for (const text of ['b', 'c']) {
    seen.length = 0;
    writeFileSync(join(root, 'seasons/2025/.fruits.tmp'), text);
    renameSync(join(root, 'seasons/2025/.fruits.tmp'), join(root, 'seasons/2025/fruits.yaml'));
    await sees(seen, 'seasons/2025/fruits.yaml');
  }
  rmSync(join(root, 'weather/porch.csv'));
  await sees(seen, 'weather/porch.csv');
  writeFileSync(join(root, 'varieties.yaml'), 'a');
  await sees(seen, 'varieties.yaml');
});

test('sees the second of two saves that are closer together than the watcher’s own events may be', async () => {
  const { root, seen } = await watched({ 'garden.yaml': 'a' });
  for (let save = 1; save <= 5; save += 1) {
    seen.length = 0;
    writeFileSync(join(root, 'garden.yaml'), String(save));
    await vi.waitFor(() => expect(seen).toContain('garden.yaml'), { timeout: 1000, interval: 1 });
    await sleep(10);
  }
});

test('sees into a folder that comes later, and its going', async () => {
  const { root, seen } = await watched({ 'garden.yaml': 'a', 'seasons/2025/season.yaml': 'a' });
  cpSync(join(root, 'seasons/2025'), join(root, 'seasons/2026'), { recursive: true });
  await sees(seen, 'seasons/2026/season.yaml');
  seen.length = 0;
  writeFileSync(join(root, 'seasons/2026/season.yaml'), 'b');
  await sees(seen, 'seasons/2026/season.yaml');
  seen.length = 0;
  rmSync(join(root, 'seasons/2026'), { recursive: true });
  await sees(seen, 'seasons/2026/season.yaml');
});

test('passes over output, working folders, hidden files, what editors leave and what no record is', async () => {
  const { root, seen } = await watched({ 'garden.yaml': 'a', 'site/data/a.csv': 'a', '.groundspot/cache.yaml': 'a' });
  plant(root, {
    'site/data/a.csv': 'b',
    'site/data/b.csv': 'b',
    'print/a.csv': 'b',
    '.groundspot/cache.yaml': 'b',
    '.git/a.yaml': 'b',
    'node_modules/a/a.yaml': 'b',
    '.garden.yaml.swp': 'b',
    '.#garden.yaml': 'b',
    'garden.yaml~': 'b',
    '#garden.yaml#': 'b',
    '4913': 'b',
    'notes.txt': 'b',
  });
  await sleep(WHILE_MS);
  writeFileSync(join(root, 'garden.yaml'), 'b');
  await sees(seen, 'garden.yaml');
  expect(new Set(seen)).toEqual(new Set(['garden.yaml']));
});

test('follows no link out of the garden', async () => {
  const outside = scratch();
  plant(outside, { 'a.yaml': 'a' });
  const { root, seen } = await watched({ 'garden.yaml': 'a' });
  symlinkSync(outside, join(root, 'elsewhere'));
  await sleep(WHILE_MS);
  writeFileSync(join(outside, 'a.yaml'), 'b');
  await sleep(WHILE_MS);
  expect(seen.filter((path) => path.includes('a.yaml'))).toEqual([]);
});
