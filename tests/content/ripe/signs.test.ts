import { describe, expect, test } from 'vitest';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { ALL, type Alike, lookedGarden, NONE, type Told } from '../../ledger/ripeness/looked-garden.ts';

const reference = loadReference('data/reference');
const draw = createDraw();

async function pageOf(seasons: Told, edition: 'home' | 'community' = 'community') {
  const book = bookOf({ reference }, lookedGarden(seasons, '', edition), null);
  const page = book.pages.find(({ path }) => path === 'ripe/');
  if (!page) throw new Error('no page');
  const site = await buildSite(
    { ...book, pages: [page] },
    { layouts: 'layouts', content: 'content', version: '0.0.0', draw },
  );
  return { page, book, ...readPage(String(site.get('ripe/index.html'))) };
}

/** From the first crop's signs to whoever looks for them. */
const signsIn = ({ all }: { readonly all: string }): string =>
  /What do ripe globes show\?.*?Who looks for these signs/.exec(all)?.[0] ?? '';

const YEAR: readonly Alike[] = [
  { count: 8, state: 'prime', look: ALL, set: '07-01', why: 'ripe' },
  { count: 2, state: 'just-ripe', look: 'tendril: green', why: 'lot' },
  { count: 4, state: 'unripe', look: NONE, set: '07-02', why: 'lot' },
  { count: 1, state: 'unripe', look: ALL, why: 'damaged' },
];
const TWO: Told = { 2024: YEAR, 2025: YEAR };

test('a claim that the cap holds back keeps its row, without a range', async () => {
  const sure: readonly Alike[] = [
    { count: 40, state: 'prime', look: ALL, set: '07-01', why: 'ripe' },
    { count: 20, state: 'unripe', look: NONE, set: '07-02', why: 'lot' },
  ];
  const { all, book } = await pageOf({ 2024: sure, 2025: sure });
  const figure = book.figures.find(({ id }) => id === 'ripe.globe.together.all-signs.ripe_of_ten');
  expect(figure).toMatchObject({ value: 8, interval: null });
  expect(all).toContain('With every sign: 8 in 10 or more are ripe. With none of them: about');
});

describe('a garden of several keepers', async () => {
  const page = await pageOf(TWO);
  const [, worth = [], misses = [], bins = []] = page.tables;

  test('says what a sign is worth in words, with the counts under them, those by lot apart', () => {
    const [name, ripe] = worth.find(([sign]) => sign === 'coil') ?? [];
    expect(name).toBe('coil');
    // 16 of 20 ripe showed it and 2 of 10 unripe; by lot none of 4 and none of 8.
    expect(ripe).toMatch(/^Shows 4 times as often in ripe ones; 1\.\d.to.\d+/);
    expect(ripe).toContain('16 of 20 ripe, 2 of 10 unripe; by lot 0 of 4 ripe, 0 of 8 unripe');
    expect(page.all).toContain(
      'Whether it is too late no sign can tell yet: no fruit found over-ripe had been looked over, and it takes 6.',
    );
  });
  test('says how the fruits came to be cut', () => {
    expect(page.all).toContain(
      'Of 30 cuts, 16 looked ripe, 2 were free (split, damaged, or left at the season’s end), 12 were drawn by lot, and 0 had another reason',
    );
  });
  test('puts the signs together, and says from what', () => {
    expect(page.all).toMatch(
      /With every sign: (8 in 10 or more|about \d in 10 \(it could be \d to \d+\)) are ripe\. With none of them: about [0-5] in 10/,
    );
    expect(page.all).toContain('for globes of 42 days, the middle of those cut');
    expect(page.all).toContain(
      '30 fruits looked over and then cut in 2 seasons, 10 unripe; 24 with a day of set. It may claim 8 in 10 at most',
    );
  });
  test('shows the misses first, and then how many came of what was said', () => {
    expect(misses.slice(0, 2).map(([season, fruit, , found]) => [season, fruit, found])).toEqual([
      ['2024', 'F15', 'unripe'],
      ['2025', 'F15', 'unripe'],
    ]);
    expect(bins.map(([said]) => said)).toEqual(['0 to 3', '4 to 6', '7 or more']);
    expect(bins.reduce((sum, [, fruits]) => sum + Number(fruits), 0)).toBe(30);
    expect(bins.reduce((sum, [, , ripe]) => sum + Number(ripe), 0)).toBe(20);
    expect(page.all).toMatch(/the signs together have \d+, saying the same of every fruit 2\d/);
  });
  test('hands over every number whole', () => {
    const tables = Object.fromEntries(page.page.tables.map((table) => [table.id, table.rows]));
    expect(tables['ripe-sign-worth']?.find(([, id, question]) => id === 'coil' && question === 'ripe-yet')).toEqual([
      'globe',
      'coil',
      'ripe-yet',
      16,
      20,
      2,
      10,
      0,
      4,
      0,
      8,
      expect.any(Number),
      expect.any(Number),
      expect.any(Number),
    ]);
    expect(tables['ripe-looks']).toHaveLength(30);
    expect(tables['ripe-claims']).toHaveLength(30);
    expect(tables['ripe-claim-scores']).toHaveLength(6);
  });
  test('its figures are told in the methods', () => {
    const methods = reference.methods.map(({ id }) => id);
    const sources = reference.sources.map(({ id }) => id);
    for (const { method, source } of page.page.figures) {
      expect(methods).toContain(method);
      if (source !== null) expect(sources).toContain(source);
    }
  });
});

