import { expect, test } from 'vitest';
import { isSeq, parseDocument } from 'yaml';
import { linkTexts, textsIn } from './garden-texts.ts';

/** The same records, each file's list or rows turned round. */
function reversed(texts: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(texts)
      .reverse()
      .map(([path, text]) => {
        if (path.endsWith('.csv')) {
          const [header = '', ...rows] = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
          return [path, [header, ...rows.reverse()].join('\n')];
        }
        const document = parseDocument(text);
        if (!isSeq(document.contents)) return [path, text];
        document.contents.items.reverse();
        return [path, document.toString()];
      }),
  );
}

for (const folder of ['data/starter', 'data/garden', 'tests/books/three-spots/garden']) {
  test(`the order of files and records in ${folder} changes nothing`, () => {
    const texts = textsIn(folder);
    const turned = reversed(texts);
    expect(turned['seasons/2025/fruits.yaml']).not.toBe(texts['seasons/2025/fruits.yaml']);
    expect(linkTexts(turned).garden).toEqual(linkTexts(texts).garden);
  });
}
