import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { parse } from 'yaml';
import { htmlPages, siteOfFolder, siteOfTexts } from './built.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';
import { TRIAL_GARDENS } from './trial-gardens.ts';
test('probe', async () => {
  const words = parse(readFileSync('layouts/messages/en.yaml', 'utf8'));
  const sites = [await siteOfFolder('data/garden'), await siteOfFolder('data/starter'), await siteOfFolder('tests/books/three-spots/garden')];
  for (const t of Object.values({ ...LITTLE_GARDENS, ...TRIAL_GARDENS })) sites.push(await siteOfTexts(t));
  const text = sites.flatMap((s) => htmlPages(s).map(([, h]) => h)).join('\n');
  for (const group of ['short', 'left-out', 'refusal', 'kinds', 'measure'])
    for (const [k, w] of Object.entries(words[group])) {
      const seen = group === 'short' ? new RegExp(`<td[^>]*>${w}( [^<]*)?</td>`).test(text) : text.includes(String(w));
      if (!seen) console.log('unseen', group, k, w);
    }
});
