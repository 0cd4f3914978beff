import { spawnSync } from 'node:child_process';
import { appendFileSync, chmodSync, existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { scratch } from '../disk/scratch.ts';
import { groundspot, hashOf } from './command.ts';

function begun(): string {
  const garden = join(scratch(), 'garden');
  expect(groundspot(['new', garden], scratch()).code).toBe(0);
  return garden;
}

/** The first words of what a build says. */
function built(garden: string, ...more: string[]): string {
  const { code, err } = groundspot(['build', garden, ...more], garden);
  expect(code, err).toBe(0);
  return (err.match(/^[a-z]+(?= )/gm) ?? []).join(' ');
}

const FULL = 'read checked computed set written';
const STANDS = 'read checked stands';

test('a handbook made from these very records stands, until one of them or a page of it changes', () => {
  const garden = begun();
  const site = join(garden, 'site');
  expect(built(garden)).toBe(FULL);
  const first = hashOf(site);
  const time = statSync(join(site, 'index.html')).mtimeMs;
  expect(built(garden)).toBe(STANDS);
  expect(statSync(join(site, 'index.html')).mtimeMs).toBe(time);

  appendFileSync(join(site, 'index.html'), 'x');
  expect(built(garden)).toBe(FULL);
  expect(hashOf(site)).toBe(first);
  rmSync(join(site, 'colophon/index.html'));
  expect(built(garden)).toBe(FULL);
  expect(hashOf(site)).toBe(first);

  expect(built(garden, '--today', '2025-08-01')).toBe(FULL);
  expect(hashOf(site)).not.toBe(first);
  expect(built(garden)).toBe(FULL);
  const path = join(garden, 'seasons/2025/fruits.yaml');
  writeFileSync(path, readFileSync(path, 'utf8').replace('mass_kg: 3.35', 'mass_kg: 3.45'));
  expect(built(garden)).toBe(FULL);
  expect(hashOf(site)).not.toBe(first);
});

test('what a standing handbook warns of is said again', () => {
  const garden = begun();
  writeFileSync(join(garden, 'diary.yaml'), 'a: b\n');
  const first = groundspot(['build', garden], garden).err;
  const second = groundspot(['build', garden], garden).err;
  expect(second).toContain('[unread-file]');
  expect(second.split('\nstands ')[0]).toBe(first.split('\ncomputed ')[0]);
});

test('a damaged or missing store changes no byte of the site', () => {
  const garden = begun();
  const site = join(garden, 'site');
  const store = join(garden, '.groundspot', 'kept');
  built(garden);
  const first = hashOf(site);
  for (const name of ['builds', 'charts', 'fits', 'records']) {
    expect(existsSync(join(store, name)), name).toBe(true);
    writeFileSync(join(store, name), readFileSync(join(store, name), 'latin1').replace(/[0-9](?=[^\n]{0,9}\n)/g, '#'));
  }
  expect(built(garden)).toBe(FULL);
  expect(hashOf(site)).toBe(first);
  rmSync(store, { recursive: true });
  writeFileSync(store, 'a file where the folder was');
  expect(built(garden)).toBe(FULL);
  expect(hashOf(site)).toBe(first);
});

test('a garden that cannot be written is built somewhere else, and stays as it is', () => {
  const garden = begun();
  const out = scratch();
  chmodSync(out, 0o777);
  chmodSync(join(out), 0o777);
  for (const part of [join(garden, '..'), garden]) chmodSync(part, 0o555);
  const before = hashOf(garden);
  // Root may write everywhere, so it lets nobody do this.
  const who = process.geteuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
  const args = [resolve('.build/src/cli/main.js'), 'build', garden, '--out', join(out, 'site')];
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: out, encoding: 'utf8', ...who });
  expect(status, stderr).toBe(0);
  expect(existsSync(join(out, 'site', 'index.html'))).toBe(true);
  expect(hashOf(garden)).toBe(before);
  expect(existsSync(join(garden, '.groundspot'))).toBe(false);
  for (const part of [garden, join(garden, '..')]) chmodSync(part, 0o755);
});
