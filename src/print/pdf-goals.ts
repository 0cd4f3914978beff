import type * as PdfLib from 'pdf-lib';

/** Page from 1 of a place in the document (ISO 32000-1, 12.3.2.2). Throws Error when it names none. */
export type PageOf = (goal: PdfLib.PDFArray | undefined) => number;

export function pageFinder(lib: typeof PdfLib, document: PdfLib.PDFDocument): PageOf {
  const numbers = new Map(document.getPages().map(({ ref }, index) => [ref.tag, index + 1]));
  return (goal) => {
    const ref = goal?.get(0);
    const page = ref instanceof lib.PDFRef ? numbers.get(ref.tag) : undefined;
    if (page === undefined) throw new Error('invalid PDF: a goal of the outline or of a link has no page');
    return page;
  };
}

/** Page from 1 by the name that links within the document use. */
export function readGoals(
  lib: typeof PdfLib,
  document: PdfLib.PDFDocument,
  pageOf: PageOf,
): ReadonlyMap<string, number> {
  const goals = document.catalog.lookupMaybe(lib.PDFName.of('Dests'), lib.PDFDict);
  const names = goals?.keys() ?? [];
  return new Map(names.map((name) => [name.decodeText(), pageOf(goals?.lookupMaybe(name, lib.PDFArray))]));
}
