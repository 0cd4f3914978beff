import { realpathSync } from 'node:fs';
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
import { createRebuilds } from '../site/preview/rebuilds.ts';
import { type Ports, startServer } from '../site/preview/server.ts';
import type { Files, Shelf } from '../site/preview/shelf.ts';
import { watchGarden } from '../site/preview/watch-garden.ts';
import { type LoadedGarden, loadGarden } from './load-garden.ts';
import { bookOf, siteOf } from './make-book.ts';
import { countLine, countProblems, problemReport } from './report.ts';

export interface PreviewOptions {
  /** Null: the usual one, or the next that is free. */
  readonly port: number | null;
  readonly today: Day | null;
  readonly version: string;
}

export interface PreviewEffects {
  /** A line, or several with their own line ends, for the person at the terminal. */
  readonly say: (text: string) => void;
  /** Called after every build, when the pages have changed. */
  readonly shown: () => void;
}

export interface OpenPreview {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** The usual port, and how many more are tried. */
const USUAL: Ports = { first: 7417, tries: 20 };
/** An editor saves in several steps a few ms apart. */
const QUIET_MS = 40;

/** Shows the handbook in a browser, anew after every save, until the terminal says stop. */
export async function preview(folder: string, options: PreviewOptions): Promise<void> {
  const say = (text: string): void => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`);
  const stopped = new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => done());
  });
  const open = await openPreview(folder, options, { say, shown: () => {} });
  await stopped;
  await open.close();
  say('closed');
}

/** Builds once, serves it, and builds again whenever a record is saved. Throws Refusal where there is no garden. */
export async function openPreview(
  folder: string,
  { port, today, version }: PreviewOptions,
  { say, shown }: PreviewEffects,
): Promise<OpenPreview> {
  const root = rootOf(folder);
  const changes = new Set<string>();
  let want = (): void => {};
  // Watching comes first: what is saved during the first build is not lost.
  const watching = await watchGarden(root, {
    changed: (path) => {
      changes.add(path);
      want();
    },
    failed: (error) => say(`unseen   a part of the garden cannot be watched: ${error.message}`),
  });
  try {
    const make = createMaker(root, { today, version, say });
    const server = await startServer(await make(), port === null ? USUAL : { first: port, tries: 1 });
    const rebuilds = createRebuilds(async () => {
      say(`changed  ${changedLine([...changes])}`);
      changes.clear();
      server.show(await make());
      shown();
    }, QUIET_MS);
    want = rebuilds.want;
    if (changes.size > 0) want();
    say(`open     ${server.address} while this runs; Ctrl-C ends it`);
    return { address: server.address, close: () => closeAll([watching, rebuilds, server]) };
  } catch (error) {
    await watching.close();
    throw error;
  }
}

async function closeAll(parts: readonly { readonly close: () => Promise<void> }[]): Promise<void> {
  for (const part of parts) await part.close();
}

/** The folder without links in its name, so that what is watched and what is read are called alike. */
function rootOf(folder: string): string {
  try {
    return realpathSync.native(folder);
  } catch {
    throw new Refusal('not-found', `there is no folder ${folder}`, 'begin a garden with: groundspot new <folder>');
  }
}

const changedLine = ([first = 'something', ...others]: readonly string[]): string =>
  others.length === 0 ? first : `${first} and ${others.length} more`;

interface MakerSettings {
  readonly today: Day | null;
  readonly version: string;
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
function createMaker(root: string, { today, version, say }: MakerSettings): () => Promise<Shelf> {
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
