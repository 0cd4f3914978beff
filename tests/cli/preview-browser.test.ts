import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chromiumOrSay, openChromium } from '../site/chromium.ts';
import { previewed } from './previewing.ts';

const path = chromiumOrSay('the preview in a browser: loading anew by itself, the page of what is wrong');
const axe = createRequire(import.meta.url).resolve('axe-core');
const FRUITS = 'seasons/2025/fruits.yaml';
const LONG = 60_000;

describe.skipIf(path === null)('in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openChromium(path ?? '');
  });
  afterAll(async () => browser?.close());

  /** Opens a page and notes what it complains of, the answer that stands for a page at fault aside. */
  async function open(address: string, options: object = {}): Promise<{ page: Page; faults: string[] }> {
    const page = await (await browser.newContext({ viewport: { width: 900, height: 500 }, ...options })).newPage();
    const faults: string[] = [];
    page.on('console', (message) => {
      if (!message.text().includes('503')) faults.push(message.text());
    });
    page.on('pageerror', (error) => faults.push(error.message));
    await page.goto(address);
    return { page, faults };
  }

  test(
    'a page loads itself anew after a save, at the same place, through a fault and back',
    async () => {
      const { address, edit } = await previewed('data/starter');
      const { page, faults } = await open(`${address}yield/`);
      await page.locator('td', { hasText: /^7.4$/ }).waitFor();
      await page.evaluate('scrollTo({ top: 300, behavior: "instant" })');

      edit(FRUITS, 'mass_kg: 3.35', 'mass_kg: 5.35');
      await page.locator('td', { hasText: /^9.4$/ }).waitFor();
      await expect.poll(() => page.evaluate('scrollY')).toBe(300);

      edit(FRUITS, 'mass_kg: 5.35', 'mass_kg: 5,35');
      await page.locator('mark', { hasText: '5,35' }).waitFor();
      await page.getByRole('link', { name: 'Read it as it was' }).click();
      await page.waitForURL(`${address}-/last-good/`);
      await page.locator('.contents-title', { hasText: 'What did we get?' }).click();
      await page.locator('td', { hasText: /^9.4$/ }).waitFor();
      expect(page.url()).toBe(`${address}-/last-good/yield/index.html`);

      edit(FRUITS, 'mass_kg: 5,35', 'mass_kg: 6.35');
      await page.locator('td', { hasText: /^10.4$/ }).waitFor();
      expect(page.url()).toBe(`${address}yield/`);
      expect(faults).toEqual([]);
      await page.context().close();
    },
    LONG,
  );

  test(
    'the page of what is wrong keeps the place for when it is right again',
    async () => {
      const { address, edit } = await previewed('data/starter');
      const { page } = await open(`${address}yield/`);
      await page.evaluate('scrollTo({ top: 300, behavior: "instant" })');
      edit(FRUITS, 'mass_kg: 3.35', 'mass_kg: 3,35');
      await page.locator('mark').waitFor();
      edit(FRUITS, 'mass_kg: 3,35', 'mass_kg: 5.35');
      await page.locator('td', { hasText: /^9.4$/ }).waitFor();
      await expect.poll(() => page.evaluate('scrollY')).toBe(300);
      await page.context().close();
    },
    LONG,
  );

  test(
    'axe finds nothing in the page of what is wrong, and it is no wider than a telephone',
    async () => {
      const { address, edit, becomes } = await previewed('data/starter');
      edit(FRUITS, 'mass_kg: 3.35', `mass_kg: 3,35${'5'.repeat(90)}`);
      await becomes('/', '<mark>');
      for (const width of [360, 1100]) {
        const { page } = await open(address, { viewport: { width, height: 800 }, bypassCSP: true });
        await page.addScriptTag({ path: axe });
        const { violations } = (await page.evaluate('axe.run(document, { resultTypes: ["violations"] })')) as {
          violations: { id: string; nodes: { html: string }[] }[];
        };
        expect(violations.map(({ id, nodes }) => `${width}: ${id}: ${nodes[0]?.html}`)).toEqual([]);
        const excess = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
        expect([width, await page.evaluate(excess)]).toEqual([width, 0]);
        await page.context().close();
      }
    },
    LONG,
  );
});
