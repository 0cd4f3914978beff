import { lstatSync, type Stats } from 'node:fs';
import { isAbsolute, relative, sep } from 'node:path';
import { systemCode } from './system-error.ts';

/** What stands at a path, links not followed; null when nothing does. Other system errors are thrown. */
export function entryAt(path: string): Stats | null {
  try {
    return lstatSync(path);
  } catch (error) {
    const code = systemCode(error);
    if (code === 'ENOENT' || code === 'ENOTDIR') return null;
    throw error;
  }
}

/** True when `inner` is `outer` or lies below it. Both absolute, links resolved by the caller. */
export function holds(outer: string, inner: string): boolean {
  const way = relative(outer, inner);
  return !(way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way));
}
