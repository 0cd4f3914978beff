import { parse } from 'parse5';
import { expect, test } from 'vitest';
import type { Leaf } from '../../src/print/leaf.ts';
import { attributeOf, type Element, elementsUnder, theElement, wordsOf } from '../../src/print/markup.ts';
import { notesBeside } from '../../src/print/notes-beside.ts';

const note = (title: string, words: number): string =>
  `<div class="note"><p class="note-title">${title}</p> <p>${'word '.repeat(words)}</p></div>`;

/** The classes and titles of what a spread's text holds, in order. */
function ordered(notes: string, finding = '<p class="finding">So it is.</p>'): string[] {
  const html = `<main><div class="spread"><div class="text">${finding}<p>Text.</p></div><div class="notes">${notes}</div></div></main>`;
  const section = theElement(parse(html), 'main');
  notesBeside([{ name: 'leaf', title: '', opens: true, pageRule: '', section } as Leaf]);
  const text = elementsUnder(section).find((one) => attributeOf(one, 'class') === 'text') as Element;
  return text.childNodes
    .filter((child): child is Element => 'attrs' in child)
    .map((one) => `${attributeOf(one, 'class') ?? one.tagName}: ${wordsOf(one).split(' ')[0]}`);
}

test('a short note stands behind the finding, a long one at the end of the text, and none is lost', () => {
  expect(ordered(note('Short', 40))).toEqual(['finding: So', 'notes: Short', 'p: Text.']);
  expect(ordered(note('Long', 60))).toEqual(['finding: So', 'p: Text.', 'notes-under: Long']);
  expect(ordered(note('One', 60) + note('Two', 10) + note('Three', 60))).toEqual([
    'finding: So',
    'notes: Two',
    'p: Text.',
    'notes-under: One',
  ]);
});

test('a text without a finding has its notes first', () =>
  expect(ordered(note('Short', 10), '')).toEqual(['notes: Short', 'p: Text.']));
