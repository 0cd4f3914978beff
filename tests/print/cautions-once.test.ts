import { parse } from 'parse5';
import { expect, test } from 'vitest';
import { cautionsOnce } from '../../src/print/cautions-once.ts';
import { leavesOf } from '../../src/print/leaf.ts';
import { attributeOf, type Element, elementsUnder, hasClass, wordsOf } from '../../src/print/markup.ts';
import { wholeBook } from '../../src/print/whole-book.ts';
import { htmlOf, madeBook } from './printed-gardens.ts';

const ids = (root: Element): string[] =>
  elementsUnder(root)
    .filter((one) => hasClass(one, 'caution'))
    .map((one) => (attributeOf(one, 'id') ?? '').replace(/^.*--/, ''));

test('a home book prints every caution in full, once, and names it with its chapter where it stands again', async () => {
  const made = await madeBook('tests/books/gardens/day-zero');
  const leaves = leavesOf(made.book.pages, htmlOf(made), 'running-on');
  const before = leaves.map(({ section }) => ids(section));
  const twice = before.flat().filter((id, index, all) => all.indexOf(id) < index);
  expect(twice.length).toBeGreaterThan(5);
  cautionsOnce(leaves);
  const after = leaves.map(({ section }) => ids(section));
  expect([...after.flat()].sort()).toEqual([...new Set(before.flat())].sort());
  for (const [index, { section }] of leaves.entries()) {
    const again = (before[index] ?? []).filter((id) => !(after[index] ?? []).includes(id));
    const lines = elementsUnder(section).filter((one) => hasClass(one, 'cautions-before'));
    expect(lines).toHaveLength(again.length > 0 ? 1 : 0);
    if (!lines[0]) continue;
    const links = elementsUnder(lines[0]).filter(({ tagName }) => tagName === 'a');
    expect(links.map((one) => (attributeOf(one, 'href') ?? '').replace(/^.*--/, ''))).toEqual(again);
    expect(wordsOf(lines[0])).toMatch(/^Take care here too: .+, chapter \d+.*\.$/);
  }
  const html = wholeBook(leaves, { title: 'T', lang: 'en-GB', edition: 'home', styles: [] });
  const all = elementsUnder(parse(html));
  const named = new Set(all.flatMap((one) => attributeOf(one, 'id') ?? []));
  const links = all.filter(({ tagName }) => tagName === 'a').map((one) => attributeOf(one, 'href') ?? '#');
  expect(links.filter((href) => href.startsWith('#') && href !== '#' && !named.has(href.slice(1)))).toEqual([]);
});
