import { parse } from 'parse5';
import { beforeAll, describe, expect, test } from 'vitest';
import { leavesOf } from '../../src/print/leaf.ts';
import { attributeOf, type Element, elementsUnder, hasClass, theElement, wordsOf } from '../../src/print/markup.ts';
import { wholeBook } from '../../src/print/whole-book.ts';
import { htmlOf, madeBook } from './printed-gardens.ts';

const LONG = 120_000;
const FOLDERS = ['data/garden', 'tests/books/gardens/us-letter', 'tests/books/gardens/day-zero'];

async function assembled(folder: string): Promise<{ elements: Element[]; sections: Element[] }> {
  const made = await madeBook(folder);
  const leaves = leavesOf(made.book.pages, htmlOf(made), 'fresh-page');
  const html = wholeBook(leaves, { title: 'A title <b>', lang: 'en-GB', edition: 'home', styles: ['assets/book.css'] });
  const elements = elementsUnder(parse(html));
  return { elements, sections: elements.filter((one) => hasClass(one, 'leaf')) };
}

describe.each(FOLDERS)('the whole book of %s', (folder) => {
  beforeAll(() => madeBook(folder), LONG);

  test('holds every page of the book once, in order, with all its words, and no paper to carry out', async () => {
    const made = await madeBook(folder);
    const { sections } = await assembled(folder);
    const bound = made.book.pages.filter(({ form }) => form === undefined);
    expect(bound.length).toBeLessThan(made.book.pages.length);
    const words = bound.map((page) => wordsWithoutScript(htmlOf(made)(page)));
    expect(sections.map(wordsOf)).toEqual(words);
  });

  test('has each id once, and a target for every name it uses', async () => {
    const { elements } = await assembled(folder);
    const ids = elements.flatMap((one) => attributeOf(one, 'id') ?? []);
    expect(ids.length).toBeGreaterThan(20);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const used = elements.flatMap(namesUsed);
    expect(used.length).toBeGreaterThan(20);
    expect(used.filter((name) => !ids.includes(name))).toEqual([]);
  });

  test('has links to itself and to the web, and no others; no script, and nothing from elsewhere', async () => {
    const { elements } = await assembled(folder);
    const links = elements.flatMap((one) => (one.tagName === 'a' ? (attributeOf(one, 'href') ?? []) : []));
    expect(links.length).toBeGreaterThan(9);
    expect(links.filter((href) => !/^(#|https?:\/\/)/.test(href))).toEqual([]);
    const names = elements.map(({ tagName }) => tagName);
    expect(names.filter((name) => ['script', 'iframe', 'img', 'object'].includes(name))).toEqual([]);
    const styles = elements.flatMap((one) => (one.tagName === 'link' ? (attributeOf(one, 'href') ?? []) : []));
    expect(styles).toEqual(['assets/book.css']);
  });

  test('keeps the foot and the paper of every page under its own name', async () => {
    const made = await madeBook(folder);
    const { elements, sections } = await assembled(folder);
    const rules = wordsOf(elements.find(({ tagName }) => tagName === 'style') as Element);
    const bound = made.book.pages.filter(({ form }) => form === undefined);
    for (const [index, page] of bound.entries()) {
      const name = attributeOf(sections[index] as Element, 'id') ?? '';
      const foot = elementsUnder(parse(htmlOf(made)(page))).find((one) => hasClass(one, 'foot')) as Element;
      const rule = rules.split('@page ').find((text) => text.startsWith(`${name} {`)) ?? '';
      expect(rule).toContain(`size: ${made.book.facts.garden.about.paper};`);
      expect(rule).toContain(`"${wordsOf(foot)}"`);
      expect(attributeOf(sections[index] as Element, 'style')).toBe(`page: ${name}`);
    }
    const own = rules.split('@page ').filter((text) => text.trim() !== '' && !text.startsWith('book {'));
    expect(own).toHaveLength(bound.length);
  });

  test('runs on under one foot when it is asked to, each title a goal of its own', async () => {
    const made = await madeBook(folder);
    const leaves = leavesOf(made.book.pages, htmlOf(made), 'running-on');
    expect(leaves.length).toBeGreaterThan(5);
    for (const { name, section, pageRule } of leaves) {
      expect(attributeOf(section, 'style')).toBe('page: book');
      expect(attributeOf(section, 'id')).toBeNull();
      expect(attributeOf(theElement(section, 'h1'), 'id')).toBe(name);
      expect(pageRule).toMatch(/@page book \{ @bottom-left \{ content: "[^"]*records to[^"]*"/);
      expect(pageRule).not.toMatch(/@page book[^}]* page [0-9a-f]{4}/);
    }
  });
});

test('an earlier season keeps its look and stands a step further in; the title is text, not markup', async () => {
  const { elements, sections } = await assembled('data/garden');
  const opening = sections.filter((one) => hasClass(one, 'opens'));
  expect(opening.length).toBeGreaterThan(9);
  expect(sections.length).toBeGreaterThan(opening.length);
  for (const section of sections) {
    const level = hasClass(section, 'opens') ? null : '2';
    expect(attributeOf(theElement(section, 'h1'), 'aria-level')).toBe(level);
  }
  expect(wordsOf(theElement(elements[0]?.parentNode ?? parse(''), 'title'))).toBe('A title <b>');
});

function wordsWithoutScript(html: string): string {
  const main = theElement(parse(html), 'main');
  for (const one of elementsUnder(main)) if (one.tagName === 'script') one.childNodes = [];
  return wordsOf(main);
}

/** Names of other elements in links, references of drawings and labels. */
function namesUsed(one: Element): string[] {
  return one.attrs.flatMap(({ name, value }) => {
    if (name === 'href') return value.startsWith('#') ? [value.slice(1)] : [];
    if (['aria-labelledby', 'aria-describedby', 'headers', 'for'].includes(name)) return value.split(' ');
    return [...value.matchAll(/url\(['"]?#([^'")]+)/g)].map(([, id]) => id ?? '');
  });
}
