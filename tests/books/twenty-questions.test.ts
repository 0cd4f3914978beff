import { parse } from 'parse5';
import { describe, expect, test } from 'vitest';
import { attributeOf, type Element, elementsUnder, wordsOf } from '../../src/print/markup.ts';
import { type Site, siteOfFolder } from '../site/built.ts';

/** Question, the page that answers it, and the id of the sentence or table that does. */
const QUESTIONS: readonly (readonly [question: string, page: string, id: string])[] = [
  ['what to grow', 'variety/', 'says-grow'],
  ['will it ripen here', 'variety/', 'says-ripen-here'],
  ['when to sow', 'sowing/', 'says-sow'],
  ['how many seeds', 'sowing/', 'says-seeds'],
  ['how big a mound', 'ground/', 'says-mound'],
  ['how much compost', 'ground/', 'says-compost'],
  ['is my manure safe', 'ground/', 'says-manure-clock'],
  ['when to mulch', 'mulch/', 'says-mulch'],
  ['how much water', 'water/', 'says-water'],
  ['when to stop nitrogen', 'feed/', 'says-nitrogen-stop'],
  ['is that flower female', 'flowers/', 'says-female'],
  ['must I pollinate', 'flowers/', 'says-pollinate'],
  ['did it set', 'flowers/', 'says-set'],
  ['thin or not', 'thinning/', 'says-thin'],
  ['when will it be ripe', 'maturity/', 'says-ripe-when'],
  ['is it ripe', 'ripe/', 'says-ripe'],
  ['pick before rain', 'rain/', 'says-rain'],
  ['what did we get', 'yield/', 'says-yield'],
  ['which seed to keep', 'seed/', 'says-seed'],
  ['what next year', 'next/', 'says-next'],
];

const elementsOf = (site: Site, page: string): Element[] =>
  elementsUnder(parse(String(site.get(`${page}index.html`) ?? '')));

/** Pages a page leads to by one link. */
const linksFrom = (site: Site, page: string): string[] =>
  elementsOf(site, page).flatMap((one) => {
    const href = one.tagName === 'a' ? attributeOf(one, 'href') : null;
    if (href === null || /^[a-z]+:|^#/.test(href)) return [];
    const { pathname } = new URL(href, `file:///${page}index.html`);
    return pathname.endsWith('/index.html') ? [pathname.slice(1, -'index.html'.length)] : [];
  });

function stepsFromFront(site: Site): Map<string, number> {
  const steps = new Map([['', 0]]);
  for (const page of ['', ...linksFrom(site, '')]) {
    const next = (steps.get(page) ?? 1) + 1;
    if (!steps.has(page)) steps.set(page, 1);
    for (const other of linksFrom(site, page)) if (!steps.has(other)) steps.set(other, page === '' ? 1 : next);
  }
  return steps;
}

const FEWEST_WORDS = 5;

describe.each(['tests/books/gardens/day-zero', 'data/garden', 'tests/books/gardens/southern'])('in %s', (folder) => {
  test.each(QUESTIONS)('“%s?” is answered within two links of the front page', async (_question, page, id) => {
    const site = await siteOf(folder);
    expect(stepsFromFront(site).get(page) ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(2);
    const answer = elementsOf(site, page).find((one) => attributeOf(one, 'id') === id);
    expect(answer, `${page}#${id}`).toBeDefined();
    expect(wordsOf(answer as Element).split(' ').length).toBeGreaterThanOrEqual(FEWEST_WORDS);
  });
});

const built = new Map<string, Promise<Site>>();
function siteOf(folder: string): Promise<Site> {
  const site = built.get(folder) ?? siteOfFolder(folder);
  built.set(folder, site);
  return site;
}
