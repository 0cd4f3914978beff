import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { AXE, axeFaults } from '../books/browsing.ts';
import { htmlPages, type Site, siteOfFolder, siteOfTexts } from './built.ts';
import { chromiumOrSay, openChromium } from './chromium.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';

const path = chromiumOrSay('pages in a browser: accessibility, widths, fonts, print');
/** For tests that open every page: a busy machine takes several times what an idle one does. */
const LONG = 120_000;

describe.skipIf(path === null)('in a browser, straight from the disk', () => {
  let folder = '';
  const sites = new Map<string, Site>();
  let browser: Browser;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'groundspot-pages-'));
    browser = await openChromium(path ?? '');
    sites.set('demo', await siteOfFolder('data/garden'));
    sites.set('starter', await siteOfFolder('data/starter'));
    sites.set('letter', await siteOfTexts(LITTLE_GARDENS['pounds and Letter'] ?? {}));
    sites.set('three', await siteOfFolder('tests/books/three-spots/garden'));
    for (const [name, site] of sites) {
      for (const [file, content] of site) {
        const goal = join(folder, name, file);
        mkdirSync(dirname(goal), { recursive: true });
        writeFileSync(goal, content);
      }
    }
  }, LONG);

  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const address = (name: string, file: string): string => pathToFileURL(join(folder, name, file)).href;
  const pagesOf = (name: string): string[] => htmlPages(sites.get(name) ?? new Map()).map(([file]) => file);

  /** An empty tab; `turn` opens a page in it, for tests that look at every page of a book. */
  async function newTab(options: BrowserContextOptions = {}): Promise<Page> {
    const context = await browser.newContext(options);
    return context.newPage();
  }

  async function turn(page: Page, name: string, file: string): Promise<void> {
    await page.goto(address(name, file));
    await page.evaluate('document.fonts.ready');
  }

  async function open(name: string, file: string, options: BrowserContextOptions = {}): Promise<Page> {
    const page = await newTab(options);
    await turn(page, name, file);
    return page;
  }

  test(
    'no page complains, asks for anything outside, or is wider than the screen, a telephone’s or a desk’s',
    async () => {
      const page = await newTab();
      const faults: string[] = [];
      page.on('console', (message) => faults.push(`${page.url()}: console: ${message.text()}`));
      page.on('pageerror', (error) => faults.push(`${page.url()}: ${error.message}`));
      page.on('requestfailed', (request) => faults.push(`${page.url()}: failed: ${request.url()}`));
      page.on('request', (request) => {
        if (!/^(file|data):/.test(request.url())) faults.push(`${page.url()}: asks for ${request.url()}`);
      });
      for (const name of sites.keys()) {
        for (const file of pagesOf(name)) {
          await page.setViewportSize({ width: 360, height: 740 });
          await turn(page, name, file);
          for (const width of [360, 1000]) {
            await page.setViewportSize({ width, height: 740 });
            const excess = await page.evaluate(
              'document.documentElement.scrollWidth - document.documentElement.clientWidth',
            );
            expect(`${name}/${file} ${width}: ${excess}`).toBe(`${name}/${file} ${width}: 0`);
          }
          expect(faults).toEqual([]);
        }
      }
      await page.context().close();
    },
    LONG,
  );

  test(
    'axe finds nothing on a telephone and at a desk',
    async () => {
      const page = await newTab({ bypassCSP: true });
      for (const file of pagesOf('demo')) {
        await page.setViewportSize({ width: 360, height: 900 });
        await turn(page, 'demo', file);
        await page.addScriptTag({ path: AXE });
        for (const width of [360, 1100]) {
          await page.setViewportSize({ width, height: 900 });
          const found = await axeFaults(page, width === 360);
          expect(found.map((fault) => `${file} ${width}: ${fault}`)).toEqual([]);
        }
      }
      await page.context().close();
    },
    LONG,
  );

  test('the faces are ours, from the disk', async () => {
    const page = await open('demo', 'yield/index.html');
    const loaded = await page.evaluate(
      '[...document.fonts].filter((face) => face.status === "loaded").map((face) => face.family.replace(/["\']/g, ""))',
    );
    for (const family of ['Young Serif', 'Source Serif 4', 'Source Sans 3']) expect(loaded).toContain(family);
    await page.context().close();
  });

  test('nothing needs a script', async () => {
    const text = async (javaScriptEnabled: boolean): Promise<string | null> => {
      const context = await browser.newContext({ javaScriptEnabled });
      const page = await context.newPage();
      await page.goto(address('demo', 'yield/index.html'));
      const words = await page.locator('main').textContent();
      await context.close();
      return words;
    };
    expect(await text(false)).toBe(await text(true));
  });

  test('a keyboard reaches the page at once', async () => {
    const page = await open('demo', 'yield/index.html');
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.getAttribute("href")')).toBe('#page');
    await page.context().close();
  });

  /** What the keyboard can reach, in the order of the page, by the place of each among all parts. */
  const REACHABLE =
    '[...document.querySelectorAll("a[href], [tabindex]")].filter((part) => part.checkVisibility()).map((part) => [...document.querySelectorAll("*")].indexOf(part))';
  /** The part that has the keyboard, and how wide the line around it is. */
  const HELD =
    '[[...document.querySelectorAll("*")].indexOf(document.activeElement), parseFloat(getComputedStyle(document.activeElement).outlineWidth)]';

  test.each(['yield/index.html', 'ripe/index.html', 'sheets/visits/index.html'])(
    'a keyboard reaches all of %s, in the order of the page, and shows where it is',
    async (file) => {
      const page = await open('demo', file);
      const reachable = (await page.evaluate(REACHABLE)) as number[];
      expect(reachable.length).toBeGreaterThan(4);
      const held: [number, number][] = [];
      for (const _ of reachable) {
        await page.keyboard.press('Tab');
        held.push((await page.evaluate(HELD)) as [number, number]);
      }
      expect(held.map(([part]) => part)).toEqual(reachable);
      expect(held.filter(([, outline]) => !(outline > 0))).toEqual([]);
      await page.context().close();
    },
  );

  test('nothing moves, whoever asks for it', async () => {
    const page = await open('demo', 'ripe/index.html');
    const moving = await page.evaluate(
      '[...document.querySelectorAll("*")].map((part) => getComputedStyle(part)).filter((style) => style.animationName !== "none" || style.transitionDuration !== "0s" || style.scrollBehavior !== "auto").length',
    );
    expect(moving).toBe(0);
    await page.context().close();
  });

  /** Pages of the printed page and their size in points, read from the PDF itself. */
  async function printed(name: string, file: string): Promise<{ count: number; sizes: string[] }> {
    const page = await open(name, file);
    const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString('latin1');
    await page.context().close();
    const sizes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
      ([, width, height]) => `${Math.round(Number(width))}x${Math.round(Number(height))}`,
    );
    return { count: (pdf.match(/\/Type \/Page\b/g) ?? []).length, sizes: [...new Set(sizes)] };
  }

  /** The words of the page, those for a screen only and the second to fourth print of a card left out. */
  const WORDS =
    '[...document.querySelectorAll("main *")].filter((part) => part.checkVisibility() && !part.closest(".screen, .copy")).flatMap((part) => [...part.childNodes].filter((node) => node.nodeType === 3).map((node) => node.data.trim())).filter(Boolean).join(" ")';
  /** Parts of the page that stand out over the right edge, in px. */
  const OVER_THE_EDGE =
    '[...document.querySelectorAll("main *")].filter((part) => part.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map((part) => part.tagName + " " + Math.round(part.getBoundingClientRect().right))';

  // @page: 17 mm left and right, so A4 leaves 176 mm and Letter 181.9 mm, at 96 px to 25.4 mm.
  test.each([
    ['demo', 176],
    ['starter', 176],
    ['letter', 181.9],
    ['three', 176],
  ])(
    'on paper no word of %s is lost and nothing is cut off at the edge',
    async (name, mm) => {
      const width = Math.floor((mm * 96) / 25.4);
      const page = await newTab({ viewport: { width, height: 900 } });
      for (const file of pagesOf(name)) {
        await page.emulateMedia({ media: 'screen' });
        await turn(page, name, file);
        const onScreen = await page.evaluate(WORDS);
        await page.emulateMedia({ media: 'print' });
        expect(await page.evaluate(WORDS), file).toBe(onScreen);
        expect(String(onScreen).length, file).toBeGreaterThan(100);
        // Cards fill the whole paper, and are held to their marks elsewhere.
        if (!/^[a-z]+\/card(-[a-z]+)?\//.test(file))
          expect(await page.evaluate(OVER_THE_EDGE), `${name}/${file}`).toEqual([]);
      }
      await page.context().close();
    },
    LONG,
  );

  // ISO 216: A4 is 210 × 297 mm, 595 × 842 pt. ANSI/ASME Y14.1: Letter is 8.5 × 11 in, 612 × 792 pt.
  test('the book prints on A4', async () => {
    expect(await printed('three', 'yield/index.html')).toEqual({ count: 2, sizes: ['595x842'] });
    const demo = await printed('demo', 'yield/index.html');
    expect(demo.count).toBeGreaterThanOrEqual(3);
    expect(demo.count).toBeLessThanOrEqual(5);
  });

  test('the book prints on Letter', async () => {
    expect(await printed('letter', 'yield/index.html')).toEqual({ count: 2, sizes: ['612x792'] });
  });
});
