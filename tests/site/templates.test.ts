import { describe, expect, test } from 'vitest';
import { htmlPages, type Site, siteOfFolder, siteOfTexts } from './built.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';
import { bareHeadings, brokenLinks, DATA_BLOCK, markupFaults, missingInCss, visible } from './page-faults.ts';
import { TRIAL_GARDENS } from './trial-gardens.ts';

function checkSite(site: Site): void {
  const pages = htmlPages(site);
  expect(pages.length).toBeGreaterThanOrEqual(6);
  for (const [path, html] of pages) {
    expect(markupFaults(path, html)).toEqual([]);
    expect(visible(html)).not.toMatch(/\b(undefined|NaN|null|Infinity)\b|\[object|\{\{|\{%/);
    expect(html.replace(DATA_BLOCK, '')).not.toMatch(/<script/i);
    expect(html).not.toMatch(/<(h[1-3]|p|td|li)\b[^>]*>\s*<\/(h[1-3]|p|li)>/);
    expect(bareHeadings(html), path).toEqual([]);
    expect(brokenLinks(site, path, html)).toEqual([]);
  }
  expect(missingInCss(site, 'assets/book.css')).toEqual([]);
}

describe('every page', () => {
  test('of the demo garden', async () => checkSite(await siteOfFolder('data/garden')));
  test('of the starter', async () => checkSite(await siteOfFolder('data/starter')));
  for (const [name, texts] of Object.entries({ ...LITTLE_GARDENS, ...TRIAL_GARDENS })) {
    test(`of a garden with ${name}`, async () => checkSite(await siteOfTexts(texts)));
  }
});

test('a name that looks like markup stays text', async () => {
  const texts = { ...LITTLE_GARDENS['pickings only'] };
  const name = `<img src=x onerror="alert(1)"> & 'sons' \\`;
  texts['garden.yaml'] = String(texts['garden.yaml']).replace('Corner by the wall', JSON.stringify(name));
  const site = await siteOfTexts(texts);
  checkSite(site);
  expect(String(site.get('index.html'))).not.toContain('<img');
  expect(String(site.get('index.html'))).toContain('&lt;img');
});

test('the checks of a page can fail', async () => {
  expect(bareHeadings('<h2>One</h2><div class="text"></div><h2>Two</h2><p>words</p>')).toHaveLength(1);
  expect(visible('<section aria-label="Fruits of undefined">NaN</section>')).toMatch(/undefined.*NaN/);
  const site = new Map([
    ['index.html', ''],
    ['assets/book.css', 'src:url(fonts/none.woff2)'],
  ]);
  expect(missingInCss(site, 'assets/book.css')).toEqual(['fonts/none.woff2']);
  expect(
    brokenLinks(site, 'index.html', '<a href="index.html#no"><a href="none.html"><img src="https://a.example/">'),
  ).toHaveLength(3);
});
