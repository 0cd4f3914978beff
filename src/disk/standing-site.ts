import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { intactManifest, type Manifest, manifestText, sha256 } from './output/manifest.ts';
import { systemCode } from './system-error.ts';

/** The mark of the site that was last written to a folder, whatever became of its files; null when there is none. */
export const siteMark = (folder: string): string | null => markOf(intactManifest(folder));

/** The mark of the whole site that stands in a folder; null when there is none, or a file of it is not as it was written. */
export function standingSite(folder: string): string | null {
  try {
    const manifest = intactManifest(folder);
    return manifest && isWhole(folder, manifest) ? markOf(manifest) : null;
  } catch (error) {
    if (systemCode(error) === null) throw error;
    return null;
  }
}

const markOf = (manifest: Manifest | null): string | null => manifest && sha256(manifestText(manifest));

const isWhole = (folder: string, manifest: Manifest): boolean =>
  [...manifest].every(([path, sum]) => sha256(readFileSync(join(folder, path))) === sum);
