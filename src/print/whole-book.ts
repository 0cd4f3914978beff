import { defaultTreeAdapter, serialize } from 'parse5';
import { addFolioSpaces } from './contents-folios.ts';
import type { Leaf } from './leaf.ts';
import { element, text } from './markup.ts';

export interface Binding {
  readonly title: string;
  /** BCP 47 tag. */
  readonly lang: string;
  readonly edition: string;
  /** Stylesheets below the site, in order. */
  readonly styles: readonly string[];
}

/** Nothing from elsewhere and no script; the frame of a page says the same. */
const POLICY = "default-src 'none'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:";

/** One HTML document of all leaves, with a space for a page number beside each entry of the contents. */
export function wholeBook(leaves: readonly Leaf[], { title, lang, edition, styles }: Binding): string {
  const sections = leaves.map(({ section }) => section);
  const main = element('main', {}, sections);
  addFolioSpaces(main);
  const head = element('head', {}, [
    element('meta', { charset: 'utf-8' }),
    element('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    element('title', {}, [text(title)]),
    ...styles.map((href) => element('link', { rel: 'stylesheet', href })),
    element('style', {}, [text(leaves.map(({ pageRule }) => pageRule).join('\n'))]),
  ]);
  const body = element('body', { class: `whole edition-${edition}` }, [main]);
  const document = defaultTreeAdapter.createDocument();
  defaultTreeAdapter.setDocumentType(document, 'html', '', '');
  defaultTreeAdapter.appendChild(document, element('html', { lang }, [head, body]));
  return serialize(document);
}
