import { loadPdfLib } from './load-pdf-lib.ts';
import { pageFinder, readGoals } from './pdf-goals.ts';
import { type OutlineEntry, readOutline } from './pdf-outline.ts';

/** Where things stand in a printed document. */
export interface Places {
  readonly pages: number;
  readonly outline: readonly OutlineEntry[];
  /** Page from 1 by the name that links use. */
  readonly goals: ReadonlyMap<string, number>;
}

/** Reads a PDF that was printed from a document with these headings. */
export async function placesIn(pdf: Uint8Array, headings: ReadonlySet<string>): Promise<Places> {
  const lib = await loadPdfLib();
  const document = await lib.PDFDocument.load(pdf, { updateMetadata: false });
  const pageOf = pageFinder(lib, document);
  return {
    pages: document.getPageCount(),
    outline: readOutline(lib, document, headings, pageOf),
    goals: readGoals(lib, document, pageOf),
  };
}
