import { describe, expect, test } from 'vitest';
import type { CropModel } from '../../../content/ripe/crop-model.ts';
import type { Book } from '../../../src/book/book.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { Day } from '../../../src/day.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { planting, type Rows, smallGarden } from '../../ledger/small-garden.ts';

const reference = loadReference('data/reference');
const draw = createDraw();

const sign = (id: string, name: string, shown: string, on_card = 'yes'): string =>
  `  - {id: ${id}, drawing: tendril-dry, names: {en: ${name}}, helps: {en: see it}, on_card: ${on_card}, shown: {${shown}}, sources: [trade-practice]}\n`;
const CROP = `ripe_days: {set_days_low: 35, set_days_high: 45, sources: [trade-practice]}\nsigns:\n${sign('tendril', 'Coil brown', 'tendril: [half-brown, dry]')}${sign('spot', 'Spot yellow', 'ground_spot: [butter]')}${sign('sound', 'Low sound', 'sound: [hollow]')}${sign('skin', 'Skin dull', 'rind: [matte]', 'no')}${sign('parts', 'Parts well', 'parted: [at-a-lift]')}`;

interface Told {
  readonly count: number;
  readonly state: string;
  readonly look?: string;
  readonly why?: string;
  readonly parted?: string;
}

/** One planting's fruits, all picked, cut and, where a look is told, looked at on one day. */
function bookWith(told: readonly Told[], more: Partial<Rows> = {}, today: Day | null = null): Book {
  const fruits = told.flatMap((one) => Array.from({ length: one.count }, () => one));
  const looks = fruits.flatMap(({ look }, index) => (look ? [`{fruit: F${index + 1}, ${look}}`] : []));
  const garden = smallGarden({
    plantings: planting('P1', 'S1'),
    crop: CROP,
    fruits: fruits
      .map(
        ({ state, why, parted }, index) =>
          `- {id: F${index + 1}, planting: P1, fate: picked, pick: {picked_on: 2025-08-12${parted ? `, parted: ${parted}` : ''}}, cut: {cut_on: 2025-08-12, state: ${state}${why ? `, why: ${why}` : ''}}}\n`,
      )
      .join(''),
    ...(looks.length > 0 && {
      visits: `- {id: V1, visited_on: 2025-08-11, fruits: [${looks.join(', ')}]}\n`,
    }),
    ...more,
  });
  return bookOf({ reference }, garden, today);
}

const pageOf = (book: Book) => {
  const page = book.pages.find(({ path }) => path === 'ripe/');
  if (!page) throw new Error('no page');
  return page;
};
const cropsOf = (book: Book): readonly CropModel[] => (pageOf(book).model as { crops: CropModel[] }).crops;

async function readingOf(book: Book, path = 'ripe/') {
  const site = await buildSite(book, { layouts: 'layouts', content: 'content', version: '0.0.0', draw });
  const html = String(site.get(`${path}index.html`));
  return { html, site, ...readPage(html) };
}

const ALL = 'tendril: dry, ground_spot: butter, sound: hollow';
const NONE = 'tendril: green, ground_spot: white, sound: ringing';
const FULL: readonly Told[] = [
  { count: 10, state: 'prime', look: ALL, parted: 'at-a-lift' },
  { count: 2, state: 'just-ripe', look: 'tendril: dry, ground_spot: cream, sound: hollow' },
  { count: 2, state: 'just-ripe', look: 'tendril: dry, ground_spot: cream, sound: unsure' },
  { count: 3, state: 'unripe', look: ALL, parted: 'held' },
  { count: 4, state: 'unripe', look: NONE },
  { count: 3, state: 'over' },
  { count: 2, state: 'unripe', why: 'thinned', look: NONE },
];

describe('a garden whose knife has judged', async () => {
  const book = bookWith(FULL);
  const page = await readingOf(book);
  const card = await readingOf(book, 'ripe/card/globe/');

  test('finds how many of ten with three ticks were ripe', () => {
    // 13 fruits showed three signs, 10 of them ripe: 7.7.
    expect(page.findings).toEqual([expect.stringMatching(/globes that showed (3|three) .*8 in 10 were ripe/)]);
    expect(page.body).toContain('from 13 fruits with the ticks');
    expect(page.all).not.toMatch(/or more were ripe|claims no more|cannot judge/);
  });

  test('prints every number of the table as counted by hand', () => {
    const few = 'too few cuts';
    const counted = [
      ['35 days from set', few, '0', few, '0'],
      ['Coil brown', '10', '14', '4', '7'], // 14 of 14, 3 of 7
      ['Spot yellow', '7', '14', '4', '7'], // 10 of 14
      ['Low sound', '9', '14', '4', '7'], // 12 of 14: an unsure sound is none
      ['Skin dull', few, '0', few, '0'],
      ['Parts well', few, '10', few, '3'],
    ];
    const [rows = []] = page.tables;
    expect(rows.map(([, , ...cells]) => cells)).toEqual(counted.map(([, ...cells]) => cells));
    for (const [index, [name = '']] of counted.entries()) expect(rows[index]?.[1]).toContain(name);
  });

  test('says how many were ripe whatever they showed: 17 of 24', () => {
    expect(page.body).toContain('about 7 were ripe whatever they showed (24 fruits, 7 unripe)');
    expect(pageOf(book).level).toMatchObject({ kept: 'full' });
  });

  test('hands over the same numbers unrounded, and the figures under them', () => {
    const [table] = pageOf(book).tables;
    expect(table?.rows[1]).toEqual(['globe', 'tendril', 14, 10, 7, (10 * 3) / 7]);
    expect(table?.rows.map(([, id]) => id)).toEqual(['days', 'tendril', 'spot', 'sound', 'skin', 'parts']);
    const ids = pageOf(book)
      .figures.filter(({ method }) => method.startsWith('sign-'))
      .map(({ id }) => id);
    // The base, three for the days and each of five signs, and the ticks.
    expect([ids.length, new Set(ids).size]).toEqual([20, 20]);
    expect(ids.every((id) => id.startsWith('ripe.globe.'))).toBe(true);
  });

  test('fills the card’s seeds as the table says, and leaves the others to be counted', () => {
    const [crop] = cropsOf(book);
    const seeds = crop?.card.rows.map((row) => row.seeds && [row.seeds.ripe.filled, row.seeds.unripe.filled]);
    expect(seeds).toEqual([null, [10, 4], [7, 4], [9, 4], null]);
    expect(crop?.card.base).toEqual({ filled: 7, exact: false });
    expect(card.all).toMatch(/3 ticks or more: about 8 in 10 were ripe/);
    // Four faces; on each two rows of two tallies are blank, and all others are told.
    expect(card.all.match(/to be counted/g)).toHaveLength(4 * 4);
    expect(card.html.match(/seed-full/g)).toHaveLength(4 * (7 + 14 + 11 + 13));
    expect(card.all).toContain('24 cut, Test plot, 2025');
  });

  test('as of a day before the cuts it knows of none', () => {
    const [crop] = cropsOf(bookWith(FULL, {}, '2025-08-11' as Day));
    expect([crop?.base.n, crop?.told, crop?.seasons]).toEqual([0, false, null]);
  });
});

