import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A Chromium on this machine, or null: CHROMIUM_PATH first, then the path. */
export function findChromium(): string | null {
  const named = process.env.CHROMIUM_PATH;
  if (named) return existsSync(named) ? named : null;
  const folders = (process.env.PATH ?? '').split(delimiter);
  return folders.flatMap((folder) => NAMES.map((name) => join(folder, name))).find((path) => existsSync(path)) ?? null;
}

/**
 * The path, or null after one line that says what is left out. Under CI=true its absence is a failure:
 * a green run has to mean that the pages were looked at.
 */
export function chromiumOrSay(leftOut: string): string | null {
  const found = findChromium();
  if (!found && process.env.CI === 'true')
    throw new Error('no Chromium found, and CI=true: install one or set CHROMIUM_PATH');
  if (!found) console.log(`left out: ${leftOut} (no Chromium found; set CHROMIUM_PATH)`);
  return found;
}

export const openChromium = (path: string): Promise<Browser> => chromium.launch({ executablePath: path, args: FLAGS });
