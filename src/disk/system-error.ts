import { Refusal } from './refusal.ts';

interface Words {
  readonly code: string;
  readonly says: string;
  readonly hint: string | null;
}

const NOT_PERMITTED: Words = { code: 'not-permitted', says: 'is not open to this user', hint: 'Check who owns it.' };
const FULL: Words = { code: 'disk-full', says: 'could not be written: the disk is full', hint: 'Free some space.' };

const WORDS: Readonly<Record<string, Words>> = {
  EACCES: NOT_PERMITTED,
  EPERM: NOT_PERMITTED,
  ENOSPC: FULL,
  EDQUOT: FULL,
  EROFS: { code: 'read-only-disk', says: 'is on a disk that cannot be written', hint: 'Choose another place.' },
  ENOENT: { code: 'not-found', says: 'is not there', hint: 'Check the spelling of the path.' },
  ENOTDIR: { code: 'not-a-folder', says: 'is a file, or leads through one, where a folder is needed', hint: null },
  ENAMETOOLONG: { code: 'name-too-long', says: 'has a name too long for this disk', hint: null },
  EEXIST: { code: 'in-the-way', says: 'is there already', hint: null },
  ELOOP: { code: 'loop', says: 'is a link that leads back to itself', hint: null },
};

/** The operating system's code of an error (`ENOENT`, …), or null when it is another kind of error. */
export function systemCode(error: unknown): string | null {
  const known = error instanceof Error && 'syscall' in error && 'code' in error;
  return known && typeof error.code === 'string' ? error.code : null;
}

/** Runs `work` on a path; what the system answers no with is thrown as a Refusal. */
export function inPlainWords<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw asRefusal(error, path);
  }
}

/** A system error in plain words; any other error as it came, since it is a fault of ours. */
function asRefusal(error: unknown, path: string): unknown {
  const code = systemCode(error);
  if (code === null) return error;
  const words = WORDS[code] ?? { code: 'disk-error', says: `could not be used (${code})`, hint: null };
  return new Refusal(words.code, `${path} ${words.says}`, words.hint, error);
}
