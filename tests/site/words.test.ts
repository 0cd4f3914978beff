import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { htmlPages, siteOfTexts } from './built.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';
import { TRIAL_GARDENS } from './trial-gardens.ts';

const words = parse(readFileSync('layouts/messages/en.yaml', 'utf8')) as Record<string, Record<string, string>>;

const codeOf = (folder: string): string =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readFileSync(join(folder, path), 'utf8'))
    .join('\n');

test('every reason a figure can carry has its word', () => {
  const reasons = [
    ...[...codeOf('src').matchAll(/because\([^)]*?'([a-z-]+)'/g)].map(([, code]) => code),
    // Only the refusals of the comparison reach a figure by their own code.
    ...[...readFileSync('src/statistics/additive-model.ts', 'utf8').matchAll(/cannot: \{ code: '([a-z-]+)'/g)].map(
      ([, code]) => code,
    ),
  ];
  expect(new Set(reasons).size).toBeGreaterThan(12);
  expect(reasons.filter((code) => !words.short?.[code ?? ''])).toEqual([]);
});

test('every word for what cannot be said stands on a page of some garden here', async () => {
  const pages: string[] = [];
  for (const texts of Object.values({ ...LITTLE_GARDENS, ...TRIAL_GARDENS }))
    pages.push(...htmlPages(await siteOfTexts(texts)).map(([, html]) => html));
  const text = pages.join('\n');
  const inCell = (word: string): boolean => new RegExp(`<td[^>]*>${word}( [^<]*)?</td>`).test(text);
  const unseen = [
    ...Object.entries(words.short ?? {}).filter(([, word]) => !inCell(word)),
    ...['left-out', 'refusal', 'kinds'].flatMap((group) =>
      Object.entries(words[group] ?? {}).filter(([, word]) => !text.includes(word)),
    ),
  ].map(([code]) => code);
  // Told in a sentence, or in files alone; rows and beds stand in the book of three spots.
  const elsewhere = [
    'not-ranked',
    'median-not-bounded',
    'looks-only',
    'no-observations',
    'few-cuts',
    'few-over',
    'few-ticked',
    'one-look',
    'few-kept',
    'few-flowers',
    'none-kept-so-long',
    'shares-uncounted',
    'amount-untold',
    'content-untold',
    'share-untold',
    'few-years',
    'untested',
    'not-planted',
    'no-planting-out',
    'no-days-stated',
    'soil-unknown',
    'one-variety',
    'yardstick-unmeasured',
    'never-joined',
    'few-storms',
    'usual-chance',
    'few-cut-open',
    'one-state',
    'none-unripe',
    'no-set-day',
    'outgrown',
    'time-unknown',
    'season-over',
    'beyond-season',
    'few-cut-over',
    ...Object.keys(words.rain ?? {}),
    'row',
    'bed',
  ];
  expect(unseen.filter((code) => !elsewhere.includes(code))).toEqual([]);
});
