import { parse, serialize } from 'parse5';
import { elementsUnder, headingsOf, theElement, wordsOf } from './markup.ts';
import { isWebAddress, relink } from './references.ts';

/** A paper that is carried out alone: the page as it is, but for links that lead nowhere from paper. */
export interface SinglePaper {
  readonly title: string;
  readonly html: string;
  readonly headings: ReadonlySet<string>;
}

export function singlePaper(html: string): SinglePaper {
  const document = parse(html);
  const titles = elementsUnder(document).filter(({ tagName }) => tagName === 'title');
  relink(theElement(document, 'body'), (href) => (isWebAddress(href) ? href : null));
  return { title: titles[0] ? wordsOf(titles[0]) : '', html: serialize(document), headings: headingsOf(document) };
}
