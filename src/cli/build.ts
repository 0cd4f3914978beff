import { join, relative, resolve } from 'node:path';
import { type Day, dayFromNumber, daysBetween } from '../day.ts';
import { withLock } from '../disk/lock.ts';
import { publishFolder } from '../disk/output-folder.ts';
import type { Garden } from '../garden/garden.ts';
import { loadGarden } from './load-garden.ts';
import { bookOf, siteOf } from './make-book.ts';
import { countLine, countProblems, problemReport } from './report.ts';

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
  const say = options.quiet ? () => {} : (line: string): void => void process.stderr.write(`${line}\n`);
  const loaded = loadGarden(folder);
  say(`read     ${loaded.files} files of ${place(folder)}`);
  const count = countProblems(loaded.problems);
  if (count.errors > 0 || !options.quiet) process.stderr.write(problemReport(loaded.problems, folder, loaded.textOf));
  say(`checked  ${countLine(count, loaded.files).trim()}`);
  if (count.errors > 0 || !loaded.garden) {
    say('stopped  nothing was written; the last handbook stands');
    process.exitCode = 1;
    return;
  }
  const target = resolve(options.out ?? join(folder, 'site'));
  await withLock(join(folder, '.groundspot'), async () => {
    const book = bookOf(loaded, loaded.garden as Garden, options.today);
    say(
      `computed ${book.figures.length} figures for ${book.pages.length} pages, ${dayLine(book.facts.today, options.today !== null)}`,
    );
    const { createDraw } = await import('../site/draw.ts');
    const files = await siteOf(book, createDraw(), options.version);
    say(`set      ${book.pages.reduce((sum, { charts }) => sum + charts.length, 0)} charts, ${files.size} files`);
    const { leftover } = publishFolder(target, files, { keep: [resolve(folder)] });
    if (leftover)
      process.stderr.write(`kept     ${place(leftover)} could not be tidied away; look into it before you delete it\n`);
    say(`written  open ${place(join(target, 'index.html'))}`);
  });
}

/** The day of the book, and a word when the clock is well past it. */
function dayLine(today: Day | null, isWanted: boolean): string {
  if (today === null) return 'no season yet';
  const behind = daysBetween(today, dayFromNumber(Math.floor(Date.now() / MS_PER_DAY)));
  return `as of ${today}${behind > BEHIND_DAYS ? `, ${isWanted ? '' : 'the last record, '}${behind} days ago` : ''}`;
}

const place = (path: string): string => relative(process.cwd(), path) || '.';
