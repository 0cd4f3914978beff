import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  K_IN_K2O,
  type Label,
  massForNitrogen,
  massOfVolume,
  nutrientsIn,
  P_IN_P2O5,
} from '../../src/agronomy/nutrients.ts';
import { fromSi, toSi } from '../../src/units.ts';
import {
  ANR_34,
  ANR_34_MISPRINT,
  ELEMENT_IN_OXIDE,
  MATTILSYNET_P_IN_4,
  PENN_STATE,
} from '../published/nutrients/printed.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const label = (n_percent: number | null, p_percent: number | null, k_percent: number | null): Label => ({
  n_percent,
  p_percent,
  k_percent,
  as: 'oxides',
});

const LB_KG = toSi('mass', 'lb', 1);
/** A cubic yard, in litres, by way of 3 ft and 0.3048 m. */
const YD3_L = 1000 * toSi('height', 'ft', 3) ** 3;
/** 43,560 square feet. */
const ACRE_M2 = toSi('area', 'ft2', 43_560);

describe('elements in their oxides', () => {
  it('as printed', () => {
    for (const printed of ELEMENT_IN_OXIDE.p) expectPrinted(P_IN_P2O5, printed);
    for (const printed of ELEMENT_IN_OXIDE.k) expectPrinted(K_IN_K2O, printed);
    expect(Math.floor(K_IN_K2O * 1e4) / 1e4).toBe(ELEMENT_IN_OXIDE.k_cut_off);
  });
  it('from the molar masses by hand: 61.948 of 141.943, 78.196 of 94.195', () => {
    expect(P_IN_P2O5).toBeCloseTo(61.948 / 141.943, 12);
    expect(K_IN_K2O).toBeCloseTo(78.196 / 94.195, 12);
  });
  it('worked examples of two authorities', () => {
    expectPrinted(nutrientsIn(100, label(null, 4, null)).p_kg, MATTILSYNET_P_IN_4);
    const { p_kg, k_kg } = nutrientsIn(100, label(null, 20, 10));
    // A factor of two places is off by up to a hundredth of a half of what it multiplies.
    expect(Math.abs((p_kg ?? Number.NaN) - PENN_STATE.p_in_20)).toBeLessThanOrEqual(20 * 0.005);
    expect(Math.abs((k_kg ?? Number.NaN) - PENN_STATE.k_in_10)).toBeLessThanOrEqual(10 * 0.005);
  });
});

describe('nutrientsIn', () => {
  it('10 kg of 3-2-1 are 0.300 kg N, 0.0873 kg P and 0.0830 kg K', () => {
    const { n_kg, p_kg, k_kg } = nutrientsIn(10, label(3, 2, 1));
    expectPrinted(n_kg, '0.300');
    expectPrinted(p_kg, '0.0873');
    expectPrinted(k_kg, '0.0830');
  });
  it('a label in elements is taken as it stands', () => {
    expect(nutrientsIn(50, { ...label(4, 2, 6), as: 'elements' })).toEqual({ n_kg: 2, p_kg: 1, k_kg: 3 });
  });
  it('what the label does not say is not known, which is not zero', () => {
    expect(nutrientsIn(10, label(3, null, 0))).toEqual({ n_kg: expect.closeTo(0.3, 12), p_kg: null, k_kg: 0 });
  });
  it.each(ANR_34)(
    'Ohio State ANR-34: %f per cent is %s lb a ton, %i tons an acre are %s lb',
    (percent, ton, tons, acre) => {
      const { n_kg } = nutrientsIn(2000 * LB_KG, label(percent, null, null));
      expectPrinted((n_kg ?? Number.NaN) / LB_KG, ton);
      expectPrinted((tons * (n_kg ?? Number.NaN)) / LB_KG, acre);
    },
  );
  it('its one row that does not agree is a tenth of a pound out, in print', () => {
    const { n_kg } = nutrientsIn(2000 * LB_KG, label(ANR_34_MISPRINT.percent, null, null));
    expect((n_kg ?? Number.NaN) / LB_KG - ANR_34_MISPRINT.lb_ton).toBeCloseTo(0.1, 9);
  });
});

