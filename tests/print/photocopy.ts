import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const COPY_DPI = 150;
/** Grey at and above which a worn photocopier leaves the paper white. */
const WHITE_FROM = 128;

/** Whether the two programs a photocopy is made and read with are on this machine. */
export function canPhotocopy(): boolean {
  try {
    execFileSync('pdftoppm', ['-v'], { stdio: 'ignore' });
    execFileSync('tesseract', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Text of each page as a reader of print makes it out from a copy in black and white alone. */
export function readPhotocopy(pdf: Uint8Array, pages = 1): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'photocopy-'));
  try {
    writeFileSync(join(folder, 'paper.pdf'), pdf);
    const range = ['-f', '1', '-l', String(pages)];
    execFileSync('pdftoppm', [
      '-r',
      String(COPY_DPI),
      '-gray',
      ...range,
      join(folder, 'paper.pdf'),
      join(folder, 'page'),
    ]);
    return readdirSync(folder)
      .filter((name) => name.endsWith('.pgm'))
      .sort()
      .map((name) => {
        const file = join(folder, name);
        writeFileSync(file, blackAndWhite(readFileSync(file)));
        const args = [file, 'stdout', '--psm', '11', '--dpi', String(COPY_DPI)];
        return execFileSync('tesseract', args, {
          encoding: 'utf8',
          stdio: ['ignore', 'pipe', 'ignore'],
          // Its threads stand in each other's way on a small machine.
          env: { ...process.env, OMP_THREAD_LIMIT: '1' },
        });
      });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A binary greymap (PGM, "P5": width, height, 255, then one byte a dot) with every dot black or white. Throws Error for another file. */
export function blackAndWhite(pgm: Uint8Array): Uint8Array {
  const head = /^P5\s+\d+\s+\d+\s+255\s/.exec(Buffer.from(pgm.subarray(0, 64)).toString('latin1'));
  if (!head) throw new Error('invalid greymap: it does not begin with P5, width, height and 255');
  return pgm.map((byte, index) => (index < head[0].length ? byte : byte < WHITE_FROM ? 0 : 255));
}

/** Letters and digits alone, small: what a copy must keep. */
export const lettersOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** How many of the wanted words stand in a text, each counted as often as it is wanted. */
export function wordsFound(wanted: readonly string[], text: string): { found: number; missing: string[] } {
  const left = new Map<string, number>();
  for (const word of lettersOf(text)) left.set(word, (left.get(word) ?? 0) + 1);
  const missing = wanted.filter((word) => {
    const count = left.get(word) ?? 0;
    if (count > 0) left.set(word, count - 1);
    return count === 0;
  });
  return { found: wanted.length - missing.length, missing };
}
