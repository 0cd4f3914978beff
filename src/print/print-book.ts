import { parse } from 'parse5';
import type { Book } from '../book/book.ts';
import type { Page } from '../book/page.ts';
import { bindBook } from './bind-book.ts';
import { cautionsOnce } from './cautions-once.ts';
import { finishedPdf } from './finished-pdf.ts';
import { leavesOf } from './leaf.ts';
import { elementsUnder, hasClass, wordsOf } from './markup.ts';
import { notesBeside } from './notes-beside.ts';
import { paperName } from './paper-name.ts';
import { placesIn } from './pdf-places.ts';
import type { Print } from './printer.ts';
import { singlePaper } from './single-paper.ts';

export const WHOLE_BOOK = 'handbook.pdf';
/** The style of the whole book alone, as a file below the site that the browser is shown. */
export const WHOLE_STYLE = 'assets/whole.css';

export interface PrintJob {
  readonly book: Book;
  /** The website's files. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  /** Name and version of this program. */
  readonly creator: string;
  readonly print: Print;
}

export interface Printed {
  /** Below the folder of papers. */
  readonly file: string;
  readonly pdf: Uint8Array;
  readonly pages: number;
}

/** Prints the whole book, then each paper to carry out, and hands over one file after the other. */
export async function* printBook(job: PrintJob): AsyncGenerator<Printed> {
  yield await printWhole(job);
  const papers = job.book.pages.filter(({ form }) => form !== undefined);
  papersApart(papers);
  for (const page of papers) yield await printPaper(job, page);
}

async function printWhole(job: PrintJob): Promise<Printed> {
  const { about } = job.book.facts.garden;
  const binding = {
    title: bookTitle(job),
    lang: about.locale,
    edition: about.edition,
    styles: ['assets/book.css', WHOLE_STYLE],
  };
  const isHome = about.edition === 'home';
  const bound = isHome ? job.book.pages.filter(({ earlier }) => earlier !== true) : job.book.pages;
  const leaves = leavesOf(bound, (page) => htmlOf(job, page), isHome ? 'running-on' : 'fresh-page');
  if (isHome) {
    cautionsOnce(leaves);
    notesBeside(leaves);
  }
  const { pdf, pages, headings } = await bindBook(leaves, binding, (html) =>
    job.print(html, 'handbook.html', job.files),
  );
  return { file: WHOLE_BOOK, pdf: await finished(job, pdf, headings, binding.title), pages };
}

async function printPaper(job: PrintJob, page: Page): Promise<Printed> {
  const { title, html, headings } = singlePaper(htmlOf(job, page));
  const pdf = await job.print(html, `${page.path}index.html`, job.files);
  const { pages } = await placesIn(pdf, headings);
  return { file: paperName(page), pdf: await finished(job, pdf, headings, title), pages };
}

function finished(
  { book, creator }: PrintJob,
  pdf: Uint8Array,
  headings: ReadonlySet<string>,
  title: string,
): Promise<Uint8Array> {
  const { name: author, locale: lang } = book.facts.garden.about;
  return finishedPdf(pdf, headings, { title, author, creator, lang, day: book.facts.today });
}

/** Text of a page as rendered. Throws Error when the site has none: a fault of the program. */
function htmlOf({ files }: PrintJob, { path }: Page): string {
  const html = files.get(`${path}index.html`);
  if (typeof html !== 'string') throw new Error(`invalid site: it has no page ${path}index.html`);
  return html;
}

/** The garden, and the book's name as the head of its pages gives it. */
function bookTitle(job: PrintJob): string {
  const [first] = job.book.pages;
  const heads = first ? elementsUnder(parse(htmlOf(job, first))).filter((one) => hasClass(one, 'head-book')) : [];
  return [job.book.facts.garden.about.name, ...heads.map(wordsOf)].join(' – ');
}

/** Throws Error when two papers would be written over each other: a fault of their pages' paths. */
function papersApart(papers: readonly Page[]): void {
  const names = papers.map(paperName);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new Error(`invalid papers: two pages would both be ${twice}`);
}
