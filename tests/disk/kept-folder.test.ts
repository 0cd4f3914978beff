import { appendFileSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openKept } from '../../src/disk/kept-folder.ts';
import { keptOr } from '../../src/kept.ts';
import { asNobody, plant, scratch, tree } from './scratch.ts';

/** A folder in which two values of one kind are kept. */
function kept(): string {
  const folder = join(scratch(), 'kept');
  const open = openKept(folder, 'mark');
  open.keep('sums', '1 2', { sum: 3, words: 'drei\nthree' });
  open.keep('sums', '3 4', [7, null, -0.1]);
  open.save();
  return folder;
}

test('what was kept is found again, to the last bit', () => {
  const open = openKept(kept(), 'mark');
  expect(open.find('sums', '1 2')).toEqual({ sum: 3, words: 'drei\nthree' });
  expect(open.find('sums', '3 4')).toEqual([7, null, -0.1]);
  expect(open.find('sums', '1 3')).toBeUndefined();
  expect(open.find('products', '1 2')).toBeUndefined();
});

test('a value is made once', () => {
  const folder = kept();
  let made = 0;
  const make = (): number => {
    made += 1;
    return 11;
  };
  for (const open of [openKept(folder, 'mark'), openKept(folder, 'mark')]) {
    expect(keptOr(open, 'sums', '5 6', make)).toBe(11);
    expect(keptOr(open, 'sums', '5 6', make)).toBe(11);
    open.save();
  }
  expect(made).toBe(1);
});

test('what another program kept is not found, and its file is replaced', () => {
  const folder = kept();
  const other = openKept(folder, 'another mark');
  expect(other.find('sums', '1 2')).toBeUndefined();
  other.keep('sums', '1 2', 'three');
  other.save();
  expect(openKept(folder, 'mark').find('sums', '1 2')).toBeUndefined();
  expect(openKept(folder, 'another mark').find('sums', '1 2')).toBe('three');
});

test('whichever byte is damaged, a wrong value is never found', () => {
  const folder = kept();
  const path = join(folder, 'sums');
  const whole = readFileSync(path);
  let lost = 0;
  for (let at = 0; at < whole.length; at++) {
    const damaged = Buffer.from(whole);
    damaged[at] = (damaged[at] as number) ^ 1;
    writeFileSync(path, damaged);
    const open = openKept(folder, 'mark');
    const found = [open.find('sums', '1 2'), open.find('sums', '3 4')];
    expect([{ sum: 3, words: 'drei\nthree' }, undefined]).toContainEqual(found[0]);
    expect([[7, null, -0.1], undefined]).toContainEqual(found[1]);
    if (found.includes(undefined)) lost += 1;
  }
  // All but the two blanks of each line, which only part the hashes from the text.
  expect(lost).toBe(whole.length - 4);
});

test('a file cut short keeps the values before the cut; one that is no such file holds none', () => {
  const folder = kept();
  const path = join(folder, 'sums');
  const lines = readFileSync(path, 'utf8').split('\n');
  writeFileSync(path, `${lines.slice(0, 2).join('\n')}\n${lines[2]?.slice(0, 90)}`);
  const found = (open = openKept(folder, 'mark')) => ['1 2', '3 4'].filter((of) => open.find('sums', of) !== undefined);
  expect(found()).toHaveLength(1);
  appendFileSync(path, '\n\n \nnothing of ours\n');
  expect(found()).toHaveLength(1);
  writeFileSync(path, Buffer.from([0, 255, 10, 13, 10]));
  expect(found()).toEqual([]);
});

test('what a build did not ask for is dropped, in memory too; kinds it did not touch stay', () => {
  const folder = kept();
  const first = openKept(folder, 'mark');
  first.keep('products', '1 2', 2);
  first.save();
  const open = openKept(folder, 'mark');
  expect(open.find('sums', '1 2')).toBeDefined();
  open.save();
  expect(open.find('sums', '3 4')).toBeUndefined();
  const again = openKept(folder, 'mark');
  expect(again.find('sums', '1 2')).toBeDefined();
  expect(again.find('sums', '3 4')).toBeUndefined();
  expect(again.find('products', '1 2')).toBe(2);
});

test('a folder whose values were all used is not written again, and nothing half-written is left', () => {
  const folder = kept();
  const before = statSync(join(folder, 'sums')).ino;
  const open = openKept(folder, 'mark');
  open.find('sums', '1 2');
  open.find('sums', '3 4');
  open.save();
  expect(statSync(join(folder, 'sums')).ino).toBe(before);
  open.find('sums', '1 2');
  open.save();
  expect(statSync(join(folder, 'sums')).ino).not.toBe(before);
  expect(readdirSync(folder)).toEqual(['sums']);
});

test('what JSON would change is not kept', () => {
  const open = openKept(join(scratch(), 'kept'), 'mark');
  const values = [Number.NaN, -0, Number.POSITIVE_INFINITY, { a: undefined }, [undefined], new Map(), new Date(0), 1n];
  for (const value of values) {
    open.keep('odd', 'x', value);
    expect(open.find('odd', 'x'), String(value)).toBeUndefined();
  }
});

test('a folder that cannot be made or written is done without', () => {
  const folder = scratch();
  plant(folder, { file: '' });
  mkdirSync(join(folder, 'closed'), { mode: 0o500 });
  for (const path of ['file/kept', 'file', 'closed/kept']) {
    const open = openKept(join(folder, path), 'mark');
    open.keep('sums', '1 2', 3);
    asNobody(() => open.save());
    expect(open.find('sums', '1 2')).toBe(3);
  }
  expect(tree(folder)).toEqual({ 'closed/': '', file: '' });
});
