import { join, relative, resolve } from 'node:path';
import { contents } from '../../content/contents.ts';
import { type Book, writeBook } from '../book/book.ts';
import { type Day, dayFromNumber, daysBetween } from '../day.ts';
import { withLock } from '../disk/lock.ts';
import { publishFolder } from '../disk/output-folder.ts';
import { packageRoot } from '../disk/package-root.ts';
import { createFormat } from '../format.ts';
import { asOf } from '../garden/as-of.ts';
import type { Garden } from '../garden/garden.ts';
import { lastDay } from '../garden/last-day.ts';
import { openLedger } from '../ledger/ledger.ts';
import { type LoadedGarden, loadGarden } from './load-garden.ts';
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
    const root = packageRoot();
    const { buildSite } = await import('../site/build-site.ts');
    const { createDraw } = await import('../site/draw.ts');
    const files = await buildSite(book, {
      layouts: join(root, 'layouts'),
      content: join(root, 'content'),
      version: options.version,
      draw: createDraw(),
    });
    say(`set      ${book.pages.reduce((sum, { charts }) => sum + charts.length, 0)} charts, ${files.size} files`);
    const { leftover } = publishFolder(target, files, { keep: [resolve(folder)] });
    if (leftover)
      process.stderr.write(`kept     ${place(leftover)} could not be tidied away; look into it before you delete it\n`);
    say(`written  open ${place(join(target, 'index.html'))}`);
  });
}

/** The book as data, from the garden as known on its day. */
export function bookOf({ reference }: Pick<LoadedGarden, 'reference'>, whole: Garden, wanted: Day | null): Book {
  const today = wanted ?? lastDay(whole) ?? whole.seasons.at(-1)?.starts_on ?? null;
  const garden = today === null ? whole : asOf(whole, today);
  const format = createFormat({ units: whole.about.units, locale: whole.about.locale });
  return writeBook(contents, { garden, today, ledger: openLedger(garden, today), reference, format });
}

/** The day of the book, and a word when the clock is well past it. */
function dayLine(today: Day | null, isWanted: boolean): string {
  if (today === null) return 'no season yet';
  const behind = daysBetween(today, dayFromNumber(Math.floor(Date.now() / MS_PER_DAY)));
  return `as of ${today}${behind > BEHIND_DAYS ? `, ${isWanted ? '' : 'the last record, '}${behind} days ago` : ''}`;
}

const place = (path: string): string => relative(process.cwd(), path) || '.';
