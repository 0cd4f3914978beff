import { chmodSync, lstatSync, readdirSync, readFileSync, statSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeAtomic } from '../../src/disk/atomic-file.ts';
import { cutAt, failAt, PowerCut } from './broken-disk.ts';
import { plant, refusalCode, scratch, tree } from './scratch.ts';

test('writes text and bytes, new and over an old file', () => {
  const folder = scratch();
  writeAtomic(join(folder, 'a.yaml'), 'größe: 1\n');
  writeAtomic(join(folder, 'a.yaml'), new Uint8Array([0, 255, 10]));
  expect([...readFileSync(join(folder, 'a.yaml'))]).toEqual([0, 255, 10]);
  expect(readdirSync(folder)).toEqual(['a.yaml']);
});

test('wherever the power fails, the file is the old one or the new one', () => {
  const outcomes = [0, 1, 2].map((step) => {
    const folder = scratch();
    const path = join(folder, 'a.yaml');
    plant(folder, { 'a.yaml': 'old' });
    try {
      writeAtomic(path, 'the new text', cutAt(step));
    } catch (error) {
      expect(error).toBeInstanceOf(PowerCut);
    }
    const text = readFileSync(path, 'utf8');
    writeAtomic(path, 'later');
    expect(tree(folder)).toEqual({ 'a.yaml': 'later' });
    return text;
  });
  expect(outcomes).toEqual(['old', 'old', 'the new text']);
});

test.each([
  [0, 'ENOSPC', 'disk-full'],
  [1, 'EACCES', 'not-permitted'],
])('a disk that fails at change %i with %s keeps the old file and no other', (step, system, code) => {
  const folder = scratch();
  plant(folder, { 'a.yaml': 'old' });
  expect(refusalCode(() => writeAtomic(join(folder, 'a.yaml'), 'new', failAt(step, system)))).toBe(code);
  expect(tree(folder)).toEqual({ 'a.yaml': 'old' });
});

test('a link stays a link and mode bits stay', () => {
  const folder = scratch();
  plant(folder, { 'kept/a.yaml': 'old' });
  chmodSync(join(folder, 'kept/a.yaml'), 0o640);
  symlinkSync('kept/a.yaml', join(folder, 'a.yaml'));
  writeAtomic(join(folder, 'a.yaml'), 'new');
  expect(lstatSync(join(folder, 'a.yaml')).isSymbolicLink()).toBe(true);
  expect(tree(folder)).toEqual({ 'a.yaml': '-> kept/a.yaml', 'kept/a.yaml': 'new' });
  expect(statSync(join(folder, 'kept/a.yaml')).mode & 0o777).toBe(0o640);
});

test('a folder that is not there is a refusal', () => {
  expect(refusalCode(() => writeAtomic(join(scratch(), 'none/a.yaml'), ''))).toBe('not-found');
});