describe('massOfVolume', () => {
  it('950 lb a cubic yard at 2 % are 19 lb of nitrogen a cubic yard', () => {
    const density_kg_m3 = (950 * LB_KG) / (YD3_L / 1000);
    const { n_kg } = nutrientsIn(massOfVolume(YD3_L, density_kg_m3), label(2, null, null));
    expect(fromSi('mass', 'lb', n_kg ?? Number.NaN)).toBeCloseTo(19, 9);
  });
  it('1 lb a cubic yard is 0.5933 kg a cubic metre; 1018 are 604', () => {
    expect(massOfVolume(YD3_L, 0.5933) / LB_KG).toBeCloseTo(1, 4);
    expectPrinted((1018 * LB_KG) / massOfVolume(YD3_L, 1), '604');
  });
  it('a litre at 550 kg a cubic metre is 550 g', () => {
    expect(massOfVolume(1, 550)).toBeCloseTo(0.55, 12);
  });
});

describe('massForNitrogen', () => {
  it('by hand: 10 g on each of 20 m² from 2 % of which an eighth serves the first year are 80 kg', () => {
    expect(massForNitrogen({ n_g_m2: 10, area_m2: 20, n_percent: 2, first_year_share: 0.125 })).toBeCloseTo(80, 9);
  });
  it.each(ANR_34)(
    'Ohio State ANR-34 turned round: %f per cent, %s lb a ton: %i tons give the %s lb an acre',
    (...row) => {
      const [n_percent, , tons, lb_acre] = row;
      const n_g_m2 = (1000 * Number(lb_acre) * LB_KG) / ACRE_M2;
      const mass_kg = massForNitrogen({ n_g_m2, area_m2: ACRE_M2, n_percent, first_year_share: 1 });
      expect((mass_kg ?? Number.NaN) / (2000 * LB_KG)).toBeCloseTo(tons, 9);
    },
  );
  it('1 lb an acre is 1.1209 kg a hectare, which is 0.11209 g a m²', () => {
    const mass_kg = massForNitrogen({ n_g_m2: 0.11209, area_m2: ACRE_M2, n_percent: 100, first_year_share: 1 });
    expect((mass_kg ?? Number.NaN) / LB_KG).toBeCloseTo(1, 4);
  });
  it('gives back what it was asked for, and less of a material that gives sooner', () => {
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.double({ min: 0.1, max: 5000, noNaN: true }),
        fc.double({ min: 0.1, max: 46, noNaN: true }),
        share,
        (n_g_m2, area_m2, n_percent, first_year_share) => {
          const mass = massForNitrogen({ n_g_m2, area_m2, n_percent, first_year_share }) ?? Number.NaN;
          const { n_kg } = nutrientsIn(mass, label(n_percent, null, null));
          expect((1000 * (n_kg ?? Number.NaN) * first_year_share) / area_m2 / n_g_m2).toBeCloseTo(1, 9);
          expect(massForNitrogen({ n_g_m2, area_m2, n_percent, first_year_share: 1 })).toBeLessThanOrEqual(mass);
        },
      ),
      { seed: 20250812, numRuns: 200 },
    );
  });
  it('no mass of a material without nitrogen is enough', () => {
    expect(massForNitrogen({ n_g_m2: 10, area_m2: 20, n_percent: 0, first_year_share: 0.5 })).toBeNull();
  });
});

describe('mistakes of the caller throw', () => {
  const target = { n_g_m2: 10, area_m2: 20, n_percent: 2, first_year_share: 0.5 };
  it.each([
    ['mass_kg', () => nutrientsIn(-1, label(1, 1, 1))],
    ['n_percent', () => nutrientsIn(1, label(101, 1, 1))],
    ['p_percent', () => nutrientsIn(1, label(1, -1, 1))],
    ['k_percent', () => nutrientsIn(1, label(1, 1, Number.NaN))],
    ['n_g_m2', () => massForNitrogen({ ...target, n_g_m2: -1 })],
    ['area_m2', () => massForNitrogen({ ...target, area_m2: Number.POSITIVE_INFINITY })],
    ['n_percent', () => massForNitrogen({ ...target, n_percent: 200 })],
    ['first_year_share', () => massForNitrogen({ ...target, first_year_share: 0 })],
    ['first_year_share', () => massForNitrogen({ ...target, first_year_share: 15 })],
    ['volume_l', () => massOfVolume(-1, 500)],
    ['density_kg_m3', () => massOfVolume(1, Number.NaN)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
