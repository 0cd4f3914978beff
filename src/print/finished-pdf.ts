import type { Day } from '../day.ts';
import { loadPdfLib } from './load-pdf-lib.ts';
import { mendOutline } from './pdf-outline.ts';
import { steadyTags } from './steady-tags.ts';

/** What a PDF says of itself. */
export interface PdfAbout {
  readonly title: string;
  readonly author: string;
  /** The program that made the pages. */
  readonly creator: string;
  /** BCP 47 tag. */
  readonly lang: string;
  /** The day of the book: the clock stays out, so that the same records give the same bytes. */
  readonly day: Day | null;
}

/** A printed PDF with its title, author, language and day, and the headings of its document as outline. */
export async function finishedPdf(
  pdf: Uint8Array,
  headings: ReadonlySet<string>,
  { title, author, creator, lang, day }: PdfAbout,
): Promise<Uint8Array> {
  const lib = await loadPdfLib();
  const document = await lib.PDFDocument.load(pdf, { updateMetadata: false });
  mendOutline(lib, document, headings);
  steadyTags(lib, document);
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setAuthor(author);
  document.setCreator(creator);
  document.setLanguage(lang);
  // A book without a season has no day; a PDF still wants a date.
  const date = new Date(`${day ?? '2000-01-01'}T00:00:00Z`);
  document.setCreationDate(date);
  document.setModificationDate(date);
  return document.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false });
}
