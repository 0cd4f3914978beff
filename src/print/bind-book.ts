import { contentsGoals, type Folios, withFolios } from './contents-folios.ts';
import { foliosFrom, isSettled } from './folios.ts';
import type { Leaf } from './leaf.ts';
import { headingsOf } from './markup.ts';
import { placesIn } from './pdf-places.ts';
import { type Binding, wholeBook } from './whole-book.ts';

/** Once to learn the page numbers, once with them, and once more should they have moved. */
const MOST_PRINTINGS = 3;
const NOTHING_KNOWN: Folios = { numbers: new Map(), blankBefore: new Set() };

export interface Bound {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly headings: ReadonlySet<string>;
  readonly printings: number;
}

type PrintBook = (html: string) => Promise<Uint8Array>;

/** The whole book printed with its contents' page numbers, each of which the last printing confirmed. */
export async function bindBook(leaves: readonly Leaf[], binding: Binding, print: PrintBook): Promise<Bound> {
  const html = wholeBook(leaves, binding);
  const goals = contentsGoals(html);
  const headings = new Set(leaves.flatMap(({ section }) => [...headingsOf(section)]));
  const openings = leaves.filter(({ opens }) => opens);
  const onTheRight = binding.edition === 'community';
  let folios = NOTHING_KNOWN;
  for (let printings = 1; printings <= MOST_PRINTINGS; printings += 1) {
    const pdf = await print(withFolios(html, folios));
    const places = await placesIn(pdf, headings);
    const next = foliosFrom(places, openings, folios.blankBefore, onTheRight);
    if (isSettled(folios, next, goals)) return { pdf, pages: places.pages, headings, printings };
    folios = next;
  }
  throw new Error(`invalid contents: page numbers still moved after ${MOST_PRINTINGS} printings`);
}
