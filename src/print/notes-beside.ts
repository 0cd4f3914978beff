import type { Leaf } from './leaf.ts';
import { type Element, element, elementsUnder, hasClass, takeOut, wordsOf } from './markup.ts';

/** Notes of more words stand under the text, over its whole width: in the narrow margin they would outrun it. */
const MOST_WORDS_IN_MARGIN = 45;

/**
 * Puts the notes of each spread into its text: short ones behind the finding, where a stylesheet can hang them in the
 * margin and long notes no longer hold up the text that follows, long ones at its end.
 */
export function notesBeside(leaves: readonly Leaf[]): void {
  for (const { section } of leaves) {
    for (const spread of elementsUnder(section).filter((one) => hasClass(one, 'spread'))) {
      const parts = elementsUnder(spread);
      const text = parts.find((one) => hasClass(one, 'text'));
      const notes = parts.find((one) => hasClass(one, 'notes'));
      if (text && notes) move(text, notes);
    }
  }
}

function move(text: Element, notes: Element): void {
  takeOut(notes);
  const all = elementsUnder(notes).filter((one) => hasClass(one, 'note'));
  const long = all.filter(isLong);
  for (const note of long) takeOut(note);
  const finding = text.childNodes.findIndex((child) => 'attrs' in child && hasClass(child, 'finding'));
  if (long.length < all.length) putAt(text, finding + 1, notes);
  if (long.length > 0) putAt(text, text.childNodes.length, element('div', { class: 'notes-under' }, long));
}

function putAt(parent: Element, index: number, child: Element): void {
  parent.childNodes.splice(index, 0, child);
  child.parentNode = parent;
}

const isLong = (note: Element): boolean => wordsOf(note).split(' ').length > MOST_WORDS_IN_MARGIN;
