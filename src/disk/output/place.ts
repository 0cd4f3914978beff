import { readlinkSync, realpathSync } from 'node:fs';
import { basename, dirname, join, parse, resolve } from 'node:path';
import { entryAt, holds } from '../presence.ts';
import { Refusal } from '../refusal.ts';
import { systemCode } from '../system-error.ts';

/** Where a site goes, all absolute, links resolved. */
export interface Place {
  readonly folder: string;
  readonly parent: string;
  readonly name: string;
  /** Where the last site stands between the two renames of a swap. */
  readonly previous: string;
}

/** The place of a target folder. Throws a Refusal `protected-folder` when it would take one of `kept` away. */
export function placeOf(target: string, kept: readonly string[]): Place {
  if (target.includes('\0')) throw new Refusal('bad-name', 'the output folder has a NUL character in its name');
  const folder = resolveLinks(resolve(target));
  if (parse(folder).root === folder) throw new Refusal('protected-folder', `${folder} is a whole disk`, CHOOSE);
  for (const path of kept) {
    if (holds(folder, resolveLinks(resolve(path)))) {
      throw new Refusal('protected-folder', `${folder} is or holds ${path}, which must stay`, CHOOSE);
    }
  }
  const [parent, name] = [dirname(folder), basename(folder)];
  return { folder, parent, name, previous: join(parent, `.${name}.previous`) };
}

const CHOOSE = 'Choose an empty or new folder with --out.';

/** Also of a path whose end, or whose link's end, is not there yet: a crash can leave a link without its folder. */
function resolveLinks(path: string): string {
  try {
    return realpathSync.native(path);
  } catch (error) {
    if (systemCode(error) !== 'ENOENT') throw error;
  }
  const parent = resolveLinks(dirname(path));
  if (entryAt(path)?.isSymbolicLink()) return resolveLinks(resolve(parent, readlinkSync(path)));
  return join(parent, basename(path));
}
