import { describe, expect, test } from 'vitest';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf, siteOf } from '../../../src/cli/make-book.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { type Alike, lookedGarden } from '../../ledger/ripeness/looked-garden.ts';

const reference = loadReference('data/reference');
const draw = createDraw();

const PEOPLE =
  '- {id: AA, code: K1, name: Anna Arbour, agreed_on: 2024-01-01}\n- {id: BB, code: K2, name: Bob Bower, agreed_on: 2024-01-01}\n- {id: CC, code: K3, name: Cass Crook}\n- {id: DD, code: K4, name: Dan Dell, agreed_on: 2024-01-01, withdrawn_on: 2025-01-01}\n';
const call = (count: number, state: string, said: string, by: string): Alike => ({
  count,
  state,
  look: `call: ${said}`,
  by,
});
const CALLS = [
  call(6, 'prime', 'ripe', 'AA'),
  call(2, 'unripe', 'ripe', 'AA'),
  call(3, 'just-ripe', 'not-yet', 'AA'),
  call(1, 'prime', 'unsure', 'AA'),
  call(3, 'prime', 'ripe', 'BB'),
  call(9, 'unripe', 'ripe', 'CC'),
  call(9, 'unripe', 'ripe', 'DD'),
];
const PATH = 'sheets/observers/index.html';

const bookWith = (edition?: string, people = PEOPLE) =>
  bookOf({ reference }, lookedGarden({ 2025: CALLS }, people, edition), null);

describe('half a sheet for each keeper', async () => {
  const book = bookWith();
  const [published, printed] = [await siteOf(book, draw, '0'), await siteOf(book, draw, '0', 'printer')];
  const sheet = readPage(String(printed.get(PATH)));

  test('is printed, and is in no file of the website', () => {
    expect(printed.has(PATH)).toBe(true);
    expect([...published.keys()].filter((path) => path.includes('observers'))).toEqual([]);
    const holding = [...published].filter(
      ([, text]) => typeof text === 'string' && /observers|How your calls|of ten that you call/i.test(text),
    );
    expect(holding.map(([path]) => path)).toEqual([]);
    // Nor is it linked from the printed sheets’ list, or bound into the book.
    expect(String(printed.get('sheets/index.html'))).not.toContain('observers');
  });
  test('is the only thing the two sets of files differ in', () => {
    const more = [...printed.keys()].filter((path) => !published.has(path));
    expect(more).toEqual([PATH]);
  });
  test('goes by code, never by name or id, and in the order of codes', () => {
    expect(sheet.all.match(/for keeper \w+ alone/g)).toEqual(['for keeper K1 alone', 'for keeper K2 alone']);
    expect(String(printed.get(PATH))).not.toMatch(/Anna|Arbour|Bob|Bower|Cass|Dan\b|K3|K4/);
    expect(sheet.all).not.toMatch(/best keeper|rank|first place|than others/i);
  });
  test('says how many of ten, with the counts under it', () => {
    expect(sheet.all).toMatch(
      /You called 12 fruits that were cut within 3 days\. Of ten that you call ripe, so many are: about [78]; it could be \d to \d+\. You called 8 ripe, and the knife found 6 of them ripe\./,
    );
    expect(sheet.all).toContain('10 were ripe, and you had called 6 of them ripe. Of one fruit you were unsure');
  });
  test('has good words in place of numbers below eight calls', () => {
    const bob = sheet.all.slice(sheet.all.indexOf('K2'));
    expect(bob).toContain('Thank you for your 3 calls so far. From 8 on');
    expect(bob).not.toMatch(/Of ten/);
  });
});

test.each([
  ['a home book', () => bookWith('home')],
  ['a garden that lists nobody', () => bookWith('community', '')],
  [
    'a garden where nobody agreed',
    () => bookWith('community', PEOPLE.replaceAll(/, agreed_on: [\d-]+(, withdrawn_on: [\d-]+)?/g, '')),
  ],
])('%s has no such sheet', (_what, make) => {
  expect(make().pages.filter((page) => page.private)).toEqual([]);
});
