import { join } from 'node:path';
import { packageRoot } from '../disk/package-root.ts';
import { readFolder } from '../disk/read-folder.ts';
import { Refusal } from '../disk/refusal.ts';
import { type Linked, linkGarden } from '../garden/link.ts';
import { decode } from '../reading/decode.ts';
import { readGardenRecords } from '../reading/garden-records.ts';
import { fileProblem, sortProblems } from '../reading/problem.ts';
import { type LoadedReference, loadReference } from './load-reference.ts';

const MOST_BYTES = 8_000_000;
const MOST_FILES = 5_000;

export interface LoadedGarden extends Linked {
  readonly reference: LoadedReference;
  /** Text of a file, as the reader saw it, for code frames; empty when it has none. */
  readonly textOf: (path: string) => string;
  readonly files: number;
}

/** Reads and links the garden in a folder. Throws Refusal when there is no such folder. */
export function loadGarden(folder: string): LoadedGarden {
  const reference = loadReference(join(packageRoot(), 'data', 'reference'));
  const { files, refused } = readFolder(folder, {
    extensions: ['.yaml', '.yml', '.csv'],
    maxBytes: MOST_BYTES,
    maxFiles: MOST_FILES,
  });
  if (files.length === 0 && refused.length === 0) {
    throw new Refusal('no-garden', `there are no records in ${folder}`, 'begin a garden with: groundspot new <folder>');
  }
  const { garden, problems } = linkGarden(readGardenRecords(files), reference.crops);
  const unread = refused.map(({ path, code, message }) => fileProblem(path, { code, message, hint: null }));
  return {
    garden,
    problems: sortProblems([...unread, ...problems]),
    reference,
    textOf: (path) => {
      const bytes = files.find((file) => file.path === path)?.bytes;
      return (bytes && decode(path, bytes).text) ?? '';
    },
    files: files.length,
  };
}
