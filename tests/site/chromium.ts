import { type Browser, chromium } from 'playwright-core';
import { Refusal } from '../../src/disk/refusal.ts';
import { chromiumPath, thisMachine } from '../../src/print/chromium-path.ts';
import { QUIET_FLAGS } from '../../src/print/quiet-flags.ts';

/** A Chromium on this machine, found as printing finds it, or null. */
export function findChromium(): string | null {
  try {
    return chromiumPath(thisMachine());
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
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

export const openChromium = (path: string): Promise<Browser> =>
  chromium.launch({ executablePath: path, args: ['--no-sandbox', ...QUIET_FLAGS] });
