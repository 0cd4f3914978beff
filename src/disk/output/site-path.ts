import { Refusal } from '../refusal.ts';

/** Names that begin so are our own bookkeeping inside a published folder. */
export const OWN_PREFIX = '.groundspot-';

const MAX_SEGMENT_BYTES = 255;
/** Microsoft Learn, "Naming Files, Paths, and Namespaces": devices, reserved with any extension. */
const DEVICE = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])$/i;
const FORBIDDEN = /[\u0000-\u001f\u007f<>:"|?*\\]/;

/** Two paths with the same folded form are one file on a disk that ignores case or Unicode composition. */
export const fold = (path: string): string => path.normalize('NFC').toLowerCase();

/** Every folder a list of paths needs, `a` and `a/b` for `a/b/c`. */
export const foldersOf = (paths: Iterable<string>): ReadonlySet<string> => new Set([...paths].flatMap(parentsOf));

/** The folders above a path, nearest to the root first. */
export function parentsOf(path: string): string[] {
  const segments = path.split('/');
  return segments.slice(1).map((_, index) => segments.slice(0, index + 1).join('/'));
}

/** Why a relative path may not be written, or null when it may. It must work alike on every system. */
export function pathProblem(path: string): string | null {
  if (path === '') return 'is empty';
  if (path.startsWith('/')) return 'is absolute';
  for (const segment of path.split('/')) {
    const problem = segmentProblem(segment);
    if (problem) return problem;
  }
  return fold(path).startsWith(OWN_PREFIX) ? 'is a name kept for bookkeeping' : null;
}

function segmentProblem(segment: string): string | null {
  if (segment === '' || segment === '.' || segment === '..') return 'has an empty or dotted part';
  if (FORBIDDEN.test(segment)) return 'has a character that not every system allows';
  if (segment.endsWith('.') || segment.endsWith(' ')) return 'has a part that ends in a dot or a space';
  if (DEVICE.test((segment.split('.')[0] ?? '').trimEnd())) return 'is a device name on Windows';
  if (Buffer.byteLength(segment) > MAX_SEGMENT_BYTES) return 'has a part that is too long';
  return null;
}

/** Throws a Refusal `bad-name` for the first path that may not be written or that would be one file with another. */
export function checkPaths(paths: readonly string[]): void {
  const seen = new Map<string, string>();
  for (const path of paths) {
    const problem = pathProblem(path);
    if (problem) throw badName(path, problem);
    const twin = seen.get(fold(path));
    if (twin !== undefined) throw badName(path, `is the same file as ${JSON.stringify(twin)} where case is ignored`);
    seen.set(fold(path), path);
  }
  checkFolders(paths, seen);
}

/** A path cannot be a file and a folder, nor can two folders differ only by case. */
function checkFolders(paths: readonly string[], files: ReadonlyMap<string, string>): void {
  const folders = new Map<string, string>();
  for (const folder of foldersOf(paths)) {
    if (files.has(fold(folder))) throw badName(folder, 'is wanted as a file and as a folder');
    const twin = folders.get(fold(folder));
    if (twin !== undefined)
      throw badName(folder, `is the same folder as ${JSON.stringify(twin)} where case is ignored`);
    folders.set(fold(folder), folder);
  }
}

const badName = (path: string, problem: string): Refusal =>
  new Refusal('bad-name', `the page path ${JSON.stringify(path)} ${problem}`, 'Rename the record it is named for.');
