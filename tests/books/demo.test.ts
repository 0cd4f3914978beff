import { expect, test } from 'vitest';
import { siteMadeAnew, siteOfFolder } from '../site/built.ts';
import { golden } from './golden.ts';

test('the figures of the demo garden are the ones kept here', { timeout: 120_000 }, async () => {
  const site = await siteMadeAnew('data/garden');
  const made = new Map([['figures.json', String(site.get('data/figures.json'))]]);
  const kept = golden('tests/books/demo', made).get('figures.json') ?? '{}';
  expect(JSON.parse(String(made.get('figures.json')))).toEqual(JSON.parse(kept));
  // Values first, for a readable difference; then every byte, order and spelling of numbers included.
  expect(made.get('figures.json')).toBe(kept);
});

test('every basis is listed once, and every figure’s basis is listed', async () => {
  const site = await siteOfFolder('data/garden');
  const { figures } = JSON.parse(String(site.get('data/figures.json'))) as {
    figures: Record<string, { basis: string }>;
  };
  const bases = JSON.parse(String(site.get('data/bases.json'))) as Record<string, string[]>;
  expect(Object.keys(figures).length).toBeGreaterThan(300);
  expect(Object.entries(figures).filter(([, { basis }]) => !bases[basis])).toEqual([]);
});
