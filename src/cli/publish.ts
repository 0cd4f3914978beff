import { join, resolve } from 'node:path';
import { publishFolder } from '../disk/output-folder.ts';
import { place, type Say } from './say.ts';

export interface Publication {
  /** Folder of the garden, which the target may not hold. */
  readonly folder: string;
  readonly target: string;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  /** The file to open first, below the target. */
  readonly first: string;
}

/** Writes what was made and says where it stands. Throws a Refusal as publishFolder does. */
export function publish({ folder, target, files, first }: Publication, say: Say): void {
  const { leftover } = publishFolder(target, files, { keep: [resolve(folder)] });
  if (leftover)
    process.stderr.write(`kept     ${place(leftover)} could not be tidied away; look into it before you delete it\n`);
  say(`written  open ${place(join(target, first))}`);
}
