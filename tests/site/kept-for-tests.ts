import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type KeptFolder, openKept } from '../../src/disk/kept-folder.ts';
import { programMark } from '../../src/disk/program-mark.ts';

const mark = programMark();

/**
 * Fits and charts that another test file made of the same garden by the very same program: its mark covers all our code,
 * words and reference facts, and each value is found by its inputs. That keeping changes no result is for
 * tests/books/kept.test.ts to say, and demo.test.ts makes everything anew.
 */
export function keptForTests(...what: readonly string[]): KeptFolder {
  const name = createHash('sha256').update(JSON.stringify(what)).digest('hex').slice(0, 16);
  return openKept(join(tmpdir(), 'groundspot-tests', mark.slice(0, 16), name), mark);
}
