import type { z } from 'zod';
import { type Kept, NOTHING_KEPT } from '../kept.ts';
import { readCsv } from './csv-source.ts';
import { decode } from './decode.ts';
import { type Read, readList, readMap } from './entries.ts';
import { fileNamesBeside, KINDS, type Kind, kindOfFile } from './kinds.ts';
import { nearest } from './nearest.ts';
import { fileProblem, type Problem } from './problem.ts';
import { type Entry, type ReadSource, type Source, type Tree, type TreePath, treeAgain } from './source.ts';
import { readYaml } from './yaml-source.ts';

export interface RecordFile {
  /** Relative to the garden, with forward slashes. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** One record of a kind, as read. */
export type RecordOf<K extends Kind> = z.output<(typeof KINDS)[K]['schema']>;

/** What one file held. */
export interface Listing<K extends Kind = Kind> {
  readonly kind: K;
  /** The season's slug, the station or the crop; empty for the garden's own files. */
  readonly part: string;
  readonly file: string;
  readonly entries: readonly Entry<RecordOf<K>>[];
  /** Ids of refused records; null when the whole file could not be read. */
  readonly spoilt: readonly string[] | null;
  readonly source: Source | null;
}

export interface GardenRecords {
  readonly listings: readonly Listing[];
  readonly problems: readonly Problem[];
}

/**
 * Reads every record file of a garden, in the order of their paths. Never throws for what a file holds. What is kept of
 * a file's text is not read again.
 */
export function readGardenRecords(files: readonly RecordFile[], kept: Kept = NOTHING_KEPT): GardenRecords {
  const listings: Listing[] = [];
  const problems: Problem[] = [];
  for (const file of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) {
    const place = kindOfFile(file.path);
    if (!place) {
      problems.push(unreadFile(file.path));
      continue;
    }
    const { listing, problems: found } = readListing(place.kind, place.part, file, kept);
    listings.push(listing);
    problems.push(...found);
  }
  return { listings, problems };
}

/** Reads one file as one kind of record. */
export function readListing<K extends Kind>(
  kind: K,
  part: string,
  file: RecordFile,
  kept: Kept = NOTHING_KEPT,
): { listing: Listing<K>; problems: readonly Problem[] } {
  const empty: Listing<K> = { kind, part, file: file.path, entries: [], spoilt: null, source: null };
  const { text, problems: decoding } = decode(file.path, file.bytes);
  if (text === null) return { listing: empty, problems: decoding };
  const isTable = file.path.endsWith('.csv');
  const parse = (): ReadSource => (isTable ? readCsv : readYaml)(file.path, text);
  const inputs = `${kind} ${isTable ? 'csv' : 'yaml'}\n${text}`;
  const known = kept.find('records', inputs) as CleanFile<K> | undefined;
  const asClean = (clean: CleanFile<K>) => ({
    listing: { ...empty, ...readAgain(clean, file.path, text, parse) },
    problems: decoding,
  });
  if (known) return asClean(known);
  const { source, problems: parsing } = parse();
  if (!source) return { listing: empty, problems: [...decoding, ...parsing] };
  const { schema, shape } = KINDS[kind];
  const { entries, spoilt, problems } = (shape === 'list' ? readList(source, schema) : readMap(source, schema)) as Read<
    RecordOf<K>
  >;
  if (parsing.length === 0 && problems.length === 0) {
    // The parser's own tree is let go: of many seasons it would be most of the memory.
    const clean = { tree: source.tree, entries: entries.map(({ record, path }) => ({ record, path })) };
    kept.keep('records', inputs, clean);
    return asClean(clean);
  }
  return {
    listing: { ...empty, entries, spoilt, source },
    problems: [...decoding, ...parsing, ...oncePerColumn(source, problems)],
  };
}

/** What is kept of a file in which nothing was wrong. */
interface CleanFile<K extends Kind> {
  readonly tree: Tree;
  readonly entries: readonly { readonly record: RecordOf<K>; readonly path: TreePath }[];
}

function readAgain<K extends Kind>(
  { tree, entries }: CleanFile<K>,
  file: string,
  text: string,
  parse: () => ReadSource,
): Pick<Listing<K>, 'entries' | 'spoilt' | 'source'> {
  const source = treeAgain(file, text, tree, parse);
  return { entries: entries.map(({ record, path }) => ({ record, source, path })), spoilt: [], source };
}

/** An unknown column of a table is one slip, not one for each of its rows. */
function oncePerColumn(source: Source, problems: readonly Problem[]): readonly Problem[] {
  if (!source.file.endsWith('.csv')) return problems;
  const seen = new Set<string>();
  return problems.filter(({ code, field }) => {
    if (code !== 'unknown-key' && code !== 'unit-missing' && code !== 'missing-key') return true;
    const slip = `${code} ${field}`;
    return !seen.has(slip) && seen.add(slip);
  });
}

/** All listings of one kind. */
export const listingsOf = <K extends Kind>(records: GardenRecords, kind: K): Listing<K>[] =>
  records.listings.filter((listing): listing is Listing<K> => listing.kind === kind);

function unreadFile(path: string): Problem {
  const name = path.split('/').at(-1) ?? path;
  const near = nearest(name.replace(/\.yml$/, '.yaml'), fileNamesBeside(path));
  const hint = near
    ? `did you mean ${near}?`
    : 'the book reads garden.yaml, people.yaml, varieties.yaml, lots.yaml, crops/, weather/ and seasons/<label>/';
  const complaint = { code: 'unread-file', message: 'the book does not read this file', hint };
  return fileProblem(path, { severity: 'warning', ...complaint });
}