test('a sign of the unripe is turned over, so that it always shows so many times as often', async () => {
  const { tables } = await pageOf({
    2025: [
      { count: 20, state: 'prime', look: NONE },
      { count: 4, state: 'unripe', look: ALL },
      { count: 4, state: 'unripe', look: NONE },
      { count: 8, state: 'over', look: ALL },
    ],
  });
  // 8 of 28 ripe and 4 of 8 unripe showed it; of the ripe all 8 over-ripe ones and none of 20 others.
  const [, ripe, late] = tables[1]?.find(([sign]) => sign === 'coil') ?? [];
  expect(ripe).toMatch(/^May be worth nothing: it shows 0\.\d.to.1\.\d times as often in ripe ones/);
  expect(late).toMatch(/^Shows more than 20 times as often in over-ripe ones; (\d+|more than 20).to.more than 20/);
  const turned = await pageOf({
    2025: [
      { count: 16, state: 'prime', look: NONE },
      { count: 4, state: 'prime', look: ALL },
      { count: 8, state: 'unripe', look: ALL },
    ],
  });
  // 4 of 20 and 8 of 8: nearly five times as often in the unripe.
  expect(turned.tables[1]?.find(([sign]) => sign === 'coil')?.[1]).toMatch(
    /^Shows [45] times as often in unripe ones; 2\.\d.to.\d/,
  );
});

describe('a home garden', async () => {
  const page = await pageOf(TWO, 'home');
  test('has one sentence more, and no table more', () => {
    expect(page.all).toMatch(
      /The sign worth most here is “[a-z0-9 ]+”: it shows [\d.]+ times as often in ripe ones \([\d.]+ to (more than )?\d+\)\./,
    );
    expect(page.tables).toHaveLength(1);
    expect(page.all).not.toMatch(/signs together|each sign worth|by lot/);
    expect(page.page.figures.filter(({ method }) => method === 'sign-together')).toEqual([]);
  });
});

describe('where the cuts do not suffice it is said in a sentence', () => {
  test.each<[string, Told, string]>([
    ['no cut', { 2025: [] }, 'Nothing is cut, so signs cannot be put together yet.'],
    [
      'nobody looked',
      { 2025: [{ count: 3, state: 'prime' }] },
      'Of no fruit that was cut is it written down what it showed',
    ],
    [
      'only ripe cuts',
      { 2025: [{ count: 30, state: 'prime', look: ALL }] },
      'All 30 that were looked over and cut were ripe. Only unripe ones can show',
    ],
    [
      'few unripe',
      {
        2025: [
          { count: 30, state: 'prime', look: ALL },
          { count: 2, state: 'unripe', look: NONE },
        ],
      },
      '32 fruits were looked over and cut, 2 of them unripe. Signs are put together from 20 with 6 unripe.',
    ],
    [
      'no day of set',
      { 2024: YEAR.map(({ set: _, ...rest }) => rest), 2025: YEAR.map(({ set: _, ...rest }) => rest) },
      'No day of set is written down, so their age tells nothing here.',
    ],
    [
      'one season',
      { 2025: [...YEAR, ...YEAR] },
      'All cuts are of one season, so none can be held back to judge these claims by.',
    ],
  ])('%s', async (why, seasons, says) => {
    const page = await pageOf(seasons);
    expect(signsIn(page)).toContain(says);
    if (!/season|set/.test(why)) expect(signsIn(page)).not.toMatch(/\d in 10|times as often|Would the signs/);
    if (why === 'one season') expect(page.all).not.toContain('Would the signs');
  });
});
