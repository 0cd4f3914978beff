import type * as PdfLib from 'pdf-lib';
import type { PageOf } from './pdf-goals.ts';

export interface OutlineEntry {
  readonly title: string;
  /** Page from 1. */
  readonly page: number;
  readonly below: readonly OutlineEntry[];
}

/** An entry as it stands in the file (ISO 32000-1, table 153). */
interface Item {
  readonly dict: PdfLib.PDFDict;
  readonly title: string;
  readonly below: readonly Item[];
}

/** The outline of a document; its titles are the headings given, see `trueTitle`. */
export function readOutline(
  lib: typeof PdfLib,
  document: PdfLib.PDFDocument,
  headings: ReadonlySet<string>,
  pageOf: PageOf,
): OutlineEntry[] {
  const entry = ({ dict, title, below }: Item): OutlineEntry => ({
    title: trueTitle(title, headings),
    page: pageOf(dict.lookupMaybe(lib.PDFName.of('Dest'), lib.PDFArray)),
    below: below.map(entry),
  });
  return itemsOf(lib, document).map(entry);
}

/** Writes the true titles into the outline of a document. */
export function mendOutline(lib: typeof PdfLib, document: PdfLib.PDFDocument, headings: ReadonlySet<string>): void {
  const mend = ({ dict, title, below }: Item): void => {
    const words = trueTitle(title, headings);
    if (words !== title) dict.set(lib.PDFName.of('Title'), lib.PDFHexString.fromText(words));
    below.forEach(mend);
  };
  itemsOf(lib, document).forEach(mend);
}

/**
 * The heading that a title stands for. Chromium leaves out the space where a heading breaks into lines, and writes the
 * words of one at the top of a page twice, since it paints them on the page before as well.
 */
function trueTitle(title: string, headings: ReadonlySet<string>): string {
  const letters = lettersOf(title);
  const stands = (heading: string): boolean => [1, 2].some((times) => lettersOf(heading).repeat(times) === letters);
  return headings.has(title) ? title : ([...headings].find(stands) ?? title);
}

const lettersOf = (words: string): string => words.replace(/\s+/g, '');

function itemsOf(lib: typeof PdfLib, document: PdfLib.PDFDocument): Item[] {
  const outline = document.catalog.lookupMaybe(lib.PDFName.of('Outlines'), lib.PDFDict);
  return outline ? itemsBelow(lib, outline) : [];
}

function itemsBelow(lib: typeof PdfLib, parent: PdfLib.PDFDict): Item[] {
  const items: Item[] = [];
  let dict = parent.lookupMaybe(lib.PDFName.of('First'), lib.PDFDict);
  while (dict) {
    const title = dict.lookup(lib.PDFName.of('Title'), lib.PDFString, lib.PDFHexString).decodeText();
    items.push({ dict, title: title.replace(/\s+/g, ' ').trim(), below: itemsBelow(lib, dict) });
    dict = dict.lookupMaybe(lib.PDFName.of('Next'), lib.PDFDict);
  }
  return items;
}
