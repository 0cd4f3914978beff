import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { countsOf, gradeOf } from '../../books/reading-age.ts';
import { type Cut, type Running, runningGarden, setOn, TODAY } from '../../ledger/window/running-garden.ts';

const reference = loadReference('data/reference');
const draw = createDraw();

async function built(running: Running = {}) {
  const { garden } = runningGarden(running);
  const book = bookOf({ reference }, garden, TODAY);
  const site = await buildSite(book, { layouts: 'layouts', content: 'content', version: '0.0.0', draw });
  const page = (path: string) => {
    const html = String(site.get(`${path}index.html`)).replace(/<article class="card copy".*?<\/article>/gs, '');
    return { html, ...readPage(html) };
  };
  return {
    book,
    site,
    ripe: page('ripe/'),
    list: page('sheets/fruit-list/'),
    card: page('ripe/card-rain/globe/'),
    csv: (id: string) => String(site.get(`data/${id}.csv`) ?? ''),
  };
}

const GROWING = [
  setOn('2025-07-01'),
  'fate: growing',
  'fate: growing, set: {first_seen_on: 2025-07-20, first_seen_size: fist}',
];
const VISITS =
  '- {id: V1, visited_on: 2025-07-30, fruits: [{fruit: G1, tendril: half-brown, sound: ringing, call: not-yet}]}\n';

describe('a season that runs, with cuts of the one before', async () => {
  const { book, ripe, list, csv } = await built({ growing: GROWING, visits: VISITS });

  test('draws a strip of the fruits that can be told, and says why of the others', () => {
    expect(ripe.body).toMatch(
      /By their age none is likely to be ripe yet\. The first likely one is G[13], about \d+ Aug\./,
    );
    expect(ripe.body).toContain('Seen from 1 Aug');
    expect(ripe.html).toContain('windows-globe');
    expect(ripe.body).toMatch(/G2: Nobody wrote down when it set/);
    expect(ripe.all).toContain('From 17 fruits cut with a state, 6 unripe and 2 over');
    expect(ripe.all).toContain('the same dates of 4 years of our thermometer');
  });

  test('lists them for the clipboard, the soonest first, with signs last seen and a day to look', () => {
    const rows = list.tables[0] ?? [];
    const cells = rows.find(([fruit]) => fruit === 'G1');
    expect(cells?.[2]).toBe('Amber');
    expect(cells?.[3]).toMatch(/^\d+ to \d+ Aug$/);
    expect(cells?.[4]).toBe('30 Jul: tendril at the fruit half brown, sound ringing');
    expect(cells?.[5]).toMatch(/^\d Aug$/);
    expect(rows.find(([fruit]) => fruit === 'G2')?.[3]).toBe('no day of set');
    expect(list.all).toContain('No day of set: Nobody wrote down when it set');
    expect(rows.map(([fruit]) => fruit).filter((one) => one?.startsWith('G'))[0]).toBe('G1');
  });

  test('hands over the same days whole, with a figure behind each', () => {
    const [head = '', ...rows] = csv('ripe-windows-globe').trim().split(/\r?\n/);
    const at = head.split(',').indexOf('ripe_called_most_first');
    expect(rows).toHaveLength(3);
    const told = rows.find((row) => row.startsWith('G1,'))?.split(',')[at];
    expect(told).toMatch(/^2025-08-\d\d$/);
    const figure = book.figures.find(({ id }) => id === 'ripe.globe.window.G1.to_ripe');
    expect(Number(told?.slice(8)) - 1).toBe(figure?.interval?.low);
  });

  test('every figure has words for how it was made', () => {
    const known = new Set(reference.methods.map(({ id }) => id));
    const sources = new Set(reference.sources.map(({ id }) => id));
    const own = book.figures.filter(({ id }) => /^ripe\..*\.(window|storm|rain)\./.test(id));
    expect(own).toHaveLength(9);
    expect(own.filter(({ method, source }) => !known.has(method) || (source !== null && !sources.has(source)))).toEqual(
      [],
    );
  });
});

