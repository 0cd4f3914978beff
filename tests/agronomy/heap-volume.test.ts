import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowlVolume, boxVolume, capVolume, frustumVolume, ridgeVolume } from '../../src/agronomy/heap-volume.ts';

const SEEDED = { seed: 20250812, numRuns: 200 };
const metres = fc.double({ min: 0.05, max: 5, noNaN: true });

/** Litres between 0 and a height, by Gauss's rule with two points: exact for areas that are cubic in the height. */
function stacked(height_m: number, area_m2: (z: number) => number): number {
  const [half, reach] = [height_m / 2, height_m / (2 * Math.sqrt(3))];
  return 1000 * half * (area_m2(half - reach) + area_m2(half + reach));
}

const near = (found: number, expected: number): void =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-9 * Math.max(expected, 1e-9));

describe('by hand', () => {
  it('a cap: 1.2 m across and 0.3 m high is π · 0.3 · (3 · 0.36 + 0.09) / 6 = 0.0585 π m³', () => {
    expect(capVolume({ across_m: 1.2, height_m: 0.3 })).toBeCloseTo(58.5 * Math.PI, 9);
  });
  it('half a sphere is 2/3 π r³, a whole one 4/3 π r³ on a base of nothing', () => {
    expect(capVolume({ across_m: 2, height_m: 1 })).toBeCloseTo((2000 / 3) * Math.PI, 9);
    expect(capVolume({ across_m: 0, height_m: 2 })).toBeCloseTo((4000 / 3) * Math.PI, 9);
  });
  it('a bowl: 0.4 m across and 0.1 m deep holds π · 0.1 · (3 · 0.04 + 0.01) / 6 m³, near 7 litres', () => {
    expect(bowlVolume({ across_m: 0.4, depth_m: 0.1 })).toBeCloseTo((13 / 6) * Math.PI, 9);
    expect(Math.round(bowlVolume({ across_m: 0.4, depth_m: 0.1 }))).toBe(7);
  });
  it('a stump: 1 m across below, 0.5 m above, 0.3 m high is π · 0.3 · 1.75 / 12 m³', () => {
    expect(frustumVolume({ base_across_m: 1, top_across_m: 0.5, height_m: 0.3 })).toBeCloseTo(43.75 * Math.PI, 9);
  });
  it('a cone is a third of its drum', () => {
    const drum = frustumVolume({ base_across_m: 2, top_across_m: 2, height_m: 3 });
    expect(drum).toBeCloseTo(3000 * Math.PI, 8);
    expect(frustumVolume({ base_across_m: 2, top_across_m: 0, height_m: 3 })).toBeCloseTo(drum / 3, 9);
  });
  it('a ridge: 4 × 1 m below, 3.6 × 0.6 m above, 0.25 m high', () => {
    // Areas 4, 3.8 · 0.8 = 3.04 and 2.16: 0.25 · (4 + 12.16 + 2.16) / 6 m³.
    const ridge = { base_length_m: 4, base_width_m: 1, top_length_m: 3.6, top_width_m: 0.6, height_m: 0.25 };
    expect(ridgeVolume(ridge)).toBeCloseTo((0.25 * 18320) / 6, 9);
  });
  it('a pyramid is a third of its box, a roof half of it', () => {
    const base = { base_length_m: 3, base_width_m: 2, height_m: 1 };
    expect(boxVolume({ length_m: 3, width_m: 2, height_m: 1 })).toBe(6000);
    expect(ridgeVolume({ ...base, top_length_m: 0, top_width_m: 0 })).toBeCloseTo(2000, 9);
    expect(ridgeVolume({ ...base, top_length_m: 3, top_width_m: 0 })).toBeCloseTo(3000, 9);
    expect(ridgeVolume({ ...base, top_length_m: 3, top_width_m: 2 })).toBeCloseTo(6000, 9);
  });
  it('10 mm on a square metre are 10 litres', () => {
    expect(boxVolume({ length_m: 1, width_m: 1, height_m: 0.01 })).toBe(10);
  });
  it('nothing high or nothing wide is nothing', () => {
    expect(capVolume({ across_m: 1, height_m: 0 })).toBe(0);
    expect(frustumVolume({ base_across_m: 0, top_across_m: 0, height_m: 1 })).toBe(0);
    expect(boxVolume({ length_m: 1, width_m: 0, height_m: 1 })).toBe(0);
  });
});

describe('summed over level cuts', () => {
  it('a cap', () => {
    fc.assert(
      fc.property(metres, metres, (across_m, height_m) => {
        const radius = ((across_m / 2) ** 2 + height_m ** 2) / (2 * height_m);
        const cut = (z: number): number => Math.PI * (radius ** 2 - (radius - height_m + z) ** 2);
        near(capVolume({ across_m, height_m }), stacked(height_m, cut));
        expect(bowlVolume({ across_m, depth_m: height_m })).toBe(capVolume({ across_m, height_m }));
      }),
      SEEDED,
    );
  });
  it('a stump', () => {
    fc.assert(
      fc.property(metres, metres, metres, (base_across_m, top_across_m, height_m) => {
        const across = (z: number): number => base_across_m + (z / height_m) * (top_across_m - base_across_m);
        const found = frustumVolume({ base_across_m, top_across_m, height_m });
        near(
          found,
          stacked(height_m, (z) => (Math.PI * across(z) ** 2) / 4),
        );
      }),
      SEEDED,
    );
  });
  it('a ridge', () => {
    fc.assert(
      fc.property(metres, metres, metres, metres, metres, (length, width, topLength, topWidth, height_m) => {
        const at = (z: number, from: number, to: number): number => from + (z / height_m) * (to - from);
        const measures = { base_length_m: length, base_width_m: width, top_length_m: topLength, top_width_m: topWidth };
        const cut = (z: number): number => at(z, length, topLength) * at(z, width, topWidth);
        near(ridgeVolume({ ...measures, height_m }), stacked(height_m, cut));
      }),
      SEEDED,
    );
  });
});

it('a mound has room for its stump and fits its drum', () => {
  fc.assert(
    fc.property(metres, metres, (across_m, height_m) => {
      const cone = frustumVolume({ base_across_m: across_m, top_across_m: 0, height_m });
      const drum = frustumVolume({ base_across_m: across_m, top_across_m: across_m, height_m });
      const cap = capVolume({ across_m, height_m });
      expect(cap).toBeGreaterThan(cone);
      if (height_m <= across_m / 2) expect(cap).toBeLessThan(drum);
    }),
    SEEDED,
  );
});

describe('a measure that is none is refused', () => {
  it.each([
    ['across_m', () => capVolume({ across_m: -1, height_m: 1 })],
    ['height_m', () => capVolume({ across_m: 1, height_m: Number.NaN })],
    ['depth_m', () => bowlVolume({ across_m: 1, depth_m: -0.1 })],
    ['top_across_m', () => frustumVolume({ base_across_m: 1, top_across_m: Number.POSITIVE_INFINITY, height_m: 1 })],
    [
      'top_width_m',
      () => ridgeVolume({ base_length_m: 1, base_width_m: 1, top_length_m: 1, top_width_m: -1, height_m: 1 }),
    ],
    ['width_m', () => boxVolume({ length_m: 1, width_m: -1, height_m: 1 })],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
