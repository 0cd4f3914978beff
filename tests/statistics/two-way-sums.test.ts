import { describe, expect, it } from 'vitest';
import type { Observation } from '../../src/statistics/block-design.ts';
import { sumToZero } from '../../src/statistics/factor-coding.ts';
import { extraSumOfSquares, leastSquares, sumOfSquares } from '../../src/statistics/least-squares.ts';
import { type SumsType, type TwoWayRow, twoWaySums } from '../../src/statistics/two-way-sums.ts';
import oracle from '../published/two-way/oracle.json' with { type: 'json' };
import { SYSTOLIC } from '../published/two-way/systolic.ts';
import { expectDigits, expectPrinted, fitted } from './agreement.ts';
import { BARLEY, BARLEY_PLOTS, crossed } from './crossed.ts';

const TYPES: SumsType[] = ['I', 'II', 'III'];

function table(observations: readonly Observation[], type: SumsType): Partial<Record<TwoWayRow['term'], TwoWayRow>> {
  const found = twoWaySums(observations, type);
  if ('cannot' in found) throw new Error(`refused: ${JSON.stringify(found.cannot)}`);
  expect(found.type).toBe(type);
  return Object.fromEntries(found.rows.map((row) => [row.term, row]));
}

const turned = (observations: readonly Observation[]): Observation[] =>
  observations.map(({ treatment, block, value }) => ({ treatment: `${block}`, block: treatment, value }));

describe('drugs by diseases, 58 dogs, as printed', () => {
  const dogs = crossed(SYSTOLIC.drugs);
  const { printed } = SYSTOLIC;
  it.each(TYPES)('type %s', (type) => {
    const rows = table(dogs, type);
    for (const term of ['treatment', 'block', 'interaction'] as const) {
      expectPrinted(rows[term]?.ss, printed[type][term]);
      expect(rows[term]?.df).toBe(printed.df[term]);
      if (type === 'III') expectPrinted(rows[term]?.f, printed.f[term]);
    }
    expectPrinted(rows.residual?.ss, printed.residual_ss);
    expect(rows.residual?.df).toBe(printed.df.residual);
  });
  it('type I with the disease first', () => {
    const rows = table(turned(dogs), 'I');
    expectPrinted(rows.treatment?.ss, printed.I_turned.block);
    expectPrinted(rows.block?.ss, printed.I_turned.treatment);
    expectPrinted(rows.interaction?.ss, printed.I_turned.interaction);
  });
  it('type I adds up to the total, the others do not', () => {
    const total = (type: SumsType) => Object.values(table(dogs, type)).reduce((sum, row) => sum + row.ss, 0);
    expect(dogs).toHaveLength(58);
    expectDigits(total('I'), printed.total_ss, 9);
    expect(Math.abs(total('II') - printed.total_ss)).toBeGreaterThan(50);
    expect(Math.abs(total('III') - printed.total_ss)).toBeGreaterThan(50);
  });
});

describe(`against ${oracle.made_with.R}, car ${oracle.made_with.car}`, () => {
  const trials: [string, Observation[], Record<SumsType, Partial<TwoWayRow>[] | null>][] = [
    ...Object.entries(oracle.trials).map(
      ([name, one]) => [name, one.observations, one.types] as [string, Observation[], (typeof one)['types']],
    ),
    ['barley by site', BARLEY.site, oracle.barley.site.types],
    ['barley by year', BARLEY.year, oracle.barley.year.types],
  ] as [string, Observation[], Record<SumsType, Partial<TwoWayRow>[] | null>][];
  it.each(trials)('%s', (_name, observations, types) => {
    for (const type of TYPES) {
      const expected = types[type];
      if (expected === null) {
        expect(twoWaySums(observations, type)).toMatchObject({ cannot: { code: 'empty-cells' } });
        continue;
      }
      const rows = table(observations, type);
      expect(Object.keys(rows)).toHaveLength(expected.length);
      for (const { term, df, ss, f, p } of expected) {
        const own = rows[term ?? 'residual'];
        expect(own?.df).toBe(df);
        expectDigits(own?.ss, Number(ss), 9);
        if (f === null) expect([own?.f, own?.p]).toEqual([null, null]);
        else {
          expectDigits(own?.f, Number(f), 9);
          expectDigits(own?.p, Number(p), 9);
        }
      }
    }
  });
});

