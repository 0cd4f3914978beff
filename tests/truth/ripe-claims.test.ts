import { describe, expect, it } from 'vitest';
import { brier, calibration, judgedClaims } from './ripe-claims.ts';
import { SIGNS_SETTINGS } from './signs-settings.ts';

/** A small gate; the table over 500 gardens a setting is ripe-claims.truth.ts. Seeds 1 to this. */
const GARDENS = 60;

describe.each(SIGNS_SETTINGS.filter(({ name }) => /drought|24 fruits|no day of set/.test(name)))('$name', (setting) => {
  const { ours, product, base } = judgedClaims(setting, GARDENS);
  it('claims of 6, 7 and 8 in 10 come true within one in ten', () => {
    for (const claimed of [0.6, 0.7, 0.8]) {
      const found = calibration(ours, claimed - 0.05, claimed + 0.05);
      expect(found?.claims ?? 0).toBeGreaterThan(80);
      expect(Math.abs((found?.held ?? 0) - claimed), `${claimed}: ${found?.held}`).toBeLessThan(0.1);
    }
  });
  it('what is held back at 8 in 10 comes true at least so often', () => {
    expect(calibration(ours, 0.85, 1.01)?.held ?? 0).toBeGreaterThan(0.8);
  });
  it('a product of ratios over-claims on the same fruits, and lies further from the truth on average', () => {
    const [bold, boldProduct] = [ours, product].map((claims) => calibration(claims, 0.85, 1.01));
    expect((boldProduct?.said ?? 0) - (boldProduct?.held ?? 1)).toBeGreaterThan(0.03);
    expect((bold?.said ?? 1) - (bold?.held ?? 0)).toBeLessThan(0.02);
    expect(brier(ours)).toBeLessThan(brier(product));
  });
  it('nearer to the truth than the share of all cut fruits', () => {
    expect(brier(ours)).toBeLessThan(brier(ours.map((one) => ({ ...one, chance: base }))));
  });
});

describe('calibration by hand', () => {
  const claim = (garden: number, chance: number, ripe: boolean) => ({ garden, chance, ripe });
  const claims = [claim(1, 0.7, true), claim(1, 0.74, false), claim(2, 0.66, true), claim(2, 0.9, true)];
  it('means, and the garden as the repeat', () => {
    const found = calibration(claims, 0.65, 0.75);
    expect(found).toMatchObject({ claims: 3, held: 2 / 3 });
    expect(found?.said).toBeCloseTo(0.7, 12);
    // Garden 1 lacks 1 - 4/3, garden 2 exceeds by 1 - 2/3; root of the sum of squares over 3.
    expect(found?.se).toBeCloseTo(Math.sqrt(2 / 9) / 3, 12);
    expect(calibration(claims, 0.1, 0.2)).toBeNull();
  });
  it('mean squared distance', () => {
    expect(brier(claims)).toBeCloseTo((0.3 ** 2 + 0.74 ** 2 + 0.34 ** 2 + 0.1 ** 2) / 4, 12);
  });
});
