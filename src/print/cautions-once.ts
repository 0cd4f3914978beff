import type { Leaf } from './leaf.ts';
import { attributeOf, type Element, element, elementsUnder, hasClass, takeOut, text, wordsOf } from './markup.ts';

/**
 * Of a book read from cover to cover each caution stands in full at its first step; where it stands again, a line names
 * it with the chapter it was in. The line begins with the words the frame keeps in `data-before`. The chapter of cautions
 * thus becomes a list of where they stand, and is no longer pointed at.
 */
export function cautionsOnce(leaves: readonly Leaf[]): void {
  const seen = new Map<string, Seen>();
  for (const { name, section } of leaves) {
    for (const one of elementsUnder(section).filter((inner) => hasClass(inner, 'in-full'))) takeOut(one);
    for (const list of elementsUnder(section).filter((one) => hasClass(one, 'cautions'))) {
      const again = cautionsIn(list).flatMap((caution) => {
        const id = attributeOf(caution, 'id')?.slice(`${name}--`.length) ?? '';
        const before = seen.get(id);
        if (!before) seen.set(id, { anchor: attributeOf(caution, 'id') ?? '', chapter: chapterOf(section) });
        return before ? [{ caution, ...before }] : [];
      });
      if (again.length > 0) refer(list, again);
    }
  }
}

interface Seen {
  /** Id of the caution where it stands in full. */
  readonly anchor: string;
  /** "Chapter 3", or nothing outside the chapters. */
  readonly chapter: string;
}

type Again = Seen & { readonly caution: Element };

const cautionsIn = (list: Element): Element[] => elementsUnder(list).filter((one) => hasClass(one, 'caution'));

const chapterOf = (section: Element): string => {
  const number = elementsUnder(section).find((one) => hasClass(one, 'number'));
  return number ? wordsOf(number) : '';
};

function refer(list: Element, again: readonly Again[]): void {
  const entries = again.flatMap(({ caution, anchor, chapter }, index) => {
    const topic = elementsUnder(caution).find(({ tagName }) => tagName === 'strong');
    takeOut(caution);
    const words = topic ? wordsOf(topic).replace(/\.$/, '') : anchor;
    const link = element('a', { href: `#${anchor}` }, [text(words)]);
    return [...(index > 0 ? [text('; ')] : []), link, ...(chapter ? [text(`, ${chapter.toLowerCase()}`)] : [])];
  });
  const before = attributeOf(list, 'data-before') ?? '';
  const line = element('p', { class: 'small cautions-before' }, [text(`${before} `), ...entries, text('.')]);
  list.childNodes.push(line);
  line.parentNode = list;
}
