import { expect, test } from 'vitest';
import { siteOf } from '../../books/garden-list.ts';
import { readPage, wordsOf } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { LITTLE_GARDENS } from '../../site/little-gardens.ts';

/** Chapters whose answer must fit the column of text while nothing has grown yet. */
const PAGES = [
  ['seed/', ['says-seed']],
  ['next/', ['says-next']],
  ['variety/', ['says-grow', 'says-ripen-here']],
] as const;
const MOST_WORDS_AT_DAY_ZERO = 130;

const htmlOf = (site: ReadonlyMap<string, string | Uint8Array>, page: string): string =>
  String(site.get(`${page}index.html`) ?? '');

test.each(PAGES)('before the first fruit %s answers in few words', async (page) => {
  const { body } = readPage(htmlOf(await siteOf('day-zero'), page));
  const words = wordsOf(body).length;
  expect(words).toBeGreaterThan(20);
  expect(words).toBeLessThanOrEqual(MOST_WORDS_AT_DAY_ZERO);
});

test.each(Object.entries(LITTLE_GARDENS))('%s: an answer stands in each, and no hole in it', async (_name, texts) => {
  const site = await siteOfTexts(texts);
  for (const [page, ids] of PAGES) {
    const html = htmlOf(site, page);
    for (const id of ids) expect(html).toContain(`id="${id}"`);
    const { all } = readPage(html);
    expect(all, page).not.toMatch(/undefined|null|NaN|\[object/);
    expect(all, page).not.toMatch(/\s[,.;:]\s|\(\)|: \.|,\s*\./);
  }
});

test('packets in pounds and inches are in feet', async () => {
  const { body } = readPage(htmlOf(await siteOf('us-letter'), 'seed/'));
  // 150 m and 800 m by the international foot of 0.3048 m: 492 and 2,625, told to three digits.
  expect(body).toContain('under 492, 492 to 2,620, over 2,620');
});
