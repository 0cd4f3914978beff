import { expect, test } from 'vitest';
import { siteMadeAnew, siteOfFolder } from '../site/built.ts';
import { golden } from './golden.ts';

const anew = siteMadeAnew('data/garden');

test('the figures of the demo garden are the ones kept here', async () => {
  const site = await anew;
  const made = new Map([['figures.json', String(site.get('data/figures.json'))]]);
  const kept = golden('tests/books/demo', made).get('figures.json') ?? '{}';
  expect(JSON.parse(String(made.get('figures.json')))).toEqual(JSON.parse(kept));
  // Values first, for a readable difference; then every byte, order and spelling of numbers included.
  expect(made.get('figures.json')).toBe(kept);
});

test('what other tests made of it and kept changes no byte of the demo', async () => {
  const [fresh, kept] = [await anew, await siteOfFolder('data/garden')];
  expect([...kept.keys()]).toEqual([...fresh.keys()]);
  for (const [path, content] of fresh) expect(String(kept.get(path)) === String(content), path).toBe(true);
});

test('every basis is listed once, and every figure’s basis is listed', async () => {
  const site = await anew;
  const { figures } = JSON.parse(String(site.get('data/figures.json'))) as {
    figures: Record<string, { basis: string }>;
  };
  const bases = JSON.parse(String(site.get('data/bases.json'))) as Record<string, string[]>;
  expect(Object.keys(figures).length).toBeGreaterThan(300);
  expect(Object.entries(figures).filter(([, { basis }]) => !bases[basis])).toEqual([]);
});
