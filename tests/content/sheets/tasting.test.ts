import { describe, expect, test } from 'vitest';
import { tastingSheet } from '../../../content/sheets/tasting.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { readPage } from '../../books/reading.ts';
import { planting, smallGarden } from '../../ledger/small-garden.ts';
import { siteOfFolder } from '../../site/built.ts';

const reference = loadReference('data/reference');
const garden = smallGarden({ plantings: planting('P1', 'S1') });
const sheet = tastingSheet(bookOf({ reference }, garden, null).facts);

test('it asks for the two orders a tasting may hold, under the headings of the records', () => {
  expect(sheet.orders).toEqual(['Liked most first', 'Sweetest first']);
});

test('as many codes as one order takes, and other ones next season', () => {
  expect(sheet.codes).toHaveLength(6);
  const later = { ...garden, seasons: garden.seasons.map((season) => ({ ...season, label: '2026' })) };
  expect(tastingSheet(bookOf({ reference }, later, null).facts).codes).not.toEqual(sheet.codes);
});

test('before the first season it is there all the same', () => {
  const none = { ...garden, seasons: [] };
  expect(tastingSheet(bookOf({ reference }, none, null).facts).codes).toHaveLength(6);
});

test('fruit is cut and eaten, so wasps, stings, the knife, cut fruit and bitter fruit are warned of', () => {
  expect(sheet.cautions).toEqual(expect.arrayContaining(['wasps', 'stings', 'knife', 'cut-fruit', 'bitter-fruit']));
});

describe('the page of a garden', () => {
  const pageOf = async (path: string): Promise<string> =>
    String((await siteOfFolder('tests/books/gardens/day-zero')).get(path));

  test('names no fruit and no variety: what stands under a code is written by hand', async () => {
    const html = await pageOf('sheets/tasting/index.html');
    const text = readPage(html).all;
    for (const name of ['Osier Lamp', 'Quillon', 'Hob Kettle']) expect(text).not.toContain(name);
    const key = [...html.matchAll(/<b>(\d{3})<\/b>/g)].map(([, code]) => code);
    expect(new Set(key).size).toBe(6);
    expect(text).toContain('Fold here');
    expect(text).toContain('Spit it out');
  });

  test('is listed with the sheets', async () => {
    expect(await pageOf('sheets/index.html')).toContain('sheets/tasting/index.html');
  });
});
