import { parse } from 'parse5';
import { expect, test } from 'vitest';
import { attributeOf, elementsUnder, wordsOf } from '../../../src/print/markup.ts';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { APART, floweredGarden, TOGETHER } from './flowered-garden.ts';

type Texts = Readonly<Record<string, string>>;
const htmlOf = async (texts: Texts): Promise<string> => String((await siteOfTexts(texts)).get('flowers/index.html'));
const textOf = async (texts: Texts): Promise<string> => readPage(await htmlOf(texts)).uncautioned;

const saying = (html: string, id: string): string => {
  const part = elementsUnder(parse(html)).find((one) => attributeOf(one, 'id') === id);
  return part ? wordsOf(part) : 'nothing';
};

const ENTRIES = `- {seen_on: 2025-06-30, planting: P1, what: first-female}
- {seen_on: 2025-07-01, planting: P1, what: tagged, flowers: 20, took: 13}
- {seen_on: 2025-07-02, planting: P1, what: hand-pollinated, flowers: 4, took: 3}
- {seen_on: 2025-07-01, what: insects-counted, insects: 1}
`;

test('tells what was seen here, how many set, and how many insects came', async () => {
  const html = await htmlOf(floweredGarden(ENTRIES));
  // 41 days are 5.9 weeks; 13 of 20 go with 4.4 to 8.2 of ten, held to its definition beside the model.
  expect(saying(html, 'says-female')).toContain(
    'first female globe flowers of 2025: 30 Jun, 6 weeks after planting out',
  );
  const text = await textOf(floweredGarden(ENTRIES));
  expect(text).toContain('left to the insects: of 20 flowers 13 set; that fits 4 to 8 of every ten.');
  expect(text).toContain('pollinated by hand: of 4 flowers 3 set. From ten flowers on we say more.');
  expect(saying(html, 'says-pollinate')).toContain('with 2 insects or fewer pollinate by hand');
  expect(saying(html, 'says-pollinate')).toContain('2025: our one count found 1.');
  expect(text).toContain('8 visits a flower or more before a good fruit');
  expect(text).toContain('a round bud below the petals');
});

test('several counts are told with how many of them were so few', async () => {
  const more = '- {seen_on: 2025-07-03, what: insects-counted, insects: 12}\n';
  expect(saying(await htmlOf(floweredGarden(`${ENTRIES}${more}`)), 'says-pollinate')).toContain(
    '2 counts found 1 to 12, 1 of them so few.',
  );
});

test('flowers with both sexes need no drawing and no insect', async () => {
  const html = await htmlOf(floweredGarden('', { globe: TOGETHER }));
  expect(saying(html, 'says-female')).toContain('Globes: every flower is male and female in one.');
  expect(saying(html, 'says-pollinate')).toContain('shake or tap');
  expect(saying(html, 'says-set')).toContain('pea');
  expect(html).not.toContain('class="signs"');
  expect(await textOf(floweredGarden('', { globe: TOGETHER }))).not.toMatch(/bare stalk|Males open/);
});

test('a crop without the trait is named as such, beside one that has it', async () => {
  const alone = await textOf(floweredGarden('', { globe: '' }));
  expect(alone).toContain('How globes flower is not told in this book');
  expect(alone).toContain('how many visits a flower needs nobody tells here');
  const both = await textOf(floweredGarden('', { globe: APART, bell: '' }));
  expect(both).toContain('Males open first');
  expect(both).toContain('How bells flower is not told in this book');
  expect(both).toContain('8 visits a flower or more (globes)');
});

test.each([
  ['no season', (texts: Texts) => Object.fromEntries(Object.entries(texts).filter(([path]) => !/season/.test(path)))],
  ['no variety', (texts: Texts) => ({ 'garden.yaml': texts['garden.yaml'] ?? '', 'varieties.yaml': '[]\n' })],
])('with %s the three answers stand', async (_name, less) => {
  const html = await htmlOf(less(floweredGarden('')));
  expect(saying(html, 'says-female')).toContain('tiny fruit');
  expect(saying(html, 'says-pollinate')).toContain('pollinate by hand');
  expect(saying(html, 'says-set')).toContain('bigger and shiny');
});

test('a home page has no table of single plantings', async () => {
  expect(await textOf(floweredGarden(ENTRIES))).toContain('First flowers of globes');
  expect(await textOf(floweredGarden(ENTRIES, { edition: 'home' }))).not.toContain('First flowers of globes');
});
