import { expect, test } from 'vitest';
import { siteOf } from '../../books/garden-list.ts';
import { type Reading, readPage } from '../../books/reading.ts';
import { countsOf, gradeOf } from '../../books/reading-age.ts';
import { htmlPages, type Site } from '../../site/built.ts';

/** A child of six enters the first grade: common practice, no source. */
const AGE_AT_GRADE_NOUGHT = 5;
const OLDEST = 12;

const cardsOf = (site: Site): [string, Reading][] =>
  htmlPages(site)
    .filter(([path]) => path.startsWith('ripe/card/'))
    .map(([path, html]) => [path, readPage(html.replace(/<article class="card copy".*?<\/article>/gs, ''))]);

test.each(['day-zero', 'us-letter', 'eight-plants'])(
  'the cards of %s ask for no more than a child of twelve',
  async (name) => {
    const cards = cardsOf(await siteOf(name));
    expect(cards.length).toBeGreaterThan(0);
    for (const [path, { paragraphs }] of cards) {
      expect(paragraphs.length, path).toBeGreaterThanOrEqual(4);
      const age = (gradeOf(countsOf(paragraphs)) ?? Number.NaN) + AGE_AT_GRADE_NOUGHT;
      console.log(`${name}, ${path}: reading age ${age.toFixed(1)}`);
      expect(age, path).toBeLessThanOrEqual(OLDEST);
    }
  },
);
