import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { Table } from '../../../src/book/table.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { keptInMemory } from '../../../src/kept.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { drawnSeason, drawnWeather, plantings, type Shape, textGarden } from '../../ledger/replay/replay-garden.ts';

const reference = loadReference('data/reference');
const draw = createDraw();
const kept = keptInMemory();

const bookFrom = (garden: Garden): Book => bookOf({ reference }, garden, null, kept);
const tableOf = (book: Book, id: string): Table | undefined => book.tables.find((one) => one.id === id);
const column = (table: Table, key: string) => {
  const at = table.columns.findIndex((one) => one.key === key);
  return table.rows.map((row) => row[at]);
};

async function wordsOf(book: Book, path = 'ripe/replay/'): Promise<string> {
  const site = await buildSite(book, { layouts: 'layouts', content: 'content', version: '0.0.0', draw });
  return readPage(String(site.get(`${path}index.html`))).all;
}

const WEATHER = drawnWeather([2024, 2025], 33);
const garden = (shape: Shape = {}, weather: string | null = WEATHER, edition: 'home' | 'community' = 'community') =>
  textGarden({ 2024: drawnSeason(2024, 31, shape), 2025: drawnSeason(2025, 32, shape) }, { weather, edition });

describe('two summers looked over and cut', () => {
  const book = bookFrom(garden());

  test('begin with what came true, counted in the table to download', async () => {
    const claims = tableOf(book, 'ripe-replay-claims');
    if (!claims) throw new Error('no table');
    const [said, ripe, missed] = ['claim_of_ten', 'ripe', 'missed'].map((key) => column(claims, key));
    const bold = ripe?.filter((one, at) => one !== null && Number(said?.[at]) >= 6) ?? [];
    expect(bold.length).toBeGreaterThan(5);
    const words = await wordsOf(book);
    expect(words).toContain(
      `Of ${bold.length} claims of 6 in 10 and more that globes were ripe, ${bold.filter((one) => one === 'yes').length} came true.`,
    );
    const misses = missed?.filter((one) => one === 'yes').length ?? 0;
    expect(misses).toBeGreaterThan(0);
    // Misses stand before all others in the table as on the page.
    expect(missed?.slice(0, misses)).toEqual(Array.from({ length: misses }, () => 'yes'));
    expect(words.indexOf('missed')).toBeGreaterThan(0);
  });

  test('tell of windows and advice what their tables hold', async () => {
    const [windows, advice] = ['ripe-replay-windows', 'ripe-replay-advice'].map((id) => tableOf(book, id));
    if (!windows || !advice) throw new Error('no tables');
    const words = await wordsOf(book);
    const count = (came: string): number => column(windows, 'most_came').filter((one) => one === came).length;
    expect(words).toContain(`Over before it opened: ${count('over-before')}.`);
    expect(words).toContain(`Unripe after it closed: ${count('unripe-after')}.`);
    const judged = column(advice, 'regret').filter((one) => one !== null);
    const regret = judged.reduce<number>((sum, one) => sum + Number(one), 0);
    expect(words).toContain(`read at ${judged.length} of those looks`);
    expect(words).toContain(`the card ${regret}, always picking`);
  });

  test('print no bare percentage, at most twelve rows, and nothing absent', async () => {
    const site = await buildSite(book, { layouts: 'layouts', content: 'content', version: '0.0.0', draw });
    const html = String(site.get('ripe/replay/index.html'));
    const [table = ''] = /<caption>The misses first.*?<\/table>/s.exec(html) ?? [];
    expect(table.match(/<tr>/g)).toHaveLength(13);
    const words = await wordsOf(book);
    expect(words).not.toMatch(/%|NaN|null|undefined|\[object/);
  });

  test('are led to from the chapter, and not listed', async () => {
    expect(book.pages.find(({ path }) => path === 'ripe/replay/')?.listed).toBe(false);
    expect(await wordsOf(book, 'ripe/')).toContain('Would the book have been right?');
  });
});

describe('too few', () => {
  test('no cut at all', async () => {
    const bare = textGarden({ 2025: { plantings: plantings(2025), fruits: '', visits: '' } });
    const words = await wordsOf(bookFrom(bare));
    expect(words).toContain('No cut is written down yet, so there is no past week to judge this book by.');
    expect(words.split(' ').length).toBeLessThan(60);
  });

  test('only ripe cuts', async () => {
    const words = await wordsOf(bookFrom(garden({ ripe_only: true })));
    expect(words).toContain('The book would have claimed nothing yet: at no look were 20 cuts known with 6 unripe');
    expect(words).toContain('too few cuts were known, or none unripe, to tell a window from.');
  });

  test('no day of set', async () => {
    const words = await wordsOf(bookFrom(garden({ set: false })));
    expect(words).toContain('No day of set is written down for any that hung, so no window could be told.');
    expect(words).toMatch(/Of \d+ claims of 6 in 10 and more/);
  });

  test('one season: no window, for the cuts of one teach those of the next', async () => {
    const one = textGarden({ 2025: drawnSeason(2025, 32, { fruits: 60 }) });
    const words = await wordsOf(bookFrom(one));
    expect(words).toContain('Cuts of one season teach the windows of the next.');
  });

  test('no weather', async () => {
    const words = await wordsOf(bookFrom(garden({}, null)));
    expect(words).toContain('No station tells what rain came, so the rain card cannot be judged.');
  });

  test('a home book has no such page, no such table and never reckons it', () => {
    const home = bookFrom(garden({}, WEATHER, 'home'));
    expect(home.pages.some(({ path }) => path === 'ripe/replay/')).toBe(false);
    expect(home.tables.some(({ id }) => id.startsWith('ripe-replay'))).toBe(false);
    expect(home.figures.some(({ id }) => id.startsWith('ripe.replay'))).toBe(false);
  });
});
