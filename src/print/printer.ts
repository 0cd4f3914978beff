import type { Browser, Page, Route } from 'playwright-core';
import { Refusal } from '../disk/refusal.ts';
import { mediaType } from '../site/media-type.ts';
import { loadPdfLib } from './load-pdf-lib.ts';
import { optionalPackage } from './optional-package.ts';
import { QUIET_FLAGS } from './quiet-flags.ts';

type Files = ReadonlyMap<string, string | Uint8Array>;

/** Prints one document, as if it lay at this place among the files of the site, to the bytes of a PDF. */
export type Print = (html: string, place: string, files: Files) => Promise<Uint8Array>;

export interface Printer {
  readonly print: Print;
  readonly close: () => Promise<void>;
}

/** RFC 6761, 6.4: names under "invalid" never resolve; whatever slipped past the route would find nobody. */
const ORIGIN = 'http://handbook.invalid/';
const LONGEST_MS = 300_000;
const FLAGS = [
  ...QUIET_FLAGS,
  // Small machines and containers share too little memory for a long book.
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
  '--host-resolver-rules=MAP * ~NOTFOUND',
];

/**
 * A Chromium that reads files from memory, runs no script and reaches nothing else.
 * Throws a Refusal `print-package-missing` or `chromium-failed`, before anything has taken time; printing throws
 * `chromium-failed` when the browser gives up.
 */
export async function openPrinter(chromiumPath: string): Promise<Printer> {
  await loadPdfLib();
  const browser = await launch(chromiumPath);
  return {
    print: (html, place, files) => printOne(browser, new Map([...files, [place, html]]), place),
    close: () => browser.close(),
  };
}

async function launch(executablePath: string): Promise<Browser> {
  const { chromium } = await optionalPackage('playwright-core', () => import('playwright-core'));
  try {
    // Chromium refuses to sandbox the super-user.
    return await chromium.launch({ executablePath, args: FLAGS, chromiumSandbox: process.getuid?.() !== 0 });
  } catch (error) {
    const hint = 'Name another one with CHROMIUM_PATH, or print the website from any browser.';
    throw failed(`${executablePath} did not start`, hint, error);
  }
}

function failed(what: string, hint: string, error: unknown): Refusal {
  const [first] = (error as Error).message.split('\n');
  return new Refusal('chromium-failed', `${what}: ${first}`, hint, error);
}

async function printOne(browser: Browser, files: Files, place: string): Promise<Uint8Array> {
  try {
    const context = await browser.newContext({ javaScriptEnabled: false, serviceWorkers: 'block' });
    context.setDefaultTimeout(LONGEST_MS);
    await context.route('**/*', (route) => answer(route, files));
    const page = await context.newPage();
    await page.emulateMedia({ media: 'print' });
    await page.goto(`${ORIGIN}${place}`);
    const pdf = await toPdf(page);
    await context.close();
    return pdf;
  } catch (error) {
    throw failed(`the browser stopped while it printed ${place}`, 'Try again, with fewer other programs open.', error);
  }
}

async function toPdf(page: Page): Promise<Uint8Array> {
  // A face asked for by printed text alone may still be on its way.
  await page.evaluate('document.fonts.ready.then(() => true)');
  return page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true });
}

function answer(route: Route, files: Files): Promise<void> {
  const { origin, pathname } = new URL(route.request().url());
  const body = `${origin}/` === ORIGIN ? files.get(decodeURIComponent(pathname.slice(1))) : undefined;
  if (body === undefined) return route.abort();
  return route.fulfill({
    body: typeof body === 'string' ? body : Buffer.from(body),
    contentType: mediaType(pathname),
  });
}
