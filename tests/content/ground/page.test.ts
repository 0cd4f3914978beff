import { expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { LITTLE_GARDENS } from '../../site/little-gardens.ts';
import { type GroundOf, groundGarden } from './ground-garden.ts';

const htmlOf = async (texts: Readonly<Record<string, string>>, today: Day | null = null): Promise<string> =>
  String((await siteOfTexts(texts, today)).get('ground/index.html'));
const textOf = async (of: GroundOf = {}, today: string | null = null): Promise<string> =>
  readPage(await htmlOf(groundGarden(of), today as Day | null)).uncautioned;

test('names the crop nobody tells of, and the spots that stood too close', async () => {
  const text = await textOf();
  expect(text).toContain('others give a plant of globes 0.8 to 2.0 m².');
  expect(text).toContain('How much room bells need, no source here says.');
  expect(text).toContain('Ours of 2025 stood closer in M1, M2.');
  expect(text).toContain('How much bells want, no source here says.');
  expect(text).toContain('7 to 96 litres on our average spot of 3.0 m² (up to 1.1 barrows) hold all the nitrogen');
  expect(text).toContain('M1, M2 globes 2.0 3 1 to 2');
  expect(text).toContain('M3 bells 5.0 2 nobody says');
  expect(text).toContain('After any, picking waits 120 days, or 90 where fruit hangs clear of the ground.');
});

const MANURE = `- {given_on: 2025-04-20, spots: [M1, M3], material: manure-raw}
- {given_on: 2025-05, material: manure-dried}
`;

test('tells every wait of raw manure with its spots', async () => {
  const text = await textOf({ feeding: MANURE, edition: 'home' }, '2025-07-20');
  expect(text).toContain(
    'Raw manure of 20 Apr 2025 on M1: pick nothing before 18 Aug 2025 (120 days); that day is still to come.',
  );
  expect(text).toContain('on M3: pick nothing before 19 Jul 2025 (90 days); that day has passed.');
  // 120 days from 31 May: 30 + 31 + 31 + 28 September.
  expect(text).toContain('Dried manure of May 2025 on M1, M2, T1: pick nothing before 28 Sept 2025');
  expect(text).not.toContain('No raw or dried manure');
});

test('a day nobody wrote down makes no day safe', async () => {
  const text = await textOf({ feeding: '- {given_on: unknown, material: manure-raw}\n', plantings: '' });
  expect(text).toContain('Raw manure on every spot: nobody wrote down its day, so no day can be called safe.');
});

test('a home book keeps to sentences', async () => {
  const html = await htmlOf(groundGarden({ edition: 'home' }));
  expect(html).not.toContain('<table');
  expect(await htmlOf(groundGarden())).toContain('<table');
});

test.each(Object.entries(LITTLE_GARDENS))('answers the three questions: %s', async (_name, texts) => {
  const html = await htmlOf(texts);
  for (const id of ['says-mound', 'says-compost', 'says-manure-clock'])
    expect(html.match(new RegExp(`id="${id}">[^<]{20,}`)), id).not.toBeNull();
  expect(readPage(html).uncautioned).not.toMatch(/\b(undefined|null|NaN)\b/);
});

test('before the first season, and without one source, it says what is common practice', async () => {
  const { 'garden.yaml': garden = '', 'varieties.yaml': varieties = '', 'crops/bell.yaml': bell = '' } = groundGarden();
  const text = readPage(
    await htmlOf({
      'garden.yaml': garden,
      'varieties.yaml': varieties.replace('globe', 'bell'),
      'crops/bell.yaml': bell,
    }),
  ).uncautioned;
  expect(text).toContain('No raw or dried manure is written down. After any');
  // 3 cm on 3.00667 m².
  expect(text).toContain('Common practice is a layer of compost 3 cm deep, worked in: 90 litres on 3.0 m².');
});
