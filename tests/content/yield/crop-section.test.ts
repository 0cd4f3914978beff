import { describe, expect, test } from 'vitest';
import { expectPrinted } from '../../statistics/agreement.ts';
import { cropOf, type Spot, seasonOf, spotsOf } from './yield-page.ts';

/**
 * Two varieties of three spots, by hand: spread within each 1 kg on 4 degrees of freedom, means 11 and 6, so the
 * standard error of the difference is √(1/3 + 1/3). t(0.95, 4) = 2.132: NIST/SEMATECH e-Handbook 1.3.6.7.2.
 */
const HEAVY = [10, 11, 12];
const LIGHT = [5, 6, 7];
const LOW = (5 - 2.132 * Math.sqrt(2 / 3)).toFixed(2);
const HIGH = (5 + 2.132 * Math.sqrt(2 / 3)).toFixed(2);

describe('a pair told apart', () => {
  for (const [heavy, light] of [
    ['amber', 'birch'],
    ['birch', 'amber'],
  ] as const) {
    test(`names the one that gave more first: ${heavy}`, () => {
      const [pair, ...others] = cropOf({ spots: [...spotsOf(heavy, HEAVY), ...spotsOf(light, LIGHT)] }).clear;
      expect(others).toEqual([]);
      expect(pair).toMatchObject({ more: heavy, less: light, interval: { level: 0.9 } });
      expectPrinted(pair?.interval.low, LOW);
      expectPrinted(pair?.interval.high, HIGH);
    });
  }

  test('is not told apart when the range of the difference holds zero', () => {
    const { clear, comparisons } = cropOf({ spots: [...spotsOf('amber', HEAVY), ...spotsOf('birch', [9, 11, 13])] });
    expect({ clear, comparisons }).toEqual({ clear: [], comparisons: 1 });
  });

  test('needs three spots of each', () => {
    const crop = cropOf({ spots: [...spotsOf('amber', HEAVY), ...spotsOf('birch', [5, 6])] });
    expect(crop).toMatchObject({ clear: [], comparisons: 0, too_few: [{ name: 'birch', count: 2, values: [5, 6] }] });
  });
});

describe('held against the yardstick', () => {
  const spots = [...spotsOf('amber', HEAVY), ...spotsOf('birch', LIGHT), ...spotsOf('cedar', [8, 9, 10])];
  const held = (yardstick: Spot['variety']) => {
    const { against } = cropOf({ spots, yardstick });
    return against && [against.name, ...against.rows.map(({ name, difference: { value } }) => [name, value])];
  };

  // Means 11, 6 and 9 kg a plant: each row is that variety less the yardstick, wherever the alphabet puts it.
  test('each row is the variety less the yardstick', () => {
    expect(held('amber')).toEqual(['amber', ['birch', expect.closeTo(-5, 9)], ['cedar', expect.closeTo(-2, 9)]]);
    expect(held('birch')).toEqual(['birch', ['amber', expect.closeTo(5, 9)], ['cedar', expect.closeTo(3, 9)]]);
    expect(held('cedar')).toEqual(['cedar', ['amber', expect.closeTo(2, 9)], ['birch', expect.closeTo(-3, 9)]]);
  });

  test('its range turns round with it', () => {
    for (const yardstick of ['amber', 'birch', 'cedar'] as const) {
      for (const { difference } of cropOf({ spots, yardstick }).against?.rows ?? []) {
        const { low, high } = difference.interval ?? { low: 0, high: 0 };
        expect(low).toBeLessThan(difference.value ?? Number.NaN);
        expect((low + high) / 2).toBeCloseTo(difference.value ?? Number.NaN, 9);
      }
    }
  });

  test('a yardstick of two spots holds nothing', () => {
    const few = [...spotsOf('amber', [10, 11]), ...spotsOf('birch', LIGHT), ...spotsOf('cedar', [8, 9, 10])];
    expect(cropOf({ spots: few, yardstick: 'amber' }).against).toBeNull();
  });
});

describe('the measure shown', () => {
  /** Six spots, the first so many of them with the fuller record. */
  const measureOf = (full: string, fullSpots: number, thin: string) =>
    cropOf({
      spots: Array.from({ length: 6 }, (_, index): Spot => {
        const pick = index < fullSpots ? full : thin;
        return { variety: index % 2 === 0 ? 'amber' : 'birch', picks: [pick && `${pick}`] };
      }),
    }).measure;

  test.each([
    ['sound_kg', 'mass_kg: 4, condition: whole', 6, ''],
    ['kg', 'mass_kg: 4', 6, ''],
    ['sound_fruits', 'condition: whole', 6, ''],
    ['fruits', 'reason: ripe', 6, ''],
    // Four of six spots are two thirds of them, and enough; three are not.
    ['sound_kg', 'mass_kg: 4, condition: whole', 4, 'mass_kg: 4'],
    ['kg', 'mass_kg: 4, condition: whole', 3, 'mass_kg: 4'],
    ['kg', 'mass_kg: 4', 4, ''],
    ['fruits', 'mass_kg: 4', 3, ''],
    ['sound_fruits', 'mass_kg: 4, condition: whole', 3, 'condition: whole'],
  ] as const)('is %s with "%s" on %i of 6 and "%s" on the others', (measure, full, spots, thin) => {
    expect(measureOf(full, spots, thin)).toBe(measure);
  });

  test('leaves out, by name, the spots it is not known for', () => {
    const spots: Spot[] = spotsOf('amber', [4, 5, 6, 7, 8, 9]).map((spot, index) =>
      index < 2 ? { ...spot, picks: ['condition: whole'] } : spot,
    );
    expect(cropOf({ spots })).toMatchObject({
      measure: 'sound_kg',
      left_out: [{ code: 'not-all-told', spots: ['S1', 'S2'] }],
    });
  });
});

test('repeats that agree to the last digit give no range, and the section says why', () => {
  const crop = cropOf({ spots: [...spotsOf('amber', [4, 4, 4]), ...spotsOf('birch', [4, 4, 4])] });
  expect(crop).toMatchObject({ refusal: 'no-spread', clear: [], comparisons: 0, df: null });
});

test('a crop of one variety in two spots has no section of its own', () => {
  const { crops, lone } = seasonOf({ spots: spotsOf('amber', [4, 5]) });
  expect([crops.length, lone.length]).toEqual([0, 1]);
});
