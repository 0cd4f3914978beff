import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  readilyAvailable,
  shareOnDay,
  stressFactor,
  stressFromYield,
  totalAvailable,
  yieldShare,
} from '../../src/agronomy/soil-water.ts';
import { EXAMPLE_36, EXAMPLE_37, EXAMPLE_39, EXAMPLE_44, SHARES } from '../published/fao-56/soil-water.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const SEEDED = { seed: 20250812, numRuns: 500 };

describe('FAO-56', () => {
  it.each(EXAMPLE_36.crops)('example 36, $crop', ({ root_m, share, ...printed }) => {
    for (const soil of ['loamy sand', 'silt', 'silty clay'] as const) {
      const taw_mm = totalAvailable(EXAMPLE_36.soils[soil], root_m);
      expectPrinted(taw_mm, printed[soil][0]);
      expectPrinted(readilyAvailable(taw_mm, share), printed[soil][1]);
    }
  });
  it('example 37: water in reach', () => {
    const taw_mm = totalAvailable(EXAMPLE_37.hold, EXAMPLE_37.root_m);
    expectPrinted(taw_mm, EXAMPLE_37.taw);
    expectPrinted(readilyAvailable(taw_mm, EXAMPLE_37.share), EXAMPLE_37.raw);
  });
  it('example 39, without salt', () => {
    const { taw_mm, share, raw, depletions } = EXAMPLE_39;
    expectPrinted(readilyAvailable(taw_mm, share), raw);
    for (const [depletion_mm, printed] of depletions) {
      expectPrinted(stressFactor(depletion_mm, taw_mm, share), printed);
      expect(stressFactor(depletion_mm, taw_mm, share)).toBeCloseTo((110 - depletion_mm) / 66, 12);
    }
  });
  it('example 44: drought told from a yield', () => {
    const { yield_kg, full_yield_kg, ky, printed, exact } = EXAMPLE_44;
    const found = stressFromYield(yield_kg / full_yield_kg, ky);
    expectPrinted(found, printed);
    expect(Math.abs(found / exact - 1)).toBeLessThanOrEqual(1e-6);
  });
  it.each(SHARES)('page 162: at %d mm a day the share is %d', (etc_mm, share) => {
    expect(shareOnDay(0.4, etc_mm)).toBeCloseTo(share, 12);
  });
});

describe('by hand', () => {
  it('the share is held to 0.8 for a sparing crop on a cool day', () => {
    expect(shareOnDay(0.7, 0)).toBe(0.8);
  });
  it('a yield: 8 tenths of the water at Ky 1.1 gives 1 - 1.1 · 0.2 of the crop, none of it gives none', () => {
    expect(yieldShare(0.8, 1.1)).toBeCloseTo(0.78, 12);
    expect(yieldShare(0, 1.1)).toBe(0);
    expect(stressFromYield(0, 0.9)).toBe(0);
  });
});

describe('anywhere', () => {
  const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  const mm = fc.double({ min: 1, max: 300, noNaN: true });
  it('stress is 1 to the end of what goes without harm, 0 when nothing is left, straight between', () => {
    fc.assert(
      fc.property(mm, share, fc.double({ min: 0, max: 1, noNaN: true }), (taw_mm, p, part) => {
        const raw_mm = readilyAvailable(taw_mm, p);
        expect(stressFactor(part * raw_mm, taw_mm, p)).toBe(1);
        expect(stressFactor(taw_mm * (1 + part), taw_mm, p)).toBe(0);
        expect(stressFactor(raw_mm + part * (taw_mm - raw_mm), taw_mm, p)).toBeCloseTo(1 - part, 6);
      }),
      SEEDED,
    );
  });
  it('a yield told from the drought tells the drought', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.double({ min: 0.2, max: 1.5, noNaN: true }),
        (ks, ky) => {
          expect(stressFromYield(yieldShare(ks, ky), ky)).toBeCloseTo(ks, 9);
        },
      ),
      SEEDED,
    );
  });
});

describe('mistakes of the caller throw', () => {
  const hold = { field_capacity: 0.3, wilting_point: 0.1 };
  it.each([
    ['field_capacity', () => totalAvailable({ ...hold, field_capacity: 1.2 }, 1)],
    ['wilting_point', () => totalAvailable({ ...hold, wilting_point: Number.NaN }, 1)],
    ['root_m', () => totalAvailable(hold, -1)],
    ['taw_mm', () => readilyAvailable(-1, 0.4)],
    ['share', () => readilyAvailable(100, 1)],
    ['share', () => shareOnDay(0, 5)],
    ['etc_mm', () => shareOnDay(0.4, -1)],
    ['taw_mm', () => stressFactor(0, 0, 0.4)],
    ['depletion_mm', () => stressFactor(-1, 100, 0.4)],
    ['water_share', () => yieldShare(1.1, 1)],
    ['ky', () => yieldShare(1, 0)],
    ['yield_share', () => stressFromYield(-0.1, 1)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
