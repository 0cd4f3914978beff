import { cpSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { BareJob } from './bare-job.ts';
import { compiled } from './compiled.ts';
import { freshProcess, type Ran } from './fresh-process.ts';
import { manySeasons } from './many-seasons.ts';
import { both, medianOf, type Row, tableText } from './row.ts';
import type { Mark } from './watched.ts';

const ROUNDS = Number(process.env.BENCH_ROUNDS ?? 3);
const REBUILDS = 7;
const SEASONS = 100;
const METERED = 8;
const PAGES = [1000, 5000] as const;

const scratch = realpathSync(mkdtempSync(join(tmpdir(), 'groundspot-bench-')));
afterAll(() => rmSync(scratch, { recursive: true, force: true }), 120_000);

const root = resolve('.');
const script = (name: URL): string => compiled(root, name);
const watched = script(new URL('./watched.ts', import.meta.url));
const bare = script(new URL('./bare.ts', import.meta.url));
const counts = script(new URL('./counts.ts', import.meta.url));
const manyPages = script(new URL('./many-pages.ts', import.meta.url));
const rebuilds = script(new URL('./rebuilds.ts', import.meta.url));
const program = join(root, '.build/src/cli/main.js');

function plant(name: string, texts: Readonly<Record<string, string>>): string {
  const folder = join(scratch, name);
  for (const [path, text] of Object.entries(texts)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

/** Changes one value of a record, to another one every time. */
function change(folder: string, path: string, key: string, round: number): void {
  const text = readFileSync(join(folder, path), 'utf8');
  const changed = text.replace(new RegExp(`${key}: [0-9.]+`), `${key}: ${(4 + round / 100).toFixed(2)}`);
  expect(changed, `${key} in ${path}`).not.toBe(text);
  writeFileSync(join(folder, path), changed);
}

const run = (name: string, ...args: string[]): Ran => freshProcess(watched, name, args);
const built = (folder: string): Ran => run(program, 'build', folder, '--out', `${folder}-site`);

type By = (mark: Mark) => number;

/** From the end of checking to the end of computing. */
const computing = ({ marks }: Ran, by: By): number =>
  marks.computed && marks.checked ? by(marks.computed) - by(marks.checked) : Number.NaN;

function forget(folder: string): void {
  rmSync(join(folder, '.groundspot'), { recursive: true, force: true });
  rmSync(`${folder}-site`, { recursive: true, force: true });
}

function bareJob(name: string, job: Omit<BareJob, 'empty' | 'out'>): string {
  const empty = join(scratch, `${name}-empty`);
  mkdirSync(empty, { recursive: true });
  const path = join(scratch, `${name}.json`);
  writeFileSync(path, JSON.stringify({ ...job, empty, out: join(scratch, `${name}-out`) } satisfies BareJob));
  return path;
}

interface Round {
  readonly plain: Ran;
  readonly cold: Ran;
  readonly changed: Ran;
  readonly unchanged: Ran;
  readonly refitted: Ran;
}

/** Bare and ours in turn, each in a fresh process, so that a busy machine slows both. */
function round(garden: string, job: string, turn: number): Round {
  forget(garden);
  const [plain, cold] = [run(bare, job), built(garden)];
  change(garden, 'seasons/1990/fruits.yaml', 'mass_kg', turn);
  const changed = built(garden);
  const unchanged = built(garden);
  change(garden, 'seasons/2025/fruits.yaml', 'brix_centre', turn);
  return { plain, cold, changed, unchanged, refitted: built(garden) };
}

function timesOfSeasons(rounds: readonly Round[]): Row[] {
  const row = (what: string, of: (one: Round, by: By) => number, first: string, aim: string): Row => ({
    what,
    unit: '×',
    ...both(rounds, of),
    first,
    aim,
  });
  const overCold = (what: keyof Round) => (one: Round, by: By) => by(one[what].end) / by(one.cold.end);
  return [
    row(
      'cold build without computing / bare',
      (one, by) => (by(one.cold.end) - computing(one.cold, by)) / by(one.plain.end),
      '1.30',
      '1.05',
    ),
    row('computing, 100 seasons / bare', (one, by) => computing(one.cold, by) / by(one.plain.end), 'reported', '0.50'),
    row('after one changed record / cold', overCold('changed'), '0.25', '0.10'),
    row('nothing changed / cold', overCold('unchanged'), '0.15', '0.05'),
    {
      ...row(
        'refits after one changed reading of sugar',
        (one, by) => computing(one.refitted, by) - computing(one.changed, by),
        'reported',
        '',
      ),
      unit: 's',
    },
  ];
}

function timesOfDemo(): Row[] {
  const demo = join(scratch, 'demo');
  cpSync('data/garden', demo, { recursive: true, filter: (path) => !path.includes('.groundspot') });
  const cold = Array.from({ length: ROUNDS }, () => {
    forget(demo);
    return built(demo);
  });
  const warm = run(rebuilds, demo, 'seasons/2025/fruits.yaml', String(REBUILDS));
  const marks = warm.out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Mark);
  return [
    { what: 'computing, demo garden', unit: 's', ...both(cold, computing), first: 'reported', aim: '0.50 s' },
    {
      what: 'preview: made again in memory after one changed fruit, demo',
      unit: 's',
      ...both(marks, (mark, by) => by(mark)),
      first: '1.00 s',
      aim: '0.30 s',
    },
  ];
}

/** Memory needs no second run: the same work takes the same. */
function memory(): Row[] {
  const [small, large] = PAGES.map((count) => {
    const blank = Array.from({ length: count }, () => ({ characters: 8000, charts: [] }));
    return {
      ours: run(manyPages, 'data/garden', String(count), join(scratch, `pages-${count}-site`)).peak_mb,
      bare: run(bare, bareJob(`pages-${count}`, { garden: null, pages: blank })).peak_mb,
    };
  });
  if (!small || !large) throw new Error('invalid bench: no pages were rendered');
  const row = (what: string, ratio: number, first: string, aim: string): Row => ({
    what,
    unit: '×',
    clock: [ratio],
    processor: [],
    first,
    aim,
  });
  return [
    row('peak memory at 5000 pages / at 1000', large.ours / small.ours, '2.00', '1.70'),
    row('  the same, bare', large.bare / small.bare, '', ''),
    row('  at 5000 pages, ours / bare', large.ours / large.bare, 'reported', ''),
  ];
}

test('what a build costs', () => {
  const many = plant('many', manySeasons(SEASONS, METERED));
  const counted = join(scratch, 'pages.json');
  run(counts, many, counted);
  const pages = JSON.parse(readFileSync(counted, 'utf8')) as BareJob['pages'];
  const job = bareJob('many', { garden: many, pages });
  const rounds = Array.from({ length: ROUNDS }, (_, turn) => round(many, job, turn));
  const rows = [...timesOfSeasons(rounds), ...timesOfDemo(), ...memory()];
  const seconds = (of: (one: Round) => Ran): string =>
    `${medianOf(rounds.map((one) => of(one).end.clock)).toFixed(1)} s`;
  const lines = [
    `${SEASONS} seasons, the last ${METERED} metered: ${pages.length} pages, ${pages.reduce((sum, { charts }) => sum + charts.length, 0)} charts; bare ${seconds(({ plain }) => plain)}, cold ${seconds(({ cold }) => cold)}`,
    'medians of n runs, ratios within a run; goals are upper limits; where clock and processor differ the machine was busy',
    '',
    tableText(rows),
    '',
    'two-pass PDF / one pass: not yet measured here',
  ];
  process.stdout.write(`\n${lines.join('\n')}\n`);
  for (const { what, clock } of rows) expect(clock.length > 0 && clock.every(Number.isFinite), what).toBe(true);
});
