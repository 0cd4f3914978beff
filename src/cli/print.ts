import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Day } from '../day.ts';
import { openKept } from '../disk/kept-folder.ts';
import { withLock } from '../disk/lock.ts';
import { packageRoot } from '../disk/package-root.ts';
import { programMark } from '../disk/program-mark.ts';
import type { Garden } from '../garden/garden.ts';
import type { Kept } from '../kept.ts';
import type { Print } from '../print/printer.ts';
import { type LoadedGarden, loadGarden } from './load-garden.ts';
import { bookOf, siteOf } from './make-book.ts';
import { publish } from './publish.ts';
import { tellProblems } from './report.ts';
import { createSay, place, type Say } from './say.ts';

export interface PrintOptions {
  readonly out: string | null;
  readonly today: Day | null;
  /** Paper of the book instead of the garden's own. */
  readonly paper: Garden['about']['paper'] | null;
  readonly quiet: boolean;
  readonly version: string;
}

/**
 * Prints the handbook, its sheets and its cards of the garden in a folder, each to a PDF. Records with errors leave
 * the last papers as they were. Throws a Refusal `no-chromium`, `print-package-missing` or `chromium-failed`.
 */
export async function print(folder: string, options: PrintOptions): Promise<void> {
  const { chromiumPath, thisMachine } = await import('../print/chromium-path.ts');
  const chromium = chromiumPath(thisMachine());
  const say = createSay(options.quiet);
  // What the last build kept is taken; a print keeps nothing of its own.
  const kept = openKept(join(folder, '.groundspot', 'kept'), programMark());
  const loaded = loadGarden(folder, kept);
  say(`read     ${loaded.files} files of ${place(folder)}`);
  const count = tellProblems({ folder, ...loaded }, options.quiet, say);
  if (count.errors > 0 || !loaded.garden) {
    say('stopped  nothing was printed; the last papers stand');
    process.exitCode = 1;
    return;
  }
  const target = resolve(options.out ?? join(folder, 'print'));
  const garden = onPaper(loaded.garden, options.paper);
  await withLock(join(folder, '.groundspot'), async () => {
    const files = await papersOf(loaded, garden, { chromium, say, kept, ...options });
    publish({ folder, target, files, first: 'handbook.pdf' }, say);
  });
}

/** The garden with another paper. */
const onPaper = (garden: Garden, paper: PrintOptions['paper']): Garden =>
  paper === null ? garden : { ...garden, about: { ...garden.about, paper } };

interface Press extends PrintOptions {
  readonly chromium: string;
  readonly say: Say;
  readonly kept: Kept;
}

/** The browser is opened first: what it lacks is said before anything takes time. */
async function papersOf(loaded: LoadedGarden, garden: Garden, press: Press): Promise<Map<string, Uint8Array>> {
  const { openPrinter } = await import('../print/printer.ts');
  const printer = await openPrinter(press.chromium);
  try {
    return await printedBy(printer.print, loaded, garden, press);
  } finally {
    await printer.close();
  }
}

async function printedBy(
  print: Print,
  loaded: LoadedGarden,
  garden: Garden,
  { say, kept, today, version }: Press,
): Promise<Map<string, Uint8Array>> {
  const { printBook, WHOLE_STYLE } = await import('../print/print-book.ts');
  const { createDraw } = await import('../site/draw.ts');
  const book = bookOf(loaded, garden, today, kept);
  const site = await siteOf(book, createDraw(kept), version, 'printer');
  const files = new Map([...site, [WHOLE_STYLE, readFileSync(join(packageRoot(), 'layouts', 'whole.css'))]]);
  say(`set      ${book.pages.length} pages, as of ${book.facts.today ?? 'no day yet'}`);
  const papers = new Map<string, Uint8Array>();
  for await (const { file, pdf, pages } of printBook({ book, files, creator: `groundspot ${version}`, print })) {
    papers.set(file, pdf);
    say(`printed  ${file}, ${pages === 1 ? 'one page' : `${pages} pages`}`);
  }
  return papers;
}