it('barley: means of varieties and sites', () => {
  expect(BARLEY_PLOTS).toHaveLength(120);
  for (const [observations, means] of [
    [BARLEY.site, oracle.barley.variety_means],
    [BARLEY.year, oracle.barley.variety_means],
    [turned(BARLEY.site), oracle.barley.site_means],
  ] as const) {
    const fit = fitted(observations);
    expect(fit.treatments).toHaveLength(Object.keys(means).length);
    for (const [name, [mean]] of Object.entries(means)) expectDigits(fit.mean(name).estimate, Number(mean), 9);
  }
});

it('barley: site, year and variety side by side, by least squares', () => {
  const centre = BARLEY_PLOTS.reduce((sum, plot) => sum + plot.yield, 0) / BARLEY_PLOTS.length;
  const values = BARLEY_PLOTS.map((plot) => plot.yield - centre);
  const columns = (['site', 'year', 'variety'] as const).map((key) => {
    const levels = [...new Set(BARLEY_PLOTS.map((plot) => plot[key]))];
    return sumToZero(
      levels.length,
      BARLEY_PLOTS.map((plot) => levels.indexOf(plot[key])),
    );
  });
  let given = [values.map(() => 1) as readonly number[]];
  for (const [index, own] of columns.entries()) {
    const expected = oracle.barley.additive[index];
    expect(own).toHaveLength(expected?.df ?? 0);
    expectDigits(extraSumOfSquares(given, own, values), expected?.ss ?? 0, 9);
    given = [...given, ...own];
  }
  const { residual_ss } = leastSquares(given, values);
  expectDigits(residual_ss, oracle.barley.additive[3]?.ss ?? 0, 9);
  // As met in textbooks: F of the sites with 5 and 104 degrees of freedom.
  expectPrinted((oracle.barley.additive[0]?.ss ?? 0) / 5 / (residual_ss / 104), '33.0405');
  expect(sumOfSquares(values)).toBeGreaterThan(residual_ss);
});

it('leading digits that all values share cost none', () => {
  const dogs = crossed(SYSTOLIC.drugs);
  const raised = dogs.map((one) => ({ ...one, value: one.value + 1e10 }));
  for (const type of TYPES) {
    for (const [term, row] of Object.entries(table(dogs, type))) {
      expectDigits(table(raised, type)[term as TwoWayRow['term']]?.ss, row.ss, 9);
    }
  }
});

it('no interaction is found in sums of an effect each, but for rounding', () => {
  const noise = [-0.3, 0.3, 0.1, -0.1];
  const plots = ['A', 'B', 'C'].flatMap((treatment, i) =>
    ['1', '2'].flatMap((block, j) =>
      noise.slice(0, i === 1 ? 2 : 4).map((error) => ({ treatment, block, value: 5 + 2 * i - 3 * j + error })),
    ),
  );
  const { interaction, residual } = table(plots, 'III');
  expect(Math.abs(interaction?.ss ?? 1)).toBeLessThan(1e-20);
  expectDigits(residual?.ss, 4 * 0.2 + 2 * 0.18, 9);
});

describe('refusals', () => {
  const plots = (text: string): Observation[] =>
    text.split(' ').map((plot, index) => ({
      treatment: plot[0] ?? '',
      block: plot[1] ?? null,
      value: (7 * index) % 5,
    }));
  it.each([
    ['not crossed', 'A1 A1 A2', 'I', { code: 'not-crossed' }],
    ['a plot without a block', 'A1 A2 B1 B2 B', 'I', { code: 'not-crossed' }],
    ['never meeting', 'A1 A1 B2 B2', 'II', { code: 'not-linked', groups: [['A'], ['B']] }],
    ['a gap', 'A1 A1 A2 B1', 'III', { code: 'empty-cells', empty: 1 }],
    ['nothing repeated', 'A1 A2 B1 B2', 'II', { code: 'no-residual-df' }],
  ] as const)('%s', (_name, text, type, cannot) => {
    expect(twoWaySums(plots(text), type)).toEqual({ cannot });
  });
  it('repeats that agree', () => {
    const equal = ['A1', 'A1', 'B1', 'B1', 'A2', 'B2', 'B2'].map((plot) => ({
      treatment: plot[0] ?? '',
      block: plot[1] ?? '',
      value: plot === 'A1' ? 0.1 + 0.2 : plot === 'B1' ? 5 : 3,
    }));
    expect(twoWaySums(equal, 'II')).toEqual({ cannot: { code: 'no-spread', df: 3 } });
  });
  it('a gap leaves types I and II, without an interaction when none has degrees of freedom', () => {
    expect(Object.keys(table(plots('A1 A1 A2 B1'), 'II'))).toEqual(['treatment', 'block', 'residual']);
    expect(() => twoWaySums([{ treatment: 'A', block: '1', value: Number.NaN }], 'I')).toThrow(RangeError);
  });
});
