import { spawnSync } from 'node:child_process';
import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import type { PosteriorData } from '../../src/statistics/posterior/posterior-data.ts';
import { simulatedTrial, type TrialPlan } from '../statistics/posterior/simulated-trial.ts';
import { compiled } from './compiled.ts';
import type { FitJob, FitTold, Fitted } from './fit-job.ts';
import { type Row, tableText } from './row.ts';
import type { Mark } from './watched.ts';

const R = 'Rscript';
const DRAWS = 2000;
const SEED = 1;
/** Varieties, seasons, mounds of which some bear nothing, picking days; each plan gives a few fruits too many. */
const SD = { variety: 1, season: 0.6, mound: 0.4, day: 0.3 };
const GARDENS: readonly (TrialPlan & { readonly take: number; readonly draws: number })[] = [
  { take: 2000, draws: DRAWS, varieties: 10, seasons: 5, mounds: 6, fruits: 8, days: 10, bore: 0.85, sd: SD },
  { take: 20_000, draws: 0, varieties: 20, seasons: 10, mounds: 14, fruits: 9, days: 15, bore: 0.8, sd: SD },
];

const scratch = realpathSync(mkdtempSync(join(tmpdir(), 'groundspot-fits-')));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

function first({ y, fixed, random }: PosteriorData, count: number): PosteriorData {
  expect(y.length).toBeGreaterThanOrEqual(count);
  return {
    y: y.slice(0, count),
    fixed: fixed.map(({ name, values }) => ({ name, values: values.slice(0, count) })),
    random: random.map(({ name, level, scale }) => ({ name, level: level.slice(0, count), scale })),
  };
}

function ours(job: FitJob): FitTold {
  const script = compiled(resolve('.'), new URL('./mixed-fits.ts', import.meta.url));
  const path = join(scratch, 'job.json');
  writeFileSync(path, JSON.stringify(job));
  const done = spawnSync(process.execPath, [script, path], { encoding: 'utf8' });
  if (done.status !== 0) throw new Error(`the fit ended with ${done.status}\n${done.stderr}`);
  return JSON.parse(done.stdout) as FitTold;
}

const hasLme4 = (): boolean => spawnSync(R, ['-e', 'suppressMessages(library(lme4))']).status === 0;

function byLme4({ y, fixed, random }: PosteriorData): Fitted {
  const columns = [
    ['y', y] as const,
    ...random.map(({ level }, k) => [`factor${k}`, level] as const),
    ...fixed.slice(1).map(({ values }, j) => [`fixed${j}`, values] as const),
  ];
  const path = join(scratch, 'garden.csv');
  const lines = y.map((_, row) => columns.map(([, values]) => values[row]).join(','));
  writeFileSync(path, `${[columns.map(([name]) => name).join(','), ...lines].join('\n')}\n`);
  const done = spawnSync(R, [fileURLToPath(new URL('./mixed-fits.R', import.meta.url)), path], {
    encoding: 'utf8',
  });
  if (done.status !== 0) throw new Error(`lme4 ended with ${done.status}\n${done.stderr}`);
  const [clock = Number.NaN, processor = Number.NaN, ...found] = done.stdout.trim().split('\n').map(Number);
  const [residual_variance = Number.NaN, reml_criterion = Number.NaN] = found.slice(random.length);
  const components = found.slice(0, random.length);
  return { took: { clock, processor }, components, residual_variance, reml_criterion };
}

const rowOf = (what: string, unit: Row['unit'], { clock, processor }: Mark, first = '', aim = ''): Row => ({
  what,
  unit,
  clock: [clock],
  processor: [processor],
  first,
  aim,
});

const over = (own: Mark, other: Mark): Mark => ({
  clock: own.clock / other.clock,
  processor: own.processor / other.processor,
});

/** The largest difference of a spread, in residual SDs. */
function apart(own: Fitted, other: Fitted): number {
  const sds = ({ components, residual_variance }: Fitted) => [...components, residual_variance].map(Math.sqrt);
  const others = sds(other);
  return Math.max(...sds(own).map((sd, k) => Math.abs(sd - (others[k] ?? Number.NaN)))) / (others.at(-1) ?? 1);
}

test('what a mixed model costs', () => {
  const measured = hasLme4();
  const rows: Row[] = [];
  const agreement: string[] = [];
  for (const { take, draws, ...plan } of GARDENS) {
    const data = first(simulatedTrial(plan, SEED).data, take);
    const own = ours({ data, draws });
    rows.push(rowOf(`restricted likelihood fit of ${take} fruits`, 's', own.took));
    if (measured) {
      const other = byLme4(data);
      rows.push(rowOf('  the same by lme4', 's', other.took));
      rows.push(rowOf('  ours / lme4', '×', over(own.took, other.took), '1.00', '0.30'));
      const gap = own.reml_criterion - other.reml_criterion;
      agreement.push(
        `${take} fruits: spreads at most ${apart(own, other).toExponential(1)} residual SDs apart, criterion ${gap.toExponential(1)} from that of lme4 (below 0: ours is the better optimum)`,
      );
      expect(apart(own, other)).toBeLessThan(0.01);
      expect(gap).toBeLessThan(1e-6);
    }
    if (own.posterior_took !== null)
      rows.push(rowOf(`posterior of ${take} fruits, ${draws} draws`, 's', own.posterior_took, 'reported'));
  }
  const lines = [
    'fits of one crossed garden: season fixed; variety, variety in season, mound and day random; the least of three',
    '',
    tableText(rows),
    '',
    ...agreement,
    ...(measured ? [] : ['ours / lme4: not measured, since Rscript with lme4 was not found']),
  ];
  process.stdout.write(`\n${lines.join('\n')}\n`);
  for (const { what, clock, processor } of rows)
    expect([...clock, ...processor].every(Number.isFinite), what).toBe(true);
});
