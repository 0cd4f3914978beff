import { defaultTreeAdapter, parse, serialize } from 'parse5';
import { attributeOf, type Element, element, elementsUnder, hasClass, type Parent, text } from './markup.ts';

const { appendChild, insertBefore } = defaultTreeAdapter;

/** Page numbers and empty pages, as the last printing gave them. */
export interface Folios {
  /** Page number from 1 by the name of what stands there. */
  readonly numbers: ReadonlyMap<string, number>;
  /** Names of the leaves before which a page stays empty, so that they open on the right. */
  readonly blankBefore: ReadonlySet<string>;
}

/** Puts an empty folio behind each entry of the contents. */
export function addFolioSpaces(root: Parent): void {
  for (const link of entriesOf(root)) {
    const list = link.parentNode;
    const next = list?.childNodes[list.childNodes.indexOf(link) + 1];
    const folio = element('span', { class: 'folio', 'data-of': (attributeOf(link, 'href') ?? '').slice(1) });
    if (list && next) insertBefore(list, folio, next);
    else if (list) appendChild(list, folio);
  }
}

/** Entries of the lists of contents: the first link into the book of each line. */
function entriesOf(root: Parent): Element[] {
  const lists = elementsUnder(root).filter((list) => hasClass(list, 'contents') || hasClass(list, 'matter'));
  const lines = lists.flatMap(elementsUnder).filter(({ tagName }) => tagName === 'li');
  return lines.flatMap((line) => {
    const link = elementsUnder(line).find((one) => one.tagName === 'a' && attributeOf(one, 'href')?.startsWith('#'));
    return link ? [link] : [];
  });
}

/** The book with its page numbers written into the contents and its empty pages put in. */
export function withFolios(book: string, { numbers, blankBefore }: Folios): string {
  const document = parse(book);
  let last: Element | null = null;
  for (const one of elementsUnder(document)) {
    const goal = hasClass(one, 'folio') ? attributeOf(one, 'data-of') : null;
    const number = goal === null ? undefined : numbers.get(goal);
    if (number !== undefined) appendChild(one, text(String(number)));
    if (!hasClass(one, 'leaf')) continue;
    // The empty page belongs to the leaf before it and bears its foot.
    if (last && blankBefore.has(attributeOf(one, 'id') ?? '')) appendChild(last, emptyPage());
    last = one;
  }
  return serialize(document);
}

const emptyPage = (): Element => element('div', { class: 'blank', 'aria-hidden': 'true' });

/** What the contents of a book name, in order, each once. */
export const contentsGoals = (book: string): string[] => [
  ...new Set(
    elementsUnder(parse(book)).flatMap((one) => (hasClass(one, 'folio') ? (attributeOf(one, 'data-of') ?? []) : [])),
  ),
];
