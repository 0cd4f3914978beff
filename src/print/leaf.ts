import { parse } from 'parse5';
import type { Page } from '../book/page.ts';
import {
  attributeOf,
  type Element,
  element,
  elementsUnder,
  setAttribute,
  takeOut,
  theElement,
  wordsOf,
} from './markup.ts';
import { isWebAddress, relink, renameIds } from './references.ts';

/** A page of the website, cut out for the one document of the whole book. */
export interface Leaf {
  /** Name of its section and of its page rule; ids inside begin with it. */
  readonly name: string;
  readonly title: string;
  /** True for the first page of a chapter, false for one below it, such as an earlier season. */
  readonly opens: boolean;
  /** Its own page rule (size, running foot) under its name. */
  readonly pageRule: string;
  readonly section: Element;
}

/** How leaves follow each other: each on a fresh page with its own foot, or one running on after the other under the book's. */
export type Following = 'fresh-page' | 'running-on';

/** The leaves of the pages that belong into the book, in reading order; papers of their own are left out. */
export function leavesOf(pages: readonly Page[], htmlOf: (page: Page) => string, following: Following): Leaf[] {
  const bound = pages.filter(({ form }) => form === undefined);
  const names = new Map(bound.map((page) => [`${page.path}index.html`, leafName(page)]));
  return bound.map((page, index) => {
    const opens = page.listed || page.chapter !== bound[index - 1]?.chapter;
    return cutOut(htmlOf(page), page, { opens, names, following });
  });
}

/** The frame of a page has a rule of this name, whose foot is the book's. */
const SHARED_PAGE = 'book';

/** Slugs hold small letters, digits and hyphens, so that underscores keep the names of leaves apart. */
const leafName = ({ path }: Page): string => ['leaf', ...path.split('/').filter(Boolean)].join('_');

interface Cut {
  readonly opens: boolean;
  readonly names: ReadonlyMap<string, string>;
  readonly following: Following;
}

function cutOut(html: string, page: Page, { opens, names, following }: Cut): Leaf {
  const document = parse(html);
  const main = theElement(document, 'main');
  const name = leafName(page);
  // What search engines read is not for paper.
  for (const one of elementsUnder(main)) if (one.tagName === 'script') takeOut(one);
  const mainId = attributeOf(main, 'id');
  const rename = (leaf: string, id: string): string => (id === mainId ? leaf : `${leaf}--${id}`);
  renameIds(main, (id) => rename(name, id));
  relink(main, (href) => {
    if (isWebAddress(href)) return href;
    const { pathname, hash } = new URL(href, `file:///${page.path}index.html`);
    const leaf = names.get(decodeURIComponent(pathname.slice(1)));
    if (leaf === undefined) return null;
    return `#${hash ? rename(leaf, decodeURIComponent(hash.slice(1))) : leaf}`;
  });
  if (!opens) lowerHeadings(main);
  const css = wordsOf(theElement(document, 'style'));
  const runsOn = following === 'running-on';
  // A section that runs on may begin at the foot of the page before its title's.
  if (runsOn) setAttribute(theElement(main, 'h1'), 'id', name);
  const paper = runsOn ? SHARED_PAGE : name;
  const classes = ['leaf', `chapter-${page.chapter}`, ...(opens ? ['opens'] : [])];
  return {
    name,
    title: wordsOf(theElement(main, 'h1')),
    opens,
    pageRule: runsOn ? css : namedPageRule(css, name),
    section: element(
      'section',
      { ...(runsOn ? {} : { id: name }), class: classes.join(' '), style: `page: ${paper}` },
      main.childNodes,
    ),
  };
}

/** A page below a chapter keeps its look; the outline of the PDF puts it one step further in. */
function lowerHeadings(main: Element): void {
  for (const heading of elementsUnder(main)) {
    const level = /^h([1-5])$/.exec(heading.tagName)?.[1];
    if (level) setAttribute(heading, 'aria-level', String(Number(level) + 1));
  }
}

/** The rules of the frame for `@page` or a side of it, for the pages of one name alone. */
const namedPageRule = (css: string, name: string): string => css.replace(/@page\b(?=\s*[:{])/g, `@page ${name}`);
