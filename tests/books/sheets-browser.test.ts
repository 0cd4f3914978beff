import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { htmlPages } from '../site/built.ts';
import { chromiumOrSay, openChromium } from '../site/chromium.ts';
import { type Shelf, shelve } from './browsing.ts';
import { siteOf } from './garden-list.ts';

const path = chromiumOrSay('sheets to write on: rows, box, sides');
const LONG = 120_000;

/** What fits A4 and Letter alike. */
const BOX_MM = { width: 186, height: 255 };
const LEAST_ROW_MM = 9;
const PX_PER_MM = 96 / 25.4;

/** Heights in px of the rows and of the sides of a page, and how many backs it has. */
const MEASURE = `({
  rows: [...document.querySelectorAll('.write tbody tr')].map((row) => row.getBoundingClientRect().height),
  sides: [...document.querySelectorAll('.side')].map((side) => side.getBoundingClientRect().height),
  backs: document.querySelectorAll('.cautions').length,
})`;

/** To hand over and cut out, not to fill line by line. */
const PAPERS = /^sheets\/(results-[a-z-]+|away|share-label|leave-tag|girth-strip|dip-chart)\//;

/** The sheet asks for paper laid on its side. */
const ON_ITS_SIDE = `/@page \\{ size: \\w+ landscape/.test(document.head.innerHTML)`;

describe.skipIf(path === null)('sheets to write on, in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openChromium(path ?? '');
  }, LONG);
  afterAll(() => browser?.close());

  // Gardens with a tank have a log of dips and a dip chart beside the fourteen.
  test.each([
    ['day-zero', 17],
    ['us-letter', 18],
    ['notebook-years', 15],
    ['one-crop', 16],
  ] as const)(
    'of %s: %d papers, rows of 9 mm and more, sides that fit both papers, cautions on one back',
    async (name, papers) => {
      const site = await siteOf(name);
      const shelf: Shelf = shelve(site);
      const pages = htmlPages(site).filter(([page]) => /^sheets\/./.test(page) && page !== 'sheets/index.html');
      expect(pages).toHaveLength(papers);
      for (const [page] of pages) {
        const tab = await browser.newPage();
        await tab.goto(shelf.address(page));
        const box = (await tab.evaluate(ON_ITS_SIDE)) ? { width: BOX_MM.height, height: BOX_MM.width } : BOX_MM;
        await tab.setViewportSize({ width: Math.round(box.width * PX_PER_MM), height: 900 });
        await tab.emulateMedia({ media: 'print' });
        const { rows, sides, backs } = (await tab.evaluate(MEASURE)) as {
          rows: number[];
          sides: number[];
          backs: number;
        };
        if (!PAPERS.test(page)) expect(rows.length, page).toBeGreaterThanOrEqual(8);
        if (rows.length > 0) expect(Math.min(...rows) / PX_PER_MM, page).toBeGreaterThanOrEqual(LEAST_ROW_MM);
        expect(Math.max(...sides) / PX_PER_MM, page).toBeLessThanOrEqual(box.height);
        const pdf = (await tab.pdf({ preferCSSPageSize: true })).toString('latin1');
        expect((pdf.match(/\/Type \/Page\b/g) ?? []).length, page).toBe(sides.length + backs);
        await tab.close();
      }
      shelf.clear();
    },
    LONG,
  );
});
