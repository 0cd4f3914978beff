import { defaultTreeAdapter, html, type DefaultTreeAdapterTypes as Tree } from 'parse5';

export type Element = Tree.Element;
export type Parent = Tree.ParentNode;

const { isElementNode, isTextNode, appendChild, createElement } = defaultTreeAdapter;

/** Every element below a node, in the order of the document. */
export const elementsUnder = (parent: Parent): Element[] =>
  parent.childNodes.filter(isElementNode).flatMap((element) => [element, ...elementsUnder(element)]);

export const attributeOf = (element: Element, name: string): string | null =>
  element.attrs.find((attribute) => attribute.name === name)?.value ?? null;

export function setAttribute(element: Element, name: string, value: string): void {
  const known = element.attrs.find((attribute) => attribute.name === name);
  if (known) known.value = value;
  else element.attrs.push({ name, value });
}

export function removeAttribute(element: Element, name: string): void {
  element.attrs = element.attrs.filter((attribute) => attribute.name !== name);
}

export const hasClass = (element: Element, name: string): boolean =>
  (attributeOf(element, 'class') ?? '').split(/\s+/).includes(name);

/** Takes an element out of its document. */
export const takeOut = (one: Element): void => defaultTreeAdapter.detachNode(one);

/** The words inside a node, spaces and line ends as single spaces. */
export const wordsOf = (node: Tree.Node): string => textUnder(node).replace(/\s+/g, ' ').trim();

function textUnder(node: Tree.Node): string {
  if (isTextNode(node)) return node.value;
  if (node.nodeName === 'br') return ' ';
  return 'childNodes' in node ? node.childNodes.map(textUnder).join('') : '';
}

/** The words of every heading below a node. */
export const headingsOf = (parent: Parent): ReadonlySet<string> =>
  new Set(elementsUnder(parent).flatMap((one) => (/^h[1-6]$/.test(one.tagName) ? [wordsOf(one)] : [])));

/** A new HTML element with its attributes and what stands in it. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string>>,
  children: readonly Tree.ChildNode[] = [],
): Element {
  const attrs = Object.entries(attributes).map(([key, value]) => ({ name: key, value }));
  const made = createElement(name, html.NS.HTML, attrs);
  for (const child of children) appendChild(made, child);
  return made;
}

export const text = (value: string): Tree.TextNode => defaultTreeAdapter.createTextNode(value);

/** The one element of a document with this name. Throws Error when there is none: a fault of the template. */
export function theElement(parent: Parent, name: string): Element {
  const found = elementsUnder(parent).find(({ tagName }) => tagName === name);
  if (!found) throw new Error(`invalid page: it has no <${name}>`);
  return found;
}
