import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { Refusal } from '../../src/disk/refusal.ts';
import { chromiumPath, type Machine } from '../../src/print/chromium-path.ts';

const machine = (
  files: readonly string[],
  env: Machine['env'] = {},
  platform: Machine['platform'] = 'linux',
): Machine => ({
  env,
  platform,
  isFile: (path) => files.includes(path),
});

const onPath = join('/one', 'chromium');

describe('the browser that prints', () => {
  test('is what CHROMIUM_PATH names, before all others', () => {
    expect(chromiumPath(machine(['/own/browser', onPath], { CHROMIUM_PATH: '/own/browser', PATH: '/one' }))).toBe(
      '/own/browser',
    );
  });

  test('is on the path, in the order of its folders, else in a usual place', () => {
    const other = join('/two', 'google-chrome');
    expect(chromiumPath(machine([other, onPath], { PATH: '/one:/two' }))).toBe(onPath);
    expect(chromiumPath(machine([other], { PATH: '/one:/two' }))).toBe(other);
    const mac = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(chromiumPath(machine([mac], { PATH: '/one' }, 'darwin'))).toBe(mac);
    const windows = 'C:\\Program Files/Google/Chrome/Application/chrome.exe';
    expect(chromiumPath(machine([windows], { PROGRAMFILES: 'C:\\Program Files' }, 'win32'))).toBe(windows);
  });

  test('is refused when there is none, or none where CHROMIUM_PATH says', () => {
    expect(() => chromiumPath(machine([], { PATH: '/one' }))).toThrow(Refusal);
    expect(() => chromiumPath(machine([onPath], { CHROMIUM_PATH: '/gone', PATH: '/one' }))).toThrow('/gone');
  });
});
