import { describe, expect, it } from 'vitest';
import { fitAdditive } from '../../src/statistics/additive-model.ts';
import { byBlock, fitted, oneWay } from './agreement.ts';

describe('what cannot be fitted is said as data', () => {
  it('no values', () => {
    expect(fitAdditive([])).toEqual({ cannot: { code: 'no-values' } });
  });
  it('one value a treatment', () => {
    expect(fitAdditive(oneWay({ A: [1], B: [2] }))).toEqual({
      cannot: { code: 'no-residual-df', values: 2, unknowns: 2 },
    });
  });
  it('repeats that blocks use up', () => {
    expect(fitAdditive(byBlock({ A: [1, 4], B: [2, null] }))).toEqual({
      cannot: { code: 'no-residual-df', values: 3, unknowns: 3 },
    });
  });
  it('treatments that no block links, also when values would be too few', () => {
    expect(fitAdditive(byBlock({ D: [null, 3], A: [1, null], C: [null, 2], B: [2, null] }))).toEqual({
      cannot: {
        code: 'not-linked',
        groups: [
          ['A', 'B'],
          ['C', 'D'],
        ],
      },
    });
  });
  it('treatments that stay apart after a late block has joined two others', () => {
    const plots = byBlock({ A: [1], C: [2, null, 3], B: [null, 4], D: [null, 1, 2], E: [null, null, null, 5] });
    expect(fitAdditive(plots)).toEqual({ cannot: { code: 'not-linked', groups: [['A', 'B', 'C', 'D'], ['E']] } });
  });
  it('repeats that agree exactly', () => {
    expect(fitAdditive(oneWay({ A: [2.3, 2.3], B: [4.1, 4.1] }))).toEqual({ cannot: { code: 'no-spread', df: 2 } });
    expect(fitAdditive(oneWay({ A: [0, 0, 0] }))).toEqual({ cannot: { code: 'no-spread', df: 2 } });
  });
  it('repeats that agree but for rounding', () => {
    const shifted = byBlock({ A: [0.1, 0.3, 0.7], B: [0.1 + 0.2, 0.3 + 0.2, 0.7 + 0.2], C: [1.1, 1.3, 1.7] });
    expect(fitAdditive(shifted)).toEqual({ cannot: { code: 'no-spread', df: 4 } });
  });
  it('but not repeats that differ in their tenth digit', () => {
    expect(fitted(oneWay({ A: [2.3, 2.3000000001], B: [4.1, 4.1] })).residual_sd).toBeCloseTo(5e-11, 13);
  });
});

describe('blocks are left out', () => {
  const table = { A: [1, 2, 4], B: [2, 4, 5] };
  const raw = { blocks: [], uses_blocks: false, complete: false, df: 4 };

  it('when an observation has none', () => {
    const some = byBlock(table).map((one, index) => (index === 3 ? { ...one, block: null } : one));
    expect(fitted(some)).toMatchObject(raw);
  });
  it('when there is only one', () => {
    expect(fitted(byBlock(table).map((one) => ({ ...one, block: 'all' })))).toMatchObject(raw);
  });
  it('when there is only one treatment, whose blocks then are its repeats', () => {
    const fit = fitted(byBlock({ A: [1, 2, 4] }));
    expect(fit).toMatchObject({ blocks: [], uses_blocks: false, df: 2 });
    expect(fit.analysis_of_variance.map((one) => one.term)).toEqual(['residual']);
    expect(fit.mean('A').estimate).toBeCloseTo(7 / 3, 14);
    expect(fit.mean('A').se).toBeCloseTo(Math.sqrt(7 / 9), 14);
  });
  it('and used otherwise', () => {
    expect(fitted(byBlock(table))).toMatchObject({ blocks: ['1', '2', '3'], uses_blocks: true, complete: true, df: 2 });
  });
});

it('blocks that hold every treatment, but one of them more often, are not complete', () => {
  const plots = byBlock({ A: [1, 2, 4], B: [2, 4, 5] });
  const fit = fitted([...plots, { treatment: 'A', block: '1', value: 3 }]);
  expect([fit.uses_blocks, fit.complete]).toEqual([true, false]);
});

describe('mistakes of the caller throw', () => {
  const fit = fitted(oneWay({ A: [1, 2], B: [2, 4] }));
  it.each([
    ['value', () => fitAdditive(oneWay({ A: [1, Number.NaN] }))],
    ['treatment', () => fit.mean('C')],
    ['treatment', () => fit.difference('A', 'C')],
    ['difference', () => fit.difference('A', 'A')],
  ])('invalid %s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});

it('treatments and blocks sort by code unit, whatever the language of the machine', () => {
  const fit = fitted(byBlock({ b: [1, 2, 4], B: [2, 4, 5], é: [1, 3, 3], Z: [2, 2, 2] }));
  expect(fit.treatments).toEqual(['B', 'Z', 'b', 'é']);
});
