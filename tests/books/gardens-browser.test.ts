import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { htmlPages } from '../site/built.ts';
import { chromiumOrSay, openChromium } from '../site/chromium.ts';
import { type Shelf, shelve, type Visit, visit } from './browsing.ts';
import { GARDENS, siteOf } from './garden-list.ts';

const path = chromiumOrSay('eight gardens in a browser: accessibility, widths, paper');
/** For tests that open every page: a busy machine takes several times what an idle one does. */
const LONG = 240_000;

// ISO 216: A4 is 210 × 297 mm, 595 × 842 pt. ANSI/ASME Y14.1: Letter is 8.5 × 11 in, 612 × 792 pt.
// @page leaves 17 mm free on the left and on the right.
const PAPER = {
  A4: { size: '595x842', onItsSide: '842x595', printSpaceMm: 176 },
  Letter: { size: '612x792', onItsSide: '792x612', printSpaceMm: 181.9 },
};

/** Printed by themselves, as many as are wanted. */
const isCarriedOut = ({ page }: OfPage): boolean => /^(sheets|[a-z]+\/card(-[a-z]+)?)\//.test(page);
/** Cards fill the paper; tests of the prints hold them to their marks. */
const isCard = ({ page }: OfPage): boolean => /^[a-z]+\/card(-[a-z]+)?\//.test(page);

interface OfPage {
  readonly page: string;
}

/** A telephone, a desk of 1280 px seen at 200 %, and a desk. */
const WIDTHS = [360, 640, 1100];
/** Sheets to write on are alike in all gardens, and are seen in these. */
const SHEETS_SEEN_IN = ['day-zero', 'us-letter'];
/** Pages open at a time: more only make each other wait. */
const AT_ONCE = 4;

describe.skipIf(path === null)('in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openChromium(path ?? '');
  }, LONG);
  afterAll(() => browser?.close());

  describe.each(GARDENS)('the garden $name', ({ name, edition, paper, sheets }) => {
    let shelf: Shelf;
    const visits: Visit[] = [];
    beforeAll(async () => {
      const site = await siteOf(name);
      shelf = shelve(site);
      const { printSpaceMm } = PAPER[paper];
      const pages = htmlPages(site)
        .map(([page]) => page)
        .filter((page) => !page.startsWith('sheets/') || SHEETS_SEEN_IN.includes(name));
      const visitSome = async (): Promise<void> => {
        for (let page = pages.shift(); page !== undefined; page = pages.shift())
          visits.push(await visit(browser, shelf, page, { widths: WIDTHS, printSpaceMm }));
      };
      await Promise.all(Array.from({ length: AT_ONCE }, visitSome));
    }, LONG);
    afterAll(() => shelf?.clear());

    test('is readable by anybody, on a telephone and at a desk', () => {
      expect(visits.length).toBeGreaterThanOrEqual(9);
      expect(visits.flatMap(({ page, onScreen }) => onScreen.map((fault) => `${page}: ${fault}`))).toEqual([]);
    });

    test(`prints as a ${edition} book of ${sheets.least} to ${sheets.most} sheets of ${paper}`, () => {
      const { size, onItsSide } = PAPER[paper];
      const isRight = (one: (typeof visits)[number]): boolean =>
        one.sizes.join() === size || (isCarriedOut(one) && one.sizes.join() === onItsSide);
      expect(visits.filter((one) => !isRight(one))).toEqual([]);
      expect(visits.filter((one) => !isCard(one) && one.cutOff.length > 0)).toEqual([]);
      const book = visits.filter((one) => !isCarriedOut(one));
      const told = book.map(({ page, sheets: count }) => `${page} ${count}`).join(', ');
      const sum = book.reduce((total, { sheets: count }) => total + count, 0);
      expect(sum, told).toBeGreaterThanOrEqual(sheets.least);
      expect(sum, told).toBeLessThanOrEqual(sheets.most);
    });
  });
});
