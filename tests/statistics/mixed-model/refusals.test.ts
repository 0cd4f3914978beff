import { describe, expect, it } from 'vitest';
import { fitMixed, type MixedData } from '../../../src/statistics/mixed-model/fit-mixed.ts';
import { kenwardRoger } from '../../../src/statistics/mixed-model/kenward-roger.ts';
import { constant, grouped, mixed } from './fitting.ts';

const y = [2.1, 3.4, 2.8, 4.9, 4.1, 5.3, 1.2, 2.2, 0.9];
const group = { name: 'group', levels: [...'aaabbbccc'] };
const rain = { name: 'rain', values: [0, 1, 5, 0, 2, 7, 3, 3, 1] };
const data: MixedData = { y, fixed: [constant(9), rain], random: [group] };
const random = (levels: string): MixedData => ({ ...data, random: [{ name: 'mound', levels: [...levels] }] });

describe('what cannot be fitted is said as data', () => {
  it('no values', () => {
    expect(fitMixed({ y: [], fixed: [], random: [] })).toEqual({ cannot: { code: 'no-values' } });
  });
  it('as many columns as values', () => {
    const fixed = [constant(2), { name: 'rain', values: [1, 4] }];
    expect(fitMixed({ y: [1, 2], fixed, random: [] })).toEqual({
      cannot: { code: 'no-residual-df', values: 2, unknowns: 2 },
    });
  });
  it('a column that others make up', () => {
    const twice = { name: 'twice', values: rain.values.map((value) => 2 * value - 1) };
    expect(fitMixed({ ...data, fixed: [...data.fixed, twice] })).toEqual({
      cannot: { code: 'rank-deficient', column: 'twice' },
    });
    const still = { name: 'still', values: y.map(() => 0) };
    expect(fitMixed({ ...data, fixed: [still] })).toEqual({ cannot: { code: 'rank-deficient', column: 'still' } });
  });
  it('but not columns of very different size, or a year beside a constant', () => {
    const years = { name: 'year', values: y.map((_, at) => 2020 + (at % 4)) };
    const grams = { name: 'grams', values: rain.values.map((value) => 1e7 * value) };
    expect(mixed({ ...data, fixed: [constant(9), years, grams] }).coefficients).toHaveLength(3);
  });
  it('a factor of one level', () => {
    expect(fitMixed(random('aaaaaaaaa'))).toEqual({ cannot: { code: 'too-few-levels', factor: 'mound', levels: 1 } });
  });
  it('a factor with a level for each value', () => {
    expect(fitMixed(random('abcdefghi'))).toEqual({
      cannot: { code: 'levels-as-observations', factor: 'mound', levels: 9 },
    });
  });
  it('two factors that group alike, or one that the fixed part takes up', () => {
    const alike = { name: 'alike', levels: [...'xxxzzzyyy'] };
    expect(fitMixed({ ...data, random: [group, alike] })).toEqual({
      cannot: { code: 'not-separable', factor: 'alike' },
    });
    const own = ['a', 'b'].map((level) => ({
      name: level,
      values: group.levels.map((one) => (one === level ? 1 : 0)),
    }));
    expect(fitMixed({ ...data, fixed: [...data.fixed, ...own] })).toEqual({
      cannot: { code: 'not-separable', factor: 'group' },
    });
  });
  it('pairs of one value and the rest alone, all in the fixed part', () => {
    const apart = { name: 'apart', values: [1, 1, 0, 0, 0, 0, 0, 0, 0] };
    const half = { name: 'half', values: [1, -1, 0, 0, 0, 0, 0, 0, 0] };
    expect(fitMixed({ ...random('aabcdefgh'), fixed: [constant(9), apart, half] })).toEqual({
      cannot: { code: 'not-separable', factor: 'mound' },
    });
  });
  it('values that the fixed part makes up, but for rounding', () => {
    const line = rain.values.map((value) => 0.1 + 0.3 * value);
    expect(fitMixed({ ...data, y: line })).toEqual({ cannot: { code: 'no-spread', df: 7 } });
  });
  it('values that agree exactly within each level', () => {
    const steps = grouped([
      [1.1, 1.1, 1.1],
      [2.7, 2.7],
      [0.4, 0.4, 0.4],
    ]);
    expect(fitMixed(steps)).toEqual({ cannot: { code: 'no-residual-spread' } });
  });
  it('but not values that differ within levels in their third decimal', () => {
    const fit = mixed(
      grouped([
        [1.1, 1.102, 1.1],
        [2.7, 2.7],
        [0.4, 0.4, 0.401],
      ]),
    );
    // Squares within groups are 2/3 · 4e-6 and 2/3 · 1e-6, on 8 - 3 degrees of freedom; groups tell nothing of it.
    expect(fit.residual_variance).toBeCloseTo(((2 / 3) * 5e-6) / 5, 12);
  });
});

describe('what the caller got wrong throws', () => {
  it('a value that is not finite', () => {
    expect(() => fitMixed({ ...data, y: y.with(3, Number.NaN) })).toThrow(RangeError);
    const infinite = { name: 'rain', values: rain.values.with(0, Number.POSITIVE_INFINITY) };
    expect(() => fitMixed({ ...data, fixed: [infinite] })).toThrow(RangeError);
  });
  it('a column or factor of another length, or a name twice', () => {
    expect(() => fitMixed({ ...data, fixed: [constant(8)] })).toThrow(RangeError);
    expect(() => fitMixed(random('aabb'))).toThrow(RangeError);
    expect(() => fitMixed({ ...data, fixed: [rain, rain] })).toThrow(RangeError);
    expect(() => fitMixed({ ...data, random: [group, group] })).toThrow(RangeError);
  });
  it('a contrast of no column, of an unknown one, or of nothing', () => {
    const fit = mixed(data);
    expect(() => kenwardRoger(fit, { wind: 1 })).toThrow(RangeError);
    expect(() => kenwardRoger(fit, { rain: 0 })).toThrow(RangeError);
    expect(() => kenwardRoger(fit, {})).toThrow(RangeError);
    expect(() => kenwardRoger(fit, { rain: Number.NaN })).toThrow(RangeError);
    expect(kenwardRoger(fit, { rain: 1, constant: 0 })).toEqual(kenwardRoger(fit, { rain: 1 }));
  });
});
