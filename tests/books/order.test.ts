import { describe, expect, test } from 'vitest';
import { isSeq, parseDocument } from 'yaml';
import { textsIn } from '../reading/garden-texts.ts';
import { type Chance, chanceOf } from '../simulated/chance.ts';
import { shuffled } from '../simulated/shuffled.ts';
import { siteOfTexts } from '../site/built.ts';
import { keptForTests } from '../site/kept-for-tests.ts';

/** The same records in an order drawn by lot: files, the items of each list, the rows of each table. */
function mixed(texts: Readonly<Record<string, string>>, chance: Chance): Record<string, string> {
  return Object.fromEntries(
    shuffled(chance, Object.entries(texts)).map(([path, text]) => [
      path,
      path.endsWith('.csv') ? mixedRows(text, chance) : mixedItems(text, chance),
    ]),
  );
}

function mixedRows(text: string, chance: Chance): string {
  const [header = '', ...rows] = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  return [header, ...shuffled(chance, rows)].join('\n');
}

function mixedItems(text: string, chance: Chance): string {
  const document = parseDocument(text);
  if (!isSeq(document.contents)) return text;
  document.contents.items = shuffled(chance, document.contents.items);
  return document.toString();
}

describe('the order of files, records and rows leaves every byte of the book alone', () => {
  for (const folder of ['tests/books/three-spots/garden', 'data/garden']) {
    test(folder, async () => {
      const texts = textsIn(folder);
      // A fit is found by its inputs: one whose inputs stand in another order is made anew.
      const kept = keptForTests(folder, '');
      const book = await siteOfTexts(texts, null, kept);
      for (const seed of [1, 2]) {
        const other = mixed(texts, chanceOf(seed));
        expect(Object.keys(other)).not.toEqual(Object.keys(texts));
        expect(other['seasons/2025/fruits.yaml']).not.toBe(texts['seasons/2025/fruits.yaml']);
        const same = await siteOfTexts(other, null, kept);
        expect([...same.keys()].sort()).toEqual([...book.keys()].sort());
        for (const [path, content] of book) expect(String(same.get(path)) === String(content), path).toBe(true);
      }
    });
  }
});
