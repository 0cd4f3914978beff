import { Config, type HtmlElement, Parser } from 'html-validate';

/** One page as its reader meets it. Texts have single blanks, and no drawing's own words. */
export interface Reading {
  readonly title: string;
  /** The answer, first sentence of the page. */
  readonly findings: readonly string[];
  /** Everything that stands as sentences: paragraphs, captions of drawings, cautions. */
  readonly paragraphs: readonly string[];
  readonly figureWords: readonly string[];
  /** The body of each table, row by row, cell by cell, headings of rows among them. */
  readonly tables: readonly (readonly (readonly string[])[])[];
  readonly noteTitles: readonly string[];
  /** Every text node's own text, blanks at its ends kept. */
  readonly texts: readonly string[];
  /** All of the page: its notes, its cautions, its navigation left out. */
  readonly all: string;
  /** The same without its cautions. */
  readonly uncautioned: string;
  /** What stands in the column of text, without notes and cautions. */
  readonly body: string;
}

/** Paragraphs that are labels, no sentences. */
const LABELS = ['note-title', 'number', 'chart-title'];

const parser = new Parser(await Config.defaultConfig().resolve());

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', nbsp: '\u00a0' };
const decoded = (text: string): string =>
  text
    .replace(/&#(\d+);/g, (_, code) => String.fromCodePoint(Number(code)))
    .replace(/&(amp|lt|gt|quot|nbsp);/g, (_, name) => NAMED[name] ?? '');

const plain = (text: string): string => decoded(text).replace(/\s+/g, ' ').trim();

/** Blanks at the edges of blocks, which the browser sets apart by itself. */
const apart = (html: string): string =>
  html.replace(/<\/?(?:p|h[1-6]|li|dt|dd|td|th|tr|caption|figcaption|section|div|dl|ol|ul|table)\b[^>]*>/g, ' $& ');

/** Reads one page of a built site. */
export function readPage(html: string): Reading {
  const bare = html.replace(/<svg.*?<\/svg>/gs, '').replace(/<script.*?<\/script>/gs, '');
  const main = parser.parseHtml(apart(bare)).querySelector('main');
  if (!main) throw new Error('a page without a main part');
  const texts = (selector: string): string[] => main.querySelectorAll(selector).map((part) => plain(part.textContent));
  return {
    title: texts('h1')[0] ?? '',
    findings: texts('.finding'),
    paragraphs: main
      .querySelectorAll('p')
      .filter(({ classList }) => !LABELS.some((label) => classList.contains(label)))
      .map((part) => plain(part.textContent))
      .filter((text) => text !== ''),
    figureWords: texts('figcaption'),
    tables: main.querySelectorAll('table').map(bodyOf),
    noteTitles: texts('.note-title'),
    texts: textNodes(main),
    all: plain(main.textContent),
    uncautioned: plain(textWithout(main, ['cautions'])),
    body: plain(textWithout(main, ['notes', 'cautions'])),
  };
}

const bodyOf = (table: HtmlElement): string[][] =>
  table.querySelectorAll('tbody tr').map((row) => row.childElements.map((cell) => plain(cell.textContent)));

const textNodes = (part: HtmlElement): string[] =>
  part.childNodes.flatMap((node) => ('tagName' in node ? textNodes(node as HtmlElement) : [decoded(node.textContent)]));

const textWithout = (part: HtmlElement, classes: readonly string[]): string =>
  part.childNodes
    .map((node) => {
      if (!('tagName' in node)) return node.textContent;
      const element = node as HtmlElement;
      return classes.some((name) => element.classList.contains(name)) ? '' : textWithout(element, classes);
    })
    .join('');

export const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'.,/-]*/gu) ?? [];
