import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import type { Site } from '../site/built.ts';

/** A site on the disk, to be opened as its reader opens it. */
export interface Shelf {
  readonly address: (page: string) => string;
  readonly clear: () => void;
}

/** Writes a site to a folder of its own, gone after `clear`. */
export function shelve(site: Site): Shelf {
  const folder = mkdtempSync(join(tmpdir(), 'groundspot-book-'));
  for (const [file, content] of site) {
    const goal = join(folder, file);
    mkdirSync(dirname(goal), { recursive: true });
    writeFileSync(goal, content);
  }
  return {
    address: (page) => pathToFileURL(join(folder, page)).href,
    clear: () => rmSync(folder, { recursive: true, force: true }),
  };
}

export const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const EXCESS = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
/** Parts of a page that stand out over the right edge of the paper, in px. */
const OVER_THE_EDGE =
  '[...document.querySelectorAll("main *, header *, footer *")].filter((part) => part.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map((part) => part.tagName + " " + Math.round(part.getBoundingClientRect().right))';

export interface Visit {
  readonly page: string;
  /** On the screen: what axe finds, and a page wider than the screen. */
  readonly onScreen: readonly string[];
  readonly sheets: number;
  /** Sizes of its sheets in points, each once. */
  readonly sizes: readonly string[];
  /** On paper: parts over the right edge. */
  readonly cutOff: readonly string[];
}

/** Opens a page at some widths in px, then prints it on paper whose print space is so many mm wide. */
export async function visit(
  browser: Browser,
  shelf: Shelf,
  page: string,
  { widths, printSpaceMm }: { widths: readonly number[]; printSpaceMm: number },
): Promise<Visit> {
  const tab = await browser.newPage({ bypassCSP: true });
  await tab.goto(shelf.address(page));
  await tab.addScriptTag({ path: AXE });
  const onScreen: string[] = [];
  for (const [index, width] of widths.entries()) {
    await tab.setViewportSize({ width, height: 800 });
    const excess = await tab.evaluate(EXCESS);
    if (excess !== 0) onScreen.push(`${width}: ${excess} px too wide`);
    // The demo's pages are looked at wide as well; here the other widths are only measured.
    if (index === 0) onScreen.push(...(await axeFaults(tab)).map((fault) => `${width}: ${fault}`));
  }
  await tab.setViewportSize({ width: Math.floor((printSpaceMm * 96) / 25.4), height: 900 });
  await tab.emulateMedia({ media: 'print' });
  const cutOff = (await tab.evaluate(OVER_THE_EDGE)) as string[];
  const pdf = (await tab.pdf({ preferCSSPageSize: true, printBackground: true })).toString('latin1');
  await tab.close();
  return { page, onScreen, cutOff, ...paperOf(pdf) };
}

/** What axe finds on a page it was added to (`AXE`). Colours do not change with the width, and looking for them takes most of the time. */
export async function axeFaults(tab: Page, colours = true): Promise<string[]> {
  const rules = JSON.stringify({ 'color-contrast': { enabled: colours } });
  const { violations } = (await tab.evaluate(
    `axe.run(document, { resultTypes: ["violations"], rules: ${rules} })`,
  )) as {
    violations: { id: string; nodes: { html: string }[] }[];
  };
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

function paperOf(pdf: string): Pick<Visit, 'sheets' | 'sizes'> {
  const sizes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
    ([, width, height]) => `${Math.round(Number(width))}x${Math.round(Number(height))}`,
  );
  return { sheets: (pdf.match(/\/Type \/Page\b/g) ?? []).length, sizes: [...new Set(sizes)] };
}
