import { basename, join } from 'node:path';
import type { Day } from '../day.ts';
import { openKept } from '../disk/kept-folder.ts';
import { packageRoot } from '../disk/package-root.ts';
import { programMark } from '../disk/program-mark.ts';
import { Refusal } from '../disk/refusal.ts';
import { readAssets } from '../site/assets.ts';
import { createDraw } from '../site/draw.ts';
import { type Fault, faultPage } from '../site/preview/fault-page.ts';
import { keptBetween } from '../site/preview/kept-between.ts';
import type { Files, Shelf } from '../site/preview/shelf.ts';
import { type LoadedGarden, loadGarden } from './load-garden.ts';
import { bookOf, siteOf } from './make-book.ts';
import { countLine, countProblems, problemReport } from './report.ts';

interface MakerSettings {
  readonly today: Day | null;
  readonly version: string;
  /** A line, or several with their own line ends. */
  readonly say: (text: string) => void;
}

/** What the last good build left. */
interface LastGood {
  readonly files: Files;
  readonly garden: string;
}

/**
 * A builder that stays warm: each call reads the garden and gives what to show, the handbook or a page that says why
 * not. Only the first call throws, a Refusal, when there is no garden to begin with.
 */
export function createMaker(root: string, { today, version, say }: MakerSettings): () => Promise<Shelf> {
  const layouts = join(packageRoot(), 'layouts');
  const kept = keptBetween(openKept(join(root, '.groundspot', 'kept'), programMark()));
  const draw = createDraw(kept);
  const reporter = createReporter(root, say);
  const assets = readAssets(layouts);
  let last: LastGood | null = null;
  let isFirst = true;
  const shelfOf = (fault: Fault | null): Shelf => {
    const settings = { layouts, garden: last?.garden ?? basename(root), hasGood: last !== null };
    return {
      good: last?.files ?? null,
      fault: fault && faultPage(fault, settings),
      assets,
      missing: faultPage({ kind: 'missing' }, settings),
    };
  };
  const attempt = async (): Promise<Fault | null> => {
    const started = performance.now();
    const loaded = loadGarden(root, kept);
    const { garden, problems, textOf } = loaded;
    reporter(loaded);
    if (!garden || countProblems(problems).errors > 0) return { kind: 'records', problems, textOf };
    const book = bookOf(loaded, garden, today, kept);
    last = { files: await siteOf(book, draw, version), garden: garden.about.name };
    kept.turn();
    say(`made     ${book.pages.length} pages${dayWords(book.facts.today)} in ${seconds(started)}`);
    return null;
  };
  return async () => {
    const fault = await attempt().catch((error: unknown) => {
      if (isFirst && error instanceof Refusal) throw error;
      return faultOf(error, say);
    });
    isFirst = false;
    if (fault)
      say(`stopped  ${last ? 'the last good handbook stands' : 'no handbook yet'}; the page says what is wrong`);
    return shelfOf(fault);
  };
}

/** Says what is wrong, and the same again only after something else. */
function createReporter(root: string, say: (text: string) => void): (loaded: LoadedGarden) => void {
  let before = '';
  return ({ problems, textOf, files }) => {
    const report = problemReport(problems, root, textOf);
    if (report !== '' && report !== before) say(report);
    before = report;
    say(`checked  ${countLine(countProblems(problems), files).trim()}`);
  };
}

function faultOf(error: unknown, say: (text: string) => void): Fault {
  if (error instanceof Refusal) {
    say(`${error.message} [${error.code}]`);
    return { kind: 'refused', message: error.message, hint: error.hint };
  }
  const { message, stack } = error instanceof Error ? error : new Error(String(error));
  say(stack ?? message);
  return { kind: 'program', message };
}

const dayWords = (today: Day | null): string => (today === null ? '' : ` as of ${today}`);

const seconds = (since: number): string => `${((performance.now() - since) / 1000).toFixed(2)} s`;
