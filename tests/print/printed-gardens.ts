import { readFileSync } from 'node:fs';
import type { Book } from '../../src/book/book.ts';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { bookOf, siteOf } from '../../src/cli/make-book.ts';
import type { Garden } from '../../src/garden/garden.ts';
import { type Printed, printBook, WHOLE_STYLE } from '../../src/print/print-book.ts';
import { openPrinter } from '../../src/print/printer.ts';
import { createDraw } from '../../src/site/draw.ts';
import { keptForTests } from '../site/kept-for-tests.ts';

export interface MadeBook {
  readonly book: Book;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

const made = new Map<string, Promise<MadeBook>>();

async function make(folder: string, about: Partial<Garden['about']>): Promise<MadeBook> {
  const loaded = loadGarden(folder);
  if (!loaded.garden) throw new Error(`invalid test garden: ${folder}`);
  const garden = { ...loaded.garden, about: { ...loaded.garden.about, ...about } };
  const kept = keptForTests(folder, JSON.stringify(about));
  const book = bookOf(loaded, garden, null, kept);
  const site = await siteOf(book, createDraw(kept), '0.0.0', 'printer');
  kept.save();
  return { book, files: new Map([...site, [WHOLE_STYLE, readFileSync('layouts/whole.css')]]) };
}

/** Book and files of a garden's folder, made once; `about` stands in for some of the garden's own settings. */
export function madeBook(folder: string, about: Partial<Garden['about']> = {}): Promise<MadeBook> {
  const key = JSON.stringify([folder, about]);
  const found = made.get(key) ?? make(folder, about);
  made.set(key, found);
  return found;
}

/** The rendered page of a book. */
export const htmlOf =
  ({ files }: MadeBook) =>
  ({ path }: { readonly path: string }): string =>
    String(files.get(`${path}index.html`));

/** All papers of a book, printed. */
export async function printed(chromium: string, { book, files }: MadeBook): Promise<Printed[]> {
  const printer = await openPrinter(chromium);
  const papers: Printed[] = [];
  try {
    for await (const paper of printBook({ book, files, creator: 'groundspot 0.0.0', print: printer.print }))
      papers.push(paper);
  } finally {
    await printer.close();
  }
  return papers;
}
