import { describe, expect, it } from 'vitest';
import type { Coefficients } from '../../src/agronomy/crop-coefficient.ts';
import { evaporationCut, type Mulch, mulchedBasal, mulchedSingle } from '../../src/agronomy/mulched-coefficient.ts';
import { EXAMPLE_45, HALF_STRAW, TABLE_25 } from '../published/fao-56/crop-coefficients.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const coefficientsOf = ([initial, middle, end]: readonly [number, number, number]): Coefficients => ({
  initial,
  middle,
  end,
});
const KC = coefficientsOf(HALF_STRAW.kc);
const KCB = coefficientsOf(HALF_STRAW.kcb);
const PLASTIC: Mulch = {
  kind: 'plastic',
  cover: 1,
  kc_initial: EXAMPLE_45.kc_initial,
  kc_cut: EXAMPLE_45.kc_cut,
  transpiration_cut: 0.1,
  evaporation_cut: 0.9,
};

describe('FAO-56, chapter 10', () => {
  it('half the ground under straw', () => {
    const straw: Mulch = { kind: 'organic', cover: HALF_STRAW.cover };
    expect(evaporationCut(straw)).toBeCloseTo(HALF_STRAW.cut, 12);
    const { initial, middle, end } = mulchedSingle(KC, KCB, straw);
    for (const [place, found] of [initial, middle, end].entries())
      expect(found).toBeCloseTo(HALF_STRAW.mulched[place] ?? Number.NaN, 9);
    expect(mulchedBasal(KCB, straw)).toEqual(KCB);
  });
  it('example 45: the whole ground under plastic', () => {
    const { initial, middle, end } = mulchedSingle(coefficientsOf(EXAMPLE_45.kc), KCB, PLASTIC);
    for (const [place, found] of [initial, middle, end].entries())
      expectPrinted(found, EXAMPLE_45.printed[place] ?? 'none');
  });
  it.each(Object.entries(TABLE_25))('table 25, %s: the crop’s own cuts, each of its own sign', (name, row) => {
    for (const end of [0, 1] as const) {
      const mulch: Mulch = {
        ...PLASTIC,
        kc_cut: row.kc_cut[end] / 100,
        transpiration_cut: -row.transpiration_gain[end] / 100,
        evaporation_cut: row.evaporation_cut[end] / 100,
      };
      expect(100 * (1 - mulchedSingle(KC, KCB, mulch).middle / KC.middle)).toBeCloseTo(row.kc_cut[end], 9);
      expect(100 * (mulchedBasal(KCB, mulch).middle / KCB.middle - 1)).toBeCloseTo(row.transpiration_gain[end], 9);
      expect(100 * evaporationCut(mulch)).toBeCloseTo(row.evaporation_cut[end], 9);
      // One crop alone drinks less over plastic.
      expect(mulchedBasal(KCB, mulch).middle < KCB.middle).toBe(name === 'watermelon');
    }
  });
});

describe('by hand', () => {
  it('no mulch, or one over none of the ground, changes nothing', () => {
    for (const mulch of [{ kind: 'none' }, { kind: 'organic', cover: 0 }, { ...PLASTIC, cover: 0 }] as const) {
      expect(mulchedSingle(KC, KCB, mulch)).toEqual(KC);
      expect(mulchedBasal(KCB, mulch)).toEqual(KCB);
      expect(evaporationCut(mulch)).toBe(0);
    }
  });
  it('straw over all of the ground halves the evaporation', () => {
    expect(evaporationCut({ kind: 'organic', cover: 1 })).toBe(0.5);
  });
  it('a Kcb above Kc leaves nothing to save', () => {
    const low = { ...KC, middle: 0.9 };
    expect(mulchedSingle(low, KCB, { kind: 'organic', cover: 1 }).middle).toBe(0.9);
  });
  it('plastic over half of the ground does half as much', () => {
    const half = { ...PLASTIC, cover: 0.5 };
    // 0.4 + 0.5 · (0.1 - 0.4); 1 · (1 - 0.5 · 0.15); 0.95 · (1 - 0.5 · 0.1).
    expect(mulchedSingle(KC, KCB, half).initial).toBeCloseTo(0.25, 12);
    expect(mulchedSingle(KC, KCB, half).middle).toBeCloseTo(0.925, 12);
    expect(mulchedBasal(KCB, half).middle).toBeCloseTo(0.9025, 12);
    expect(evaporationCut(half)).toBeCloseTo(0.45, 12);
  });
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['cover', () => evaporationCut({ kind: 'organic', cover: 1.1 })],
    ['cover', () => mulchedSingle(KC, KCB, { kind: 'organic', cover: Number.NaN })],
    ['kc_cut', () => mulchedSingle(KC, KCB, { ...PLASTIC, kc_cut: -0.1 })],
    ['transpiration_cut', () => mulchedBasal(KCB, { ...PLASTIC, transpiration_cut: -1.1 })],
    ['evaporation_cut', () => evaporationCut({ ...PLASTIC, evaporation_cut: 2 })],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
