import { describe, expect, it, test } from 'vitest';
import type { LogisticRow } from '../../../src/statistics/penalised-logistic/logistic.ts';
import { randomStream } from '../../../src/statistics/random-stream.ts';
import oracle from '../../published/penalised-logistic/oracle.json' with { type: 'json' };
import { ENDOMETRIAL, FOUR_CELLS } from '../../published/penalised-logistic/printed.ts';
import { expectPrinted } from '../agreement.ts';
import { type FirthFit, firthInterval, fitFirth } from './firth.ts';

const CLOSE = 1e-4;

function fitted(rows: readonly LogisticRow[]): FirthFit {
  const fit = fitFirth(rows);
  if ('cannot' in fit) throw new Error(`refused: ${fit.cannot.code}`);
  return fit;
}
const off = (a: number | undefined, b: number | undefined): number => Math.abs((a ?? Number.NaN) - (b ?? Number.NaN));

describe.each(oracle.cases)('brglm2 and R’s optimisers: $name', (one) => {
  it('estimates and standard errors', () => {
    const { coefficients, standard_errors } = fitted(one.rows);
    expect(coefficients).toHaveLength(one.coefficients.length);
    for (const [column, value] of one.coefficients.entries()) {
      expect(off(coefficients[column], value)).toBeLessThan(CLOSE);
      expect(off(standard_errors[column], one.standard_errors[column])).toBeLessThan(CLOSE);
    }
  });
  it('profile intervals', () => {
    for (const { column, level, low, high } of one.intervals) {
      const found = firthInterval(one.rows, column, level);
      if ('cannot' in found) throw new Error('refused');
      expect(off(found.low, low), `column ${column} low`).toBeLessThan(CLOSE);
      expect(off(found.high, high), `column ${column} high`).toBeLessThan(CLOSE);
      expect(found.level).toBe(level);
    }
  });
  // Where a column parts hits from misses there is no maximum to reach.
  if (one.maximum_likelihood === null) return;
  it('many copies: the penalty fades and glm’s maximum is reached', () => {
    const copies = 100_000;
    const many = one.rows.map((row) => ({ ...row, hits: copies * row.hits, units: copies * row.units }));
    for (const [column, value] of (one.maximum_likelihood ?? []).entries()) {
      expect(off(fitted(many).coefficients[column], value)).toBeLessThan(CLOSE);
      expect(off(fitted(one.rows).coefficients[column], value)).toBeGreaterThan(10 * CLOSE);
    }
  });
});

test('the cancer of Heinze & Schemper, as printed', () => {
  const rows = oracle.cases.find(({ name }) => name === 'endometrial')?.rows ?? [];
  const { coefficients } = fitted(rows);
  for (const [column, { estimate }] of ENDOMETRIAL.entries()) expectPrinted(coefficients[column], estimate);
  const found = firthInterval(rows, 1, 0.95);
  if ('cannot' in found) throw new Error('refused');
  expectPrinted(found.low, ENDOMETRIAL[1]?.low ?? '');
  expectPrinted(found.high, ENDOMETRIAL[1]?.high ?? '');
});

test.each(FOUR_CELLS)('two by two is half a unit in each cell: %j', (a, b, c, d) => {
  const { coefficients, standard_errors } = fitted([
    { columns: [1, 0], hits: a, units: a + b },
    { columns: [1, 1], hits: c, units: c + d },
  ]);
  const logOdds = (hits: number, misses: number) => Math.log((hits + 0.5) / (misses + 0.5));
  expect(coefficients[0]).toBeCloseTo(logOdds(a, b), 8);
  expect(coefficients[1]).toBeCloseTo(logOdds(c, d) - logOdds(a, b), 8);
  expect(standard_errors[1]).toBeGreaterThan(0);
});

describe('properties', () => {
  const random = randomStream(2409);
  const rows: LogisticRow[] = Array.from({ length: 12 }, () => {
    const units = 1 + Math.floor(6 * random());
    return { columns: [1, 10 * random(), random()], hits: Math.floor((units + 1) * random()), units };
  });
  it('hits and misses changed over turn every sign', () => {
    const turned = fitted(rows.map((row) => ({ ...row, hits: row.units - row.hits })));
    for (const [column, value] of fitted(rows).coefficients.entries())
      expect(turned.coefficients[column]).toBeCloseTo(-value, 7);
  });
  it('a column in other units changes its own coefficient and interval only', () => {
    const scaled = rows.map((row) => ({
      ...row,
      columns: row.columns.map((x, place) => (place === 1 ? 1000 * x : x)),
    }));
    const [plain, other] = [fitted(rows), fitted(scaled)];
    expect(1000 * (other.coefficients[1] ?? 0)).toBeCloseTo(plain.coefficients[1] ?? 0, 7);
    expect(other.coefficients[2]).toBeCloseTo(plain.coefficients[2] ?? 0, 7);
    const [a, b] = [firthInterval(rows, 1, 0.9), firthInterval(scaled, 1, 0.9)];
    if ('cannot' in a || 'cannot' in b) throw new Error('refused');
    expect(1000 * b.low).toBeCloseTo(a.low, 6);
    expect(1000 * b.high).toBeCloseTo(a.high, 6);
  });
  it('units split into rows of their own change nothing', () => {
    const single = rows.flatMap(({ columns, hits, units }) =>
      Array.from({ length: units }, (_, k) => ({ columns, hits: Number(k < hits), units: 1 })),
    );
    for (const [column, value] of fitted(rows).coefficients.entries())
      expect(fitted(single).coefficients[column]).toBeCloseTo(value, 7);
  });
  it('a wider level holds a narrower one', () => {
    const [narrow, wide] = [firthInterval(rows, 2, 0.5), firthInterval(rows, 2, 0.9)];
    if ('cannot' in narrow || 'cannot' in wide) throw new Error('refused');
    expect(wide.low).toBeLessThan(narrow.low);
    expect(narrow.low).toBeLessThan(fitted(rows).coefficients[2] ?? 0);
    expect(wide.high).toBeGreaterThan(narrow.high);
  });
});

test('a column made of the others is refused', () => {
  const rows = [1, 2, 3, 4].map((x) => ({ columns: [1, x, 2 * x], hits: x % 2, units: 1 }));
  expect(fitFirth(rows)).toEqual({ cannot: { code: 'dependent-columns' } });
  expect(firthInterval(rows, 1, 0.9)).toEqual({ cannot: { code: 'dependent-columns' } });
});

test.each([
  ['rows', () => fitFirth([])],
  ['columns', () => fitFirth([{ columns: [1, Number.NaN], hits: 0, units: 1 }])],
  [
    'columns',
    () =>
      fitFirth([
        { columns: [1], hits: 0, units: 1 },
        { columns: [1, 2], hits: 0, units: 1 },
      ]),
  ],
  ['units', () => fitFirth([{ columns: [1], hits: 0, units: 0 }])],
  ['hits', () => fitFirth([{ columns: [1], hits: 2, units: 1 }])],
  ['column', () => firthInterval([{ columns: [1], hits: 1, units: 2 }], 1, 0.9)],
  ['level', () => firthInterval([{ columns: [1], hits: 1, units: 2 }], 0, 1)],
])('impossible %s are refused', (name, attempt) => {
  expect(attempt).toThrow(RangeError);
  expect(attempt).toThrow(`invalid ${name}:`);
});
