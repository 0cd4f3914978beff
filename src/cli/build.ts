import { join, resolve } from 'node:path';
import { type Day, dayFromNumber, daysBetween } from '../day.ts';
import { openKept } from '../disk/kept-folder.ts';
import { withLock } from '../disk/lock.ts';
import { sha256 } from '../disk/output/manifest.ts';
import { programMark } from '../disk/program-mark.ts';
import type { FolderContents } from '../disk/read-folder.ts';
import { siteMark, standingSite } from '../disk/standing-site.ts';
import { isWritable } from '../disk/writable.ts';
import type { Garden } from '../garden/garden.ts';
import type { Kept } from '../kept.ts';
import type { Problem } from '../reading/problem.ts';
import { type LoadedGarden, linkFiles, readGardenFolder, textOf } from './load-garden.ts';
import { publish } from './publish.ts';
import { tellProblems } from './report.ts';
import { createSay, place, type Say } from './say.ts';

export interface BuildOptions {
  readonly out: string | null;
  readonly today: Day | null;
  readonly quiet: boolean;
  readonly version: string;
}

const BEHIND_DAYS = 7;
const MS_PER_DAY = 86_400_000;

/** Makes the handbook of the garden in a folder. Records with errors leave the last handbook as it was. */
export async function build(folder: string, options: BuildOptions): Promise<void> {
  const say = createSay(options.quiet);
  const state = join(folder, '.groundspot');
  const target = resolve(options.out ?? join(folder, 'site'));
  const kept = openKept(join(state, 'kept'), programMark());
  const contents = readGardenFolder(folder);
  const inputs = inputsOf(contents, target, options);
  say(`read     ${contents.files.length} files of ${place(folder)}`);
  const last = kept.find('builds', inputs) as LastBuild | undefined;
  const stands = last !== undefined && last.site !== null && last.site === standingSite(target);
  const loaded = stands ? null : linkFiles(contents, kept);
  const problems = loaded?.problems ?? last?.problems ?? [];
  const read = {
    folder,
    problems,
    textOf: (path: string) => textOf(contents.files, path),
    files: contents.files.length,
  };
  const count = tellProblems(read, options.quiet, say);
  if (loaded === null)
    return say(`stands   the handbook is made from these records: open ${place(join(target, 'index.html'))}`);
  if (count.errors > 0 || !loaded.garden) {
    say('stopped  nothing was written; the last handbook stands');
    process.exitCode = 1;
    return;
  }
  const { garden } = loaded;
  await lockedIfWritable(state, async () => {
    await make({ loaded, garden, target, kept, say, folder, ...options });
    kept.keep('builds', inputs, { site: siteMark(target), problems } satisfies LastBuild);
    kept.save();
  });
}

/** What the last build of the same inputs left. */
interface LastBuild {
  /** Mark of the site it wrote. */
  readonly site: string | null;
  readonly problems: readonly Problem[];
}

/** All that decides what is built, but for the program itself. */
const inputsOf = ({ files, refused }: FolderContents, target: string, { today, version }: BuildOptions): string =>
  JSON.stringify([target, today, version, refused, files.map(({ path, bytes }) => [path, sha256(bytes)])]);

interface Desk extends BuildOptions {
  readonly loaded: LoadedGarden;
  readonly garden: Garden;
  readonly folder: string;
  readonly target: string;
  readonly kept: Kept;
  readonly say: Say;
}

async function make({ loaded, garden, folder, target, kept, say, today, version }: Desk): Promise<void> {
  const { bookOf, siteOf } = await import('./make-book.ts');
  const book = bookOf(loaded, garden, today, kept);
  say(
    `computed ${book.figures.length} figures for ${book.pages.length} pages, ${dayLine(book.facts.today, today !== null)}`,
  );
  const { createDraw } = await import('../site/draw.ts');
  const files = await siteOf(book, createDraw(kept), version);
  say(`set      ${book.pages.reduce((sum, { charts }) => sum + charts.length, 0)} charts, ${files.size} files`);
  publish({ folder, target, files, first: 'index.html' }, say);
}

/** A garden that cannot be written, such as one on a medium, needs no lock: nobody else can work on it either. */
const lockedIfWritable = (state: string, work: () => Promise<void>): Promise<void> =>
  isWritable(state) ? withLock(state, work) : work();

/** The day of the book, and a word when the clock is well past it. */
function dayLine(today: Day | null, isWanted: boolean): string {
  if (today === null) return 'no season yet';
  const behind = daysBetween(today, dayFromNumber(Math.floor(Date.now() / MS_PER_DAY)));
  return `as of ${today}${behind > BEHIND_DAYS ? `, ${isWanted ? '' : 'the last record, '}${behind} days ago` : ''}`;
}
