import { join } from 'node:path';
import { packageRoot } from '../disk/package-root.ts';
import { type FolderContents, readFolder } from '../disk/read-folder.ts';
import { Refusal } from '../disk/refusal.ts';
import { type Linked, linkGarden } from '../garden/link.ts';
import { type Kept, keptOr, NOTHING_KEPT } from '../kept.ts';
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

/** The record files of a garden's folder as they lie on the disk. Throws Refusal when there is no such folder, or none in it. */
export function readGardenFolder(folder: string): FolderContents {
  const contents = readFolder(folder, {
    extensions: ['.yaml', '.yml', '.csv'],
    maxBytes: MOST_BYTES,
    maxFiles: MOST_FILES,
  });
  if (contents.files.length > 0 || contents.refused.length > 0) return contents;
  throw new Refusal('no-garden', `there are no records in ${folder}`, 'begin a garden with: groundspot new <folder>');
}

/** Reads and links the garden in a folder; files that have not changed may be kept. Throws as readGardenFolder does. */
export const loadGarden = (folder: string, kept: Kept = NOTHING_KEPT): LoadedGarden =>
  linkFiles(readGardenFolder(folder), kept);

export function linkFiles({ files, refused }: FolderContents, kept: Kept = NOTHING_KEPT): LoadedGarden {
  // The facts of the trade come with the program: whatever is kept for this program has them as they are.
  const reference = keptOr(kept, 'records', 'reference', () => loadReference(join(packageRoot(), 'data', 'reference')));
  const { garden, problems } = linkGarden(readGardenRecords(files, kept), reference.crops);
  const unread = refused.map(({ path, code, message }) => fileProblem(path, { code, message, hint: null }));
  return {
    garden,
    problems: sortProblems([...unread, ...problems]),
    reference,
    textOf: (path) => textOf(files, path),
    files: files.length,
  };
}

/** Text of a file as the reader saw it, for code frames; empty when it has none. */
export function textOf(files: FolderContents['files'], path: string): string {
  const bytes = files.find((file) => file.path === path)?.bytes;
  return (bytes && decode(path, bytes).text) ?? '';
}
