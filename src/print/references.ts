import { attributeOf, type Element, elementsUnder, removeAttribute, setAttribute } from './markup.ts';

/** Attributes that hold ids of the same document, several with spaces between (HTML, WAI-ARIA 1.2). */
const ID_LISTS = [
  'aria-labelledby',
  'aria-describedby',
  'aria-controls',
  'aria-owns',
  'aria-details',
  'headers',
  'for',
];

/** Gives each id below a node, and whatever names it there, another name. Links (`a`) are left to `relink`. */
export function renameIds(root: Element, rename: (id: string) => string): void {
  for (const element of [root, ...elementsUnder(root)]) {
    for (const attribute of element.attrs) {
      const { name, value } = attribute;
      if (name === 'id') attribute.value = rename(value);
      else if (ID_LISTS.includes(name)) attribute.value = value.split(/\s+/).filter(Boolean).map(rename).join(' ');
      else if (name === 'href' && element.tagName !== 'a' && value.startsWith('#'))
        attribute.value = `#${rename(value.slice(1))}`;
      else
        attribute.value = value.replace(
          /url\((['"]?)#([^'")]+)\1\)/g,
          (_, quote, id) => `url(${quote}#${rename(id)}${quote})`,
        );
    }
  }
}

/** Gives each link below a node another address; null leaves its words and takes the link away. */
export function relink(root: Element, addressOf: (href: string) => string | null): void {
  for (const element of elementsUnder(root)) {
    const href = element.tagName === 'a' ? attributeOf(element, 'href') : null;
    if (href === null) continue;
    const address = addressOf(href);
    if (address !== null) setAttribute(element, 'href', address);
    else for (const name of ['href', 'download', 'aria-current']) removeAttribute(element, name);
  }
}

/** True for an address of the web, which stays a link on paper that is read on a screen. */
export const isWebAddress = (href: string): boolean => /^https?:\/\//i.test(href);
