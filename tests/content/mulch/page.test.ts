import { expect, test } from 'vitest';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { LITTLE_GARDENS } from '../../site/little-gardens.ts';
import { LAID, type MulchOf, mulchGarden } from './mulch-garden.ts';

const htmlOf = async (texts: Readonly<Record<string, string>>): Promise<string> =>
  String((await siteOfTexts(texts)).get('mulch/index.html'));
const textOf = async (of: MulchOf = {}): Promise<string> => readPage(await htmlOf(mulchGarden(of))).uncautioned;

test('says when ours went on, and each laying', async () => {
  const text = await textOf({ mulching: LAID });
  expect(text).toContain('Ours of 2025 went on 2 to 3 weeks after planting out.');
  expect(text).toContain('10 Jun straw: M1, M2 2 to 3 8 6');
  expect(text).toContain('15 Jul wood chips, topped up: M1 8 not said not said');
  expect(text).toContain('6 May plastic: M2 −3 not said not said');
  expect(text).not.toContain('30 Sept');
});

test.each([
  ['2025-05-10', 'before planting out'],
  ['2025-05-20', 'at planting out'],
  ['2025-05-27', 'one week after planting out'],
])('laid on %s: %s', async (day, says) =>
  expect(await textOf({ mulching: `- {laid_on: ${day}, spots: [M1], material: straw}\n`, edition: 'home' })).toContain(
    `Ours of 2025 went on ${says}.`,
  ),
);

test('a home book keeps to sentences, and names the commonest spot', async () => {
  const html = await htmlOf(mulchGarden({ edition: 'home', mulching: LAID }));
  expect(html).not.toContain('<table');
  expect(readPage(html).body).toContain('for 3.0 m² 150 to 240 litres, 1.8 to 2.8 barrows');
});

test('tells gallons and inches to a garden that reads them', async () => {
  const text = await textOf({ units: 'us', mulching: LAID });
  // In feet no two spots are alike: 2 m² are 21.5; 100 and 160 litres are 26.4 and 42.3 gallons; 6 cm are 2.36 inches.
  expect(text).toContain('for 22 ft² 26 to 42 gallons, 1.2 to 1.9 barrows');
  expect(text).toContain('10 Jun straw: M1, M2 2 to 3 8 2.36');
});

test.each(Object.entries(LITTLE_GARDENS))('answers its question: %s', async (_name, texts) => {
  const html = await htmlOf(texts);
  expect(html).toMatch(/id="says-mulch">\s*[^<]{20,}/);
  expect(readPage(html).uncautioned).not.toMatch(/\b(undefined|null|NaN)\b/);
});
