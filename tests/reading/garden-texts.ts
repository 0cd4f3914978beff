import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadReference } from '../../src/cli/load-reference.ts';
import { type Linked, linkGarden } from '../../src/garden/link.ts';
import { type GardenRecords, readGardenRecords } from '../../src/reading/garden-records.ts';
import type { Problem } from '../../src/reading/problem.ts';

/** The files of a garden: text, or bytes where a test needs odd ones, by path. */
export type Texts = Readonly<Record<string, string | Uint8Array>>;

/** The crops every garden has, from the reference facts. */
const crops = loadReference('data/reference').crops;

/** Reads and links a garden from its texts, as the command does. */
export const linkTexts = (texts: Texts): Linked => linkGarden(readTexts(texts), crops);

/** The same for many gardens that differ in a few files: those beside them are read once. */
export function linkBeside(others: Texts): (texts: Texts) => Linked {
  const read = readTexts(others);
  return (texts) => {
    const more = readTexts(texts);
    const listings = [...read.listings, ...more.listings];
    return linkGarden({ listings, problems: [...read.problems, ...more.problems] }, crops);
  };
}

const readTexts = (texts: Texts): GardenRecords =>
  readGardenRecords(Object.entries(texts).map(([path, text]) => ({ path, bytes: bytesOf(text) })));

const bytesOf = (text: string | Uint8Array): Uint8Array =>
  typeof text === 'string' ? new TextEncoder().encode(text) : text;

/** The record files under a folder of this repository, by path within it. */
export function textsIn(folder: string): Readonly<Record<string, string>> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) => /\.(yaml|csv)$/.test(path));
  return Object.fromEntries(paths.sort().map((path) => [path, readFileSync(join(folder, path), 'utf8')]));
}

/** The same garden with one text in one file changed. Throws when the old text does not stand there exactly once. */
export function withChange<T extends Texts>(texts: T, path: string, from: string, to: string): T {
  const text = texts[path];
  if (typeof text !== 'string' || text.split(from).length !== 2) {
    throw new Error(`invalid change: "${from}" does not stand once in ${path}`);
  }
  return { ...texts, [path]: text.replace(from, () => to) };
}

/** Where and what: `file:line:column code`, the part of a problem that tests hold on to. */
export const placeOf = ({ file, line, column, code }: Problem): string => `${file}:${line}:${column} ${code}`;

export const placesOf = (texts: Texts): string[] => linkTexts(texts).problems.map(placeOf);

/** The one problem of a garden. Throws when there are none or several. */
export function onlyProblem(texts: Texts): Problem {
  const { problems } = linkTexts(texts);
  const [problem] = problems;
  if (!problem || problems.length > 1)
    throw new Error(`not one problem but ${problems.length}: ${JSON.stringify(problems)}`);
  return problem;
}
