import { expect, test } from 'vitest';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { KEEP, loadedGarden, picked, RIPE, SIX, YOUNG } from './loaded-garden.ts';

type Texts = Readonly<Record<string, string>>;
const htmlOf = async (texts: Texts): Promise<string> => String((await siteOfTexts(texts)).get('thinning/index.html'));
const textOf = async (texts: Texts): Promise<string> => readPage(await htmlOf(texts)).uncautioned;

test('tells what others leave, what our plants kept, and when a set comes too late', async () => {
  const html = await htmlOf(loadedGarden(SIX));
  expect(html).toContain('<p class="finding" id="says-thin">');
  const text = readPage(html).uncautioned;
  expect(text).toContain('For bigger fruit leave a plant 2 to 3 globes.');
  expect(text).toContain('Globes of 2025: 4 fruits on 2 plants, about 5.0 kg each.');
  expect(text).toContain('Too late: fruit set after 16 Sept.');
  expect(text).toContain('2025: 6 fruits in the register, of them thinned 1, dropped young 1.');
  expect(text).toContain('Late small fruit are not a fault');
  expect(text).toContain('we claim nothing');
});

test('weighs in pounds where the garden does', async () => {
  const text = await textOf(loadedGarden(picked('A', 'P1', 'mass_lb: 9.5'), { units: 'us' }));
  expect(text).toContain('9.5 lb each');
  expect(text).not.toMatch(/\bkg\b/);
});

test('a crop eaten young is never thinned, beside one that may be', async () => {
  const alone = await textOf(loadedGarden('', { globe: RIPE + YOUNG }));
  expect(alone).toContain('Globes are picked young: thin none and go on picking.');
  expect(alone).not.toMatch(/bigger fruit|Too late|Late small|unripe/);
  const both = await textOf(loadedGarden('', { globe: KEEP + RIPE, bell: YOUNG }));
  expect(both).toContain('leave a plant 2 to 3 globes.');
  expect(both).toContain('Bells are picked young');
  expect(both).toContain('Too late for globes: fruit set after');
});

test('a crop without a number is named as such, beside one that has it', async () => {
  const alone = await textOf(loadedGarden('', { globe: '' }));
  expect(alone).toContain('How many to leave nobody tells here of globes.');
  expect(alone).toContain('No source found.');
  const both = await textOf(loadedGarden('', { bell: KEEP.replace('keep_fruits_low: 2, keep_fruits_high: 3, ', '') }));
  expect(both).toContain('leave a plant 2 to 3 globes. How many to leave nobody tells here of bells.');
});

test('before the first season the end is told in days, and without a variety the rule alone', async () => {
  const texts = loadedGarden('');
  const none = Object.fromEntries(Object.entries(texts).filter(([path]) => !path.startsWith('seasons')));
  expect(await textOf(none)).toContain('fruit set in the last 45 days of the season.');
  const bare = await textOf({ 'garden.yaml': texts['garden.yaml'] ?? '', 'varieties.yaml': '[]\n' });
  expect(bare).toContain('Seldom: a plant drops what it cannot carry.');
  expect(bare).not.toMatch(/bigger fruit|nobody tells here of/);
});

test('a home page prints neither chart nor table', async () => {
  const weighed = ['P1', 'P2', 'P3'].map((id) => picked(`F${id}`, id, 'mass_kg: 4')).join('');
  expect(await htmlOf(loadedGarden(weighed))).toContain('chart-thinning-2025-globe');
  const home = await htmlOf(loadedGarden(weighed, { edition: 'home' }));
  expect(home).not.toMatch(/<table|chart-thinning/);
});
