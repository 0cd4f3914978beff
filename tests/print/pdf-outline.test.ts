import * as lib from 'pdf-lib';
import { expect, test } from 'vitest';
import { pageFinder } from '../../src/print/pdf-goals.ts';
import { mendOutline, readOutline } from '../../src/print/pdf-outline.ts';

const HEADINGS = new Set(['The garden at the gate', 'What did we get?', 'Tom']);

/** A document of two pages whose outline has these titles, the last one below the first. */
async function outlined(titles: readonly [string, string, string]): Promise<lib.PDFDocument> {
  const document = await lib.PDFDocument.create({ updateMetadata: false });
  const [one, two] = [document.addPage(), document.addPage()];
  const { context } = document;
  const item = (title: string, page: lib.PDFPage): lib.PDFDict =>
    context.obj({ Title: lib.PDFHexString.fromText(title), Dest: [page.ref, 'XYZ', 0, 0, 0] });
  const [first, next, below] = [item(titles[0], one), item(titles[1], two), item(titles[2], two)];
  first.set(lib.PDFName.of('Next'), context.register(next));
  first.set(lib.PDFName.of('First'), context.register(below));
  const outline = context.obj({ First: context.register(first) });
  document.catalog.set(lib.PDFName.of('Outlines'), context.register(outline));
  return document;
}

const TRUE = [
  { title: 'The garden at the gate', page: 1, below: [{ title: 'Other words', page: 2, below: [] }] },
  { title: 'What did we get?', page: 2, below: [] },
];

test('a heading broken into lines or written twice is read as it stands in the document', async () => {
  const document = await outlined(['The gardenat the gate', 'What did we get?What did we get?', 'Other words']);
  expect(readOutline(lib, document, HEADINGS, pageFinder(lib, document))).toEqual(TRUE);
});

test('and is mended in the file; what is no heading is left alone', async () => {
  const document = await outlined(['The gardenat the gate', 'What did we get?What did we get?', 'Other words']);
  mendOutline(lib, document, HEADINGS);
  expect(readOutline(lib, document, new Set(), pageFinder(lib, document))).toEqual(TRUE);
});
