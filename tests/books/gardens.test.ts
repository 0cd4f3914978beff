import { describe, expect, test } from 'vitest';
import { contents } from '../../content/contents.ts';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { htmlPages, type Site } from '../site/built.ts';
import { bareHeadings, brokenLinks, markupFaults, missingInCss, visible } from '../site/page-faults.ts';
import { ALL_FACTS } from './all-facts.ts';
import type { Fact } from './garden-facts.ts';
import { folderOf, GARDENS, siteOf } from './garden-list.ts';
import { type Reading, readPage, wordsOf } from './reading.ts';

const CHAPTERS = contents.flatMap(({ kind, id }) => (kind === 'question' && id !== 'papers' ? [id] : []));
const QUESTIONS = new RegExp(`^(${CHAPTERS.join('|')})/(?!card)`);
/** Lists the signs of every crop, and has six cautions at the knife: long, and no padding. */
const CHECKLIST = /^ripe\//;
const NOT_WORDS = /\b(undefined|null|NaN|Infinity)\b|\[object|\{\{|\{%/;
const BLANK_BEFORE_STOP = /\s[,.;:!?](\s|$)/;
/** A file's name keeps its own letters, and the stop of "E. coli" ends no sentence. */
const LOWER_CASE_START = /(^|(?<!\b\p{Lu})[.!?]\s+)(?![\w-]+\.(?:json|yaml|csv)\b)\p{Ll}/u;

/** Words a question page may use for its answer while nothing has grown yet, notes and cautions not counted. */
const MOST_WORDS_AT_DAY_ZERO = 130;
/** Chapters that say what to do, and need no record for it. */
const WORK = /^(sowing|ground|mulch|feed|water|flowers|thinning|scouting|picking|seed|next|variety)\//;
const MOST_WORDS_OF_WORK = 180;
/** Words of one question's page in a home book, notes counted, cautions not: each stands once in the book. */
const MOST_WORDS_AT_HOME = 500;

const readings = (site: Site): [string, Reading][] => htmlPages(site).map(([path, html]) => [path, readPage(html)]);

const pageOf = (site: Site, page: string): Reading => {
  const html = site.get(`${page}index.html`);
  if (html === undefined) throw new Error(`there is no page ${page}`);
  return readPage(String(html));
};

const holds = (text: string, what: string | RegExp): boolean =>
  typeof what === 'string' ? text.includes(what) : what.test(text);

describe.each(GARDENS)('the garden $name', ({ name, warnings }) => {
  test('gives the warnings its records mean, and no error', () => {
    const { problems } = loadGarden(folderOf(name));
    expect(problems.map(({ severity, code }) => `${severity} ${code}`)).toEqual(
      warnings.map((code) => `warning ${code}`),
    );
  });

  test('has sound markup, and every link leads somewhere', async () => {
    const site = await siteOf(name);
    const pages = htmlPages(site);
    expect(pages.length).toBeGreaterThanOrEqual(9);
    for (const [path, html] of pages) {
      expect(markupFaults(path, html)).toEqual([]);
      expect(brokenLinks(site, path, html)).toEqual([]);
    }
    expect(missingInCss(site, 'assets/book.css')).toEqual([]);
  });

  test('has no section, table or cell that says nothing', async () => {
    const site = await siteOf(name);
    for (const [path, html] of htmlPages(site)) {
      const { tables } = readPage(html);
      expect(bareHeadings(html, 20), path).toEqual([]);
      expect(
        tables.filter((rows) => rows.length === 0),
        `${path}: tables without a row`,
      ).toEqual([]);
      expect(visible(html), path).not.toMatch(NOT_WORDS);
    }
  });

  test('is set as a book is: stops close up, sentences begin with a capital', async () => {
    for (const [path, { texts, findings, paragraphs, figureWords }] of readings(await siteOf(name))) {
      const faults = [
        ...texts.filter((text) => BLANK_BEFORE_STOP.test(text)).map((text) => `blank before a stop: ${text}`),
        ...[...findings, ...paragraphs, ...figureWords]
          .filter((text) => LOWER_CASE_START.test(text))
          .map((text) => `begins small: ${text}`),
      ];
      expect(faults, path).toEqual([]);
    }
  });

  test('says on every question’s page what to write down', async () => {
    const pages = readings(await siteOf(name)).filter(([path]) => QUESTIONS.test(path));
    expect(pages.length).toBeGreaterThanOrEqual(7);
    for (const [path, { noteTitles, findings }] of pages) {
      expect(noteTitles, path).toContain('What to write down');
      expect(findings, path).toHaveLength(1);
    }
  });

  test.each(ALL_FACTS[name] ?? [])(
    'page "$page" tells the truth: $why',
    async ({ page, part = 'all', says = [], never = [] }: Fact) => {
      const all = pageOf(await siteOf(name), page)[part];
      expect(
        { missing: says.filter((what) => !holds(all, what)), wrong: never.filter((what) => holds(all, what)) },
        all,
      ).toEqual({ missing: [], wrong: [] });
    },
  );
});

test('every garden has its facts, on every question', () => {
  expect(Object.keys(ALL_FACTS)).toEqual(GARDENS.map(({ name }) => name));
  for (const [name, facts] of Object.entries(ALL_FACTS)) {
    expect(facts.filter(({ says = [], never = [] }) => says.length + never.length > 0).length, name).toBe(facts.length);
    for (const question of ['', ...CHAPTERS.filter((id) => id !== 'weather').map((id) => `${id}/`)])
      expect(
        facts.some(({ page }) => (question ? page.startsWith(question) : page === '')),
        name + question,
      ).toBe(true);
  }
});

test('before the first fruit no page pads', async () => {
  const pages = readings(await siteOf('day-zero')).filter(([path]) => QUESTIONS.test(path) && !CHECKLIST.test(path));
  const counts = pages.map(([path, { body }]) => ({ path, words: wordsOf(body).length }));
  const most = (path: string): number => (WORK.test(path) ? MOST_WORDS_OF_WORK : MOST_WORDS_AT_DAY_ZERO);
  expect(counts.filter(({ path, words }) => words > most(path))).toEqual([]);
  expect(counts.filter(({ words }) => words < 5)).toEqual([]);
});

test('no question of a home book takes more than two sheets of words; all pages’ words reported', async () => {
  for (const { name } of GARDENS.filter(({ edition }) => edition === 'home')) {
    const pages = readings(await siteOf(name));
    const words = pages.map(([path, { uncautioned }]) => [path, wordsOf(uncautioned).length] as const);
    console.log(
      `${name}: ${words.map(([path, count]) => `${path.replace(/index\.html$/, '') || 'front'} ${count}`).join(', ')}`,
    );
    const questions = words.filter(([path]) => QUESTIONS.test(path) && !CHECKLIST.test(path));
    expect(questions.length).toBeGreaterThanOrEqual(5);
    expect(questions.filter(([, count]) => count > MOST_WORDS_AT_HOME)).toEqual([]);
  }
});

test('a book in pounds and inches holds no metric word', async () => {
  for (const [path, page] of readings(await siteOf('us-letter'))) {
    // The files are SI, and say so; methods name the formulas' own units.
    if (/^(records|methods|cautions)\//.test(path)) continue;
    // Sources keep the units they were written in, and stand beside the cautions.
    expect(page.uncautioned.match(/\b(mm|cm|kg|metres?)\b|°C|m²/g) ?? [], path).toEqual([]);
  }
});

test('a garden of one crop never hears of another', async () => {
  for (const [path, page] of readings(await siteOf('one-crop'))) {
    // Cautions tell of other fruit where the danger came from it, and sources keep their titles.
    if (/^(methods|cautions)\//.test(path)) continue;
    expect(page.uncautioned.match(/\w*(melon|cucumber|squash|pumpkin)\w*/gi) ?? [], path).toEqual([]);
  }
});

test('these checks can fail', () => {
  const page = readPage(
    '<main><h1>T</h1><p class="finding">so it was . Yes , no</p><table><tbody></tbody></table><div class="notes"><p class="note-title">N</p>x &amp; y</div></main>',
  );
  expect(page.findings).toEqual(['so it was . Yes , no']);
  expect(page.texts.filter((text) => BLANK_BEFORE_STOP.test(text))).toHaveLength(1);
  expect(page.findings[0]).toMatch(LOWER_CASE_START);
  expect('It rained. then it stopped.').toMatch(LOWER_CASE_START);
  expect('It held E. coli, they say.').not.toMatch(LOWER_CASE_START);
  expect('Blank. bases.json holds it.').not.toMatch(LOWER_CASE_START);
  expect('It had 2.5 kg. 3 were sound.').not.toMatch(LOWER_CASE_START);
  expect(page.tables).toEqual([[]]);
  expect(page.noteTitles).toEqual(['N']);
  expect(page.all).toContain('x & y');
  expect(page.body).not.toContain('x & y');
  expect(
    bareHeadings('<main><h2>One</h2><p>too short</p><h2>Two</h2><p>long enough to be read by anybody</p></main>', 20),
  ).toHaveLength(1);
});
