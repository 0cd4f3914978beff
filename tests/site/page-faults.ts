import { HtmlValidate } from 'html-validate';
import type { Site } from './built.ts';

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

/** What the validator says against a page, line by line. */
export const markupFaults = (path: string, html: string): string[] =>
  validator
    .validateStringSync(html, path)
    .results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line }) => `${path}:${line} ${ruleId}: ${message}`),
    );

/** Data for machines, which no browser runs: the only script a page may hold. */
export const DATA_BLOCK = /<script type="application\/ld\+json">[^<]*<\/script>/g;

/** The words of a page as they are read: tags away, but the words a screen reader takes from them kept. */
export const visible = (html: string): string =>
  html
    .replace(DATA_BLOCK, '')
    .replace(/<style>.*?<\/style>/gs, '')
    .replace(/<svg.*?<\/svg>/gs, (svg) => svg.replace(/ d="[^"]*"/g, ''))
    .replace(/<[^>]*?\b(?:aria-label|title|alt)="([^"]*)"[^>]*>/g, ' $1 ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

/** Headings of the second rank with too few letters between them and the next heading or the end of the page. */
export const bareHeadings = (html: string, letters = 1): string[] =>
  (html.split('</main>')[0] ?? '')
    .split(/(?=<h2\b)/)
    .filter((section) => section.startsWith('<h2'))
    .filter((section) => lettersIn(visible(section.replace(/<h2\b.*?<\/h2>/s, ''))) < letters)
    .map((section) => visible(section.slice(0, 200)));

const lettersIn = (text: string): number => (text.match(/\p{L}/gu) ?? []).length;

/** Files that a stylesheet names and the site lacks. */
export const missingInCss = (site: Site, path: string): string[] =>
  [...String(site.get(path)).matchAll(/url\(([^)]*)\)/g)].flatMap(([, link = '']) =>
    site.has(new URL(link, `site:///${path}`).href.slice('site:///'.length)) ? [] : [link],
  );

/** Links and references of a page that lead nowhere in the site, or out of it. */
export function brokenLinks(site: Site, path: string, html: string): string[] {
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
