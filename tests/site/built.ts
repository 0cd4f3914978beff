import type { Book } from '../../src/book/book.ts';
import { type LoadedGarden, loadGarden } from '../../src/cli/load-garden.ts';
import { loadReference } from '../../src/cli/load-reference.ts';
import { bookOf } from '../../src/cli/make-book.ts';
import type { Day } from '../../src/day.ts';
import { linkGarden } from '../../src/garden/link.ts';
import { type Kept, NOTHING_KEPT } from '../../src/kept.ts';
import { readGardenRecords } from '../../src/reading/garden-records.ts';
import { buildSite } from '../../src/site/build-site.ts';
import { createDraw, type Draw } from '../../src/site/draw.ts';
import { keptForTests } from './kept-for-tests.ts';

export type Site = ReadonlyMap<string, string | Uint8Array>;

const draw = createDraw();
const reference = loadReference('data/reference');

type Loaded = Pick<LoadedGarden, 'garden' | 'problems'>;

function bookFrom({ garden, problems }: Loaded, today: Day | null, kept: Kept): Book {
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return bookOf({ reference }, garden, today, kept);
}

const siteOf = (book: Book, drawn: Draw = draw): Promise<Site> =>
  buildSite(book, { layouts: 'layouts', content: 'content', version: '0.0.0', draw: drawn });

/** The book of a garden's folder. */
export function bookOfFolder(folder: string): Book {
  const kept = keptForTests(folder, '');
  const book = bookFrom(loadGarden(folder), null, kept);
  kept.save();
  return book;
}

/** The site of a garden's folder, in memory. */
export async function siteOfFolder(folder: string, today: Day | null = null): Promise<Site> {
  const kept = keptForTests(folder, today ?? '');
  const site = await siteOf(bookFrom(loadGarden(folder), today, kept), createDraw(kept));
  kept.save();
  return site;
}

/** The same, with nothing taken from what was made before. */
export const siteMadeAnew = async (folder: string): Promise<Site> =>
  siteOf(bookFrom(loadGarden(folder), null, NOTHING_KEPT));

/** The site of a garden given as texts by path, in memory. */
export async function siteOfTexts(
  texts: Readonly<Record<string, string>>,
  today: Day | null = null,
  kept: Kept = NOTHING_KEPT,
): Promise<Site> {
  const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
  return siteOf(bookFrom(linkGarden(readGardenRecords(files), reference.crops), today, kept));
}

export const htmlPages = (site: Site): [string, string][] =>
  [...site].flatMap(([path, content]) => (path.endsWith('.html') ? [[path, String(content)] as [string, string]] : []));
