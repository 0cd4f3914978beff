import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';

/** `GOLDEN=write npm test` rewrites the books kept here; read the difference before it is committed. */
const isWriting = process.env.GOLDEN === 'write';

/** The texts kept in a folder, by path; first written anew when asked to. */
export function golden(folder: string, made: ReadonlyMap<string, string>): Map<string, string> {
  if (isWriting) {
    rmSync(folder, { recursive: true, force: true });
    for (const [path, text] of made) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
  }
  if (!existsSync(folder)) return new Map();
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name));
  return new Map(paths.map((path) => [relative(folder, path), readFileSync(path, 'utf8')]));
}
