import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { htmlPages, type Site, siteOfFolder, siteOfTexts } from './built.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';
import { TRIAL_GARDENS } from './trial-gardens.ts';

const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: {
    // Inline SVG carries its geometry and a width column in attributes; the stylesheet of @page depends on the garden.
    'no-inline-style': 'off',
    // A finding may be longer than a search engine likes its titles.
    'long-title': 'off',
    // The template engine leaves blanks at the ends of lines.
    'no-trailing-whitespace': 'off',
  },
});

/** The words of a page as they are read: tags away, but the words a screen reader takes from them kept. */
const visible = (html: string): string =>
  html
    .replace(/<style>.*?<\/style>/gs, '')
    .replace(/<svg.*?<\/svg>/gs, (svg) => svg.replace(/ d="[^"]*"/g, ''))
    .replace(/<[^>]*?\b(?:aria-label|title|alt)="([^"]*)"[^>]*>/g, ' $1 ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

/** Headings of the second rank with no word between them and the next heading or the end of the page. */
const bareHeadings = (html: string): string[] =>
  (html.split('</main>')[0] ?? '')
    .split(/(?=<h2\b)/)
    .filter((section) => section.startsWith('<h2'))
    .filter((section) => !/\w/.test(visible(section.replace(/<h2\b.*?<\/h2>/s, ''))));

/** Files that a stylesheet names and the site lacks. */
const missingInCss = (site: Site, path: string): string[] =>
  [...String(site.get(path)).matchAll(/url\(([^)]*)\)/g)].flatMap(([, link = '']) =>
    site.has(new URL(link, `site:///${path}`).href.slice('site:///'.length)) ? [] : [link],
  );

/** Links and references of a page that lead nowhere in the site, or out of it. */
function brokenLinks(site: Site, path: string, html: string): string[] {
  const base = `site:///${path}`;
  return [...html.matchAll(/<[^>]*?\b(?:href|src)="([^"]*)"/g)].flatMap(([, link = '']) => {
    const goal = new URL(link, base);
    const file = goal.pathname.slice(1);
    if (goal.protocol !== 'site:') return [`${path}: ${link} leaves the site`];
    if (!site.has(file)) return [`${path}: ${link} leads nowhere`];
    const fragment = decodeURIComponent(goal.hash.slice(1));
    return fragment && !String(site.get(file)).includes(`id="${fragment}"`)
      ? [`${path}: ${link} has no such place`]
      : [];
  });
}

function checkSite(site: Site): void {
  const pages = htmlPages(site);
  expect(pages.length).toBeGreaterThanOrEqual(6);
  for (const [path, html] of pages) {
    const report = validator.validateStringSync(html, path);
    const messages = report.results.flatMap(({ messages: found }) =>
      found.map(({ ruleId, message, line }) => `${path}:${line} ${ruleId}: ${message}`),
    );
    expect(messages).toEqual([]);
    expect(visible(html)).not.toMatch(/\b(undefined|NaN|null|Infinity)\b|\[object|\{\{|\{%/);
    expect(html).not.toMatch(/<script/i);
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
