import type { Leaf } from './leaf.ts';
import { type Element, elementsUnder, hasClass, takeOut } from './markup.ts';

/**
 * Puts the notes of each spread into its text, behind the finding. A stylesheet can then hang them in the margin, where
 * long notes no longer hold up the text that follows.
 */
export function notesBeside(leaves: readonly Leaf[]): void {
  for (const { section } of leaves) {
    for (const spread of elementsUnder(section).filter((one) => hasClass(one, 'spread'))) {
      const parts = elementsUnder(spread);
      const text = parts.find((one) => hasClass(one, 'text'));
      const notes = parts.find((one) => hasClass(one, 'notes'));
      if (text && notes) moveBehindFinding(text, notes);
    }
  }
}

function moveBehindFinding(text: Element, notes: Element): void {
  takeOut(notes);
  const finding = text.childNodes.findIndex((child) => 'attrs' in child && hasClass(child, 'finding'));
  text.childNodes.splice(finding + 1, 0, notes);
  notes.parentNode = text;
}
