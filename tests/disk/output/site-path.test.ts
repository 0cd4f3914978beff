import { expect, test } from 'vitest';
import { checkPaths, pathProblem } from '../../../src/disk/output/site-path.ts';
import { refusalCode } from '../scratch.ts';

test.each([
  'index.html',
  'yield/index.html',
  'css/a b.css',
  '.gitignore',
  'größe/ü.svg',
  'console.html',
  'com/10.csv',
  'a..b',
])('%s may be written', (path) => expect(pathProblem(path)).toBeNull());

// Ways out of a folder: the relative-path forms of CWE-22 (path traversal), MITRE, in their plain spellings (from memory).
test.each([
  '',
  '/',
  '/etc/passwd',
  '..',
  '../a',
  'a/../../b',
  'a/..',
  './a',
  'a/.',
  'a//b',
  'a/',
  '..\\a',
  'a\\b',
  'C:\\a',
  'C:a',
  'a\0.html',
  'a\nb',
  'a\tb',
  'a\x7f',
  'a?b',
  'a*b',
  'a"b',
  'a<b',
  'a|b',
  'end.',
  'end ',
  'dir./a',
  '.groundspot-site',
  '.Groundspot-Site',
  '.groundspot-staging/a',
  `${'a'.repeat(256)}`,
  `${'ü'.repeat(128)}`,
])('%j may not', (path) => expect(pathProblem(path)).toEqual(expect.any(String)));

// Microsoft Learn, "Naming Files, Paths, and Namespaces", naming conventions: these names, and these followed by an extension.
const DEVICES = [
  'CON',
  'PRN',
  'AUX',
  'NUL',
  'COM1',
  'COM2',
  'COM3',
  'COM4',
  'COM5',
  'COM6',
  'COM7',
  'COM8',
  'COM9',
  'COM¹',
  'COM²',
  'COM³',
  'LPT1',
  'LPT2',
  'LPT3',
  'LPT4',
  'LPT5',
  'LPT6',
  'LPT7',
  'LPT8',
  'LPT9',
  'LPT¹',
  'LPT²',
  'LPT³',
];

test('no part of a path may be a Windows device, with or without an extension', () => {
  const forms = (name: string): string[] => [name, name.toLowerCase(), `${name}.txt`, `a/${name}.tar.gz`, `${name}/a`];
  expect(DEVICES.flatMap(forms).filter((path) => pathProblem(path) === null)).toEqual([]);
});

test.each([
  [['a.html', 'A.html']],
  [['caf\u00e9.html', 'cafe\u0301.html']],
  [['Plot/a.html', 'plot/b.html']],
  [['a', 'a/b']],
  [['A', 'a/b/c']],
])('%j cannot stand together on every disk', (paths) => {
  for (const path of paths) expect(pathProblem(path)).toBeNull();
  expect(refusalCode(() => checkPaths(paths))).toBe('bad-name');
  expect(refusalCode(() => checkPaths(paths.toReversed()))).toBe('bad-name');
});

test('names that differ in more than case stand together', () => {
  expect(refusalCode(() => checkPaths(['a.html', 'a/b.html', 'ab.html', 'a/c/d.html']))).toBeNull();
});
