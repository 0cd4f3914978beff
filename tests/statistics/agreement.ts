/** How closely a computed number agrees with a published one. */
import { expect } from 'vitest';
import { type AdditiveFit, fitAdditive } from '../../src/statistics/additive-model.ts';
import type { VarianceRow } from '../../src/statistics/analysis-of-variance.ts';
import type { Observation } from '../../src/statistics/block-design.ts';

/** Expects the number to lie within half a unit of the last digit printed. */
export function expectPrinted(actual: number | null | undefined, printed: string): void {
  const decimals = printed.split('.')[1]?.length ?? 0;
  const off = Math.abs(Number(actual ?? Number.NaN) - Number(printed));
  expect(off, `${actual} against ${printed} as printed`).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-9));
}

/** Expects at least so many leading digits to agree: -log10 of the relative difference. */
export function expectDigits(actual: number | null | undefined, published: number, digits: number): void {
  const off = Math.abs(Number(actual ?? Number.NaN) - published) / Math.abs(published || 1);
  expect(-Math.log10(off), `digits of ${actual} that agree with ${published}`).toBeGreaterThanOrEqual(digits);
}

/** Groups of values as observations without blocks. */
export function oneWay(groups: Readonly<Record<string, readonly number[]>>): Observation[] {
  return Object.entries(groups).flatMap(([treatment, values]) =>
    values.map((value) => ({ treatment, block: null, value })),
  );
}

/** A table of treatments by blocks (numbered from 1) as observations; null where there is no plot. */
export function byBlock(table: Readonly<Record<string, readonly (number | null)[]>>): Observation[] {
  return Object.entries(table).flatMap(([treatment, values]) =>
    values.flatMap((value, index) => (value === null ? [] : [{ treatment, block: `${index + 1}`, value }])),
  );
}

/** The fit; fails the test when it was refused. */
export function fitted(observations: readonly Observation[]): AdditiveFit {
  const fit = fitAdditive(observations);
  if ('cannot' in fit) throw new Error(`refused: ${JSON.stringify(fit.cannot)}`);
  return fit;
}

/** The row of a term; fails the test when there is none. */
export function row(fit: AdditiveFit, term: VarianceRow['term']): VarianceRow {
  const found = fit.analysis_of_variance.find((one) => one.term === term);
  if (!found) throw new Error(`no row for ${term}`);
  return found;
}
