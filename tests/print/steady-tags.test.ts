import * as lib from 'pdf-lib';
import { PDFDocument, PDFName, PDFString } from 'pdf-lib';
import { expect, test } from 'vitest';
import { steadyTags } from '../../src/print/steady-tags.ts';

/** A document with three named elements, one naming another and one in an index, counted from a number. */
async function tagged(first: number): Promise<string> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.addPage([100, 100]);
  const { context } = document;
  const named = (offset: number): PDFString => PDFString.of(`node${String(first + offset).padStart(8, '0')}`);
  for (const offset of [2, 0, 1]) context.register(context.obj({ S: 'TH', ID: named(offset) }));
  context.register(context.obj({ S: 'TD', A: [{ O: 'Table', Headers: [named(0), named(2)] }] }));
  const plain = context.obj({ Title: PDFString.of('node 00000005 of the fence') });
  document.catalog.set(PDFName.of('IDTree'), context.register(context.obj({ Names: [named(0), plain] })));
  steadyTags(lib, document);
  return Buffer.from(await document.save({ useObjectStreams: false })).toString('latin1');
}

test('names of tagged elements no longer tell where the count began, and still name the same ones', async () => {
  const from7 = await tagged(7);
  expect(await tagged(118)).toBe(from7);
  expect([...from7.matchAll(/\/ID \((node\d+)\)/g)].map(([, name]) => name)).toEqual([
    'node00000003',
    'node00000001',
    'node00000002',
  ]);
  expect(from7).toContain('/Headers [ (node00000001) (node00000003) ]');
  expect(from7).toContain('/Names [ (node00000001)');
  expect(from7).toContain('(node 00000005 of the fence)');
});