describe('a garden with too few cuts', async () => {
  const book = bookWith([
    { count: 2, state: 'prime', look: ALL },
    { count: 1, state: 'unripe' },
  ]);
  const page = await readingOf(book);

  test('says so, and goes by what others look for', () => {
    expect(page.findings).toEqual([
      expect.stringMatching(/cannot judge.*3 fruits cut, (1|one) of them unripe.*takes 20 with 6 unripe/),
    ]);
    expect(page.tables[0]?.map((cells) => cells.length)).toEqual([2, 2, 2, 2, 2, 2]);
    expect(page.all).not.toMatch(/of ten ripe|in 10/);
    expect(pageOf(book).level).toMatchObject({ kept: 'some' });
  });

  test('leaves every tally of the card blank', async () => {
    const card = await readingOf(book, 'ripe/card/globe/');
    expect(card.html).not.toContain('seed-full');
    // The base and two tallies for each of five rows, on four faces.
    expect(card.all.match(/to be counted/g)).toHaveLength(4 * 11);
    expect(card.all).toContain('cut one, write down what you find');
    expect(card.all).toContain('3 cut so far');
  });
});

test('eight in ten or better is claimed as eight or more, and why it is no more', async () => {
  const page = await readingOf(
    bookWith([
      { count: 14, state: 'prime', look: ALL },
      { count: 6, state: 'unripe', look: NONE },
    ]),
  );
  expect(page.findings[0]).toContain('8 in 10 or more were ripe');
  expect(page.body).toContain('claims no more before');
});

describe('the finding says no untruth', () => {
  const findingOf = async (book: Book) => (await readingOf(book)).findings[0];

  test('cuts enough but nobody looked: it is looks that lack, not cuts', async () => {
    const finding = await findingOf(
      bookWith([
        { count: 17, state: 'prime' },
        { count: 7, state: 'unripe' },
      ]),
    );
    expect(finding).not.toMatch(/it takes 20 with 6 unripe/);
  });

  test('signs told but few fruits with three ticks: the knife can judge the signs', async () => {
    const finding = await findingOf(
      bookWith([
        { count: 17, state: 'prime', look: 'tendril: dry, ground_spot: butter, sound: ringing' },
        { count: 7, state: 'unripe', look: NONE },
      ]),
    );
    expect(finding).not.toMatch(/cannot judge the signs|it takes 20 with 6 unripe/);
  });

  test('cuts of one crop are written down, though another stands before it', async () => {
    const garden = smallGarden({
      plantings: planting('P1', 'S1'),
      fruits:
        '- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2025-08-12}, cut: {cut_on: 2025-08-12, state: prime}}\n',
      crop: CROP,
    });
    const [amber, birch] = garden.varieties;
    if (!amber || !birch) throw new Error('invalid test');
    const uncut = { ...birch, crop: { ...birch.crop, id: 'eel' } };
    const book = bookOf({ reference }, { ...garden, varieties: [amber, uncut] }, null);
    expect(cropsOf(book)).toHaveLength(2);
    expect(await findingOf(book)).not.toContain('No cut is written down');
  });
});

test('before the first cut it says what others look for; a crop without signs has neither section nor card', async () => {
  const signs = await readingOf(bookWith([]));
  expect(signs.findings[0]).toMatch(/No cut is written down yet.*others look for/);
  expect(signs.tables[0]).toHaveLength(6);
  expect([...signs.site.keys()].filter((path) => path.startsWith('ripe/card/'))).toEqual([
    'ripe/card/globe/index.html',
  ]);
  const none = await readingOf(bookWith([{ count: 3, state: 'prime' }], { crop: '' }));
  expect(none.findings).toEqual([expect.stringContaining('Nothing with signs of its own')]);
  expect(none.tables).toEqual([]);
  expect(none.all).not.toMatch(/Pocket cards|In the order of looking/i);
  expect([...none.site.keys()].filter((path) => path.startsWith('ripe/'))).toEqual(['ripe/index.html']);
});
