import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { manifestOf, manifestText, readManifest } from '../../../src/disk/output/manifest.ts';
import { plant, refusalCode, scratch, tree } from '../scratch.ts';

// FIPS 180-2, appendix B.1: the SHA-256 of "abc". The digest of the empty message is from memory.
const ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
const EMPTY = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';
const TEXT = `# groundspot site 1\n${ABC}  B/abc.txt\n${EMPTY}  a.html\n`;

test('lists what was written by path, with the sums of the standard', () => {
  const files = new Map([
    ['a.html', new Uint8Array()],
    ['B/abc.txt', Buffer.from('abc')],
  ]);
  expect(manifestText(manifestOf(files))).toBe(TEXT);
});

test('reads back what it wrote; a folder without one has none', () => {
  const folder = scratch();
  expect(readManifest(folder)).toBeNull();
  plant(folder, { '.groundspot-site': TEXT });
  expect([...(readManifest(folder) ?? [])]).toEqual([
    ['B/abc.txt', ABC],
    ['a.html', EMPTY],
  ]);
});

const hasCoreutils = spawnSync('sha256sum', ['--version']).stdout?.toString().includes('GNU coreutils') === true;

test.skipIf(!hasCoreutils)('GNU sha256sum verifies a site by it, and sees a changed page', () => {
  const folder = scratch();
  plant(folder, { '.groundspot-site': TEXT, 'a.html': '', 'B/abc.txt': 'abc' });
  const check = () => spawnSync('sha256sum', ['--strict', '-c', '.groundspot-site'], { cwd: folder, encoding: 'utf8' });
  expect(check()).toMatchObject({ status: 0, stdout: 'B/abc.txt: OK\na.html: OK\n', stderr: '' });
  plant(folder, { 'a.html': 'x' });
  expect(check().status).toBe(1);
});

test.each([
  ['without its head', `${ABC}  a.html\n`],
  ['cut short', TEXT.slice(0, -1)],
  ['with a line that is none', `${TEXT}note\n`],
  ['that would delete outside', `${TEXT}${ABC}  ../../precious\n`],
  ['that would delete anywhere', `${TEXT}${ABC}  /precious\n`],
  ['that names a file twice', `${TEXT}${ABC}  a.html\n`],
  ['that is empty', ''],
])('a manifest %s is not trusted', (_, text) => {
  const folder = scratch();
  plant(folder, { '.groundspot-site': text });
  expect(refusalCode(() => readManifest(folder))).toBe('manifest-damaged');
  expect(tree(folder)).toEqual({ '.groundspot-site': text });
  plant(join(folder, 'sub'), { '.groundspot-site/a': '' });
  expect(refusalCode(() => readManifest(join(folder, 'sub')))).toBe('manifest-damaged');
});
