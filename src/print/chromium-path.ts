import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { Refusal } from '../disk/refusal.ts';

/** What the machine says of itself: `process.env` and `process.platform`, or a test's own. */
export interface Machine {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  readonly isFile: (path: string) => boolean;
}

export const thisMachine = (): Machine => ({ env: process.env, platform: process.platform, isFile: existsSync });

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge', 'chrome'];

const MAC_PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];
const WINDOWS_ROOTS = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'];
const WINDOWS_PLACES = [
  'Chromium/Application/chrome.exe',
  'Google/Chrome/Application/chrome.exe',
  'Microsoft/Edge/Application/msedge.exe',
];
const LINUX_PLACES = ['/snap/bin/chromium', '/usr/lib/chromium/chromium', '/opt/google/chrome/chrome'];

const ANY_BROWSER = 'The website needs none of this: build it, open it in any browser and print its pages from there.';

/**
 * The program that prints: what CHROMIUM_PATH names, else the usual names on the path, else the usual places.
 * Throws a Refusal `no-chromium` when there is none.
 */
export function chromiumPath(machine: Machine): string {
  const named = machine.env.CHROMIUM_PATH;
  if (named && machine.isFile(named)) return named;
  if (named) throw new Refusal('no-chromium', `CHROMIUM_PATH names ${named}, and there is no such file`, ANY_BROWSER);
  const found = [...onPath(machine), ...usualPlaces(machine)].find(machine.isFile);
  if (found) return found;
  throw new Refusal(
    'no-chromium',
    'printing takes a Chromium, Chrome or Edge browser, and none was found',
    `Install one, or name it: CHROMIUM_PATH=/path/to/chromium. ${ANY_BROWSER}`,
  );
}

function onPath({ env, platform }: Machine): string[] {
  const isWindows = platform === 'win32';
  const folders = (env.PATH ?? env.Path ?? '').split(isWindows ? ';' : delimiter).filter(Boolean);
  return folders.flatMap((folder) => NAMES.map((name) => join(folder, isWindows ? `${name}.exe` : name)));
}

function usualPlaces({ env, platform }: Machine): string[] {
  if (platform === 'darwin') return MAC_PLACES;
  if (platform !== 'win32') return LINUX_PLACES;
  const roots = WINDOWS_ROOTS.flatMap((name) => env[name] ?? []);
  return roots.flatMap((root) => WINDOWS_PLACES.map((place) => `${root}/${place}`));
}