describe('where little is known whole sentences say so', () => {
  const states = (state: string): Cut[] => Array.from({ length: 8 }, (_, at) => ({ days: 40 + at, state }));
  test.each<[string, Running, RegExp]>([
    [
      'no cuts',
      { cuts: [] },
      /One fruit with a tag hangs on the vine\. No fruit of a known age is cut and told apart; it takes 6\. Until then go by the signs\./,
    ],
    [
      'only ripe cuts',
      { cuts: [...states('prime'), { days: 55, state: 'over' }] },
      /None of the 9 cut was unripe, so nothing tells how early is too early/,
    ],
    ['one state alone', { cuts: states('prime') }, /All 8 cut were in one state inside/],
    [
      'no set dates',
      { growing: ['fate: growing'] },
      /G1: Nobody wrote down when it set, or how big it was when first seen\./,
    ],
    [
      'no weather',
      { years: 0 },
      /Days since each set: no thermometer is read here, so a cool spell moves every day later than told\./,
    ],
    [
      'nothing on the vine',
      { growing: [] },
      /No fruit with a tag hangs on the vine today\. 17 fruits cut here can tell when the next will be ripe\./,
    ],
  ])('%s', async (_, running, words) => {
    const { ripe, list } = await built(running);
    expect(ripe.all).toMatch(words);
    expect(ripe.all + list.all).not.toMatch(/undefined|null|NaN|\[object/);
  });

  test('one season: nothing was cut before it', async () => {
    const { ripe } = await built({ cuts: [], growing: [], years: 0 });
    expect(ripe.all).toMatch(/No storm with fruit near ripe is written down; until there are 5, one of ten is taken/);
  });

  test('with nothing on the vine the list is a blank twin', async () => {
    const { list } = await built({ growing: [] });
    const rows = list.tables[0] ?? [];
    expect(rows.length).toBeGreaterThanOrEqual(10);
    expect(rows.every((row) => row.every((cell) => cell === ''))).toBe(true);
    expect(list.all).toContain('One line a fruit on the vine.');
  });
});

describe('the rain card', async () => {
  const { card, ripe, csv } = await built();

  test('is complete by itself: warnings first, the forecast in three words, four rows, thunder, and what it rests on', () => {
    expect(card.all).toContain('Official warnings first. Then your own forecast');
    expect(card.html).toMatch(
      /Ripe of ten<\/th><th scope="col">none likely<\/th><th scope="col">maybe<\/th><th scope="col">likely</,
    );
    const rows = card.tables[0] ?? [];
    expect(rows.map(([of_ten]) => of_ten)).toEqual(['2', '4', '6', '8']);
    expect(rows.flatMap(([, ...cells]) => cells).every((cell) => ['pick', 'wait', 'either'].includes(cell))).toBe(true);
    for (const words of [
      'Stop if it thunders: leave open ground',
      'Wet leaves',
      'wasps',
      'Two to lift',
      'usual losses',
      'a guess',
      'does not promise sweetness',
    ])
      expect(card.all).toContain(words);
  });

  test('has a frame for each answer, so that no answer hangs on colour', () => {
    const css = readFileSync('layouts/styles/cards.css', 'utf8');
    const borders = ['pick', 'either', 'wait'].map(
      (one) => new RegExp(`\\.answer-${one} \\{[^}]*border: ([^;]*)`).exec(css)?.[1],
    );
    expect(new Set(borders).size).toBe(3);
    expect(borders).not.toContain(undefined);
  });

  test('asks for no more than a child of twelve', () => {
    // A child of six enters the first grade: common practice, no source.
    expect((gradeOf(countsOf(card.paragraphs)) ?? Number.NaN) + 5).toBeLessThanOrEqual(12);
  });

  test('says the same as the page and the table', () => {
    expect(ripe.tables.at(-1)).toEqual(card.tables[0]);
    const answers = csv('ripe-pick-or-wait')
      .trim()
      .split(/\r?\n/)
      .slice(1)
      .map((row) => row.split(',')[7]);
    expect(answers).toEqual((card.tables[0] ?? []).flatMap(([, ...cells]) => cells));
  });

  test('names whose losses they are', async () => {
    const ours = await built({ settings: 'losses: {unripe: little, split: much, dilution: some, lost: much}\n' });
    expect(ours.card.all).toContain('our losses');
    expect(ours.card.tables[0]?.[3]?.[3]).toBe('pick');
    expect((await built({ settings: 'losses: {split: much}\n' })).card.all).toContain('some losses ours');
  });
});

test('a home book has a sentence, the list and the card, and no strip', async () => {
  const { ripe, list, card } = await built({ edition: 'home' });
  expect(ripe.body).toContain('Before rain, see the pick-or-wait card.');
  expect(ripe.all).not.toContain('on the vine be ripe');
  expect(ripe.html).not.toContain('windows-globe');
  expect(list.tables[0]?.[0]?.[0]).toBe('G1');
  expect(card.all).toContain('Pick or wait?');
});
