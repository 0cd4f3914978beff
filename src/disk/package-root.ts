import { createRequire } from 'node:module';
import { dirname } from 'node:path';

/** The package's own folder, the same from the sources, from `.build` and from an installed copy, links resolved. */
export function packageRoot(): string {
  return dirname(createRequire(import.meta.url).resolve('#package.json'));
}
