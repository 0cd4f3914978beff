import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthAtLitres, heightOf, litresAtDepth, type TankShape, tankHolds } from '../../src/agronomy/tank-shape.ts';
import { toSi } from '../../src/units.ts';
import { CIRCLE_BELOW } from '../published/water/tanks.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const SEEDED = { seed: 20250812, numRuns: 300 };
const upright: TankShape = { kind: 'upright', diameter_cm: 100, height_cm: 120 };
const lying: TankShape = { kind: 'lying', diameter_cm: 60, length_cm: 90 };
const box: TankShape = { kind: 'box', length_cm: 120, width_cm: 100, height_cm: 100 };

const cm = fc.double({ min: 5, max: 500, noNaN: true });
const shapes: fc.Arbitrary<TankShape> = fc.oneof(
  fc.record({ kind: fc.constant('upright' as const), diameter_cm: cm, height_cm: cm }),
  fc.record({ kind: fc.constant('lying' as const), diameter_cm: cm, length_cm: cm }),
  fc.record({ kind: fc.constant('box' as const), length_cm: cm, width_cm: cm, height_cm: cm }),
);

/** Litres of a lying drum summed over thin level slices, each as wide as the chord in its middle. */
function sliced({ diameter_cm, length_cm }: { diameter_cm: number; length_cm: number }, depth_cm: number): number {
  const slices = 200_000;
  const [thick, radius] = [depth_cm / slices, diameter_cm / 2];
  let area = 0;
  for (let slice = 0; slice < slices; slice++) {
    const from_middle = radius - (slice + 0.5) * thick;
    area += 2 * Math.sqrt(Math.max(0, radius ** 2 - from_middle ** 2)) * thick;
  }
  return (area * length_cm) / 1000;
}

describe('by hand', () => {
  it('a standing drum 1 m across and 1.2 m high holds 300 π litres, and 2.5 π each centimetre', () => {
    expect(tankHolds(upright)).toBeCloseTo(300 * Math.PI, 9);
    expect(litresAtDepth(upright, 1)).toBeCloseTo(2.5 * Math.PI, 12);
  });
  it('a box of 1.2 by 1 by 1 m holds 1200 litres, 12 each centimetre', () => {
    expect(tankHolds(box)).toBe(1200);
    expect(litresAtDepth(box, 40)).toBe(480);
    expect(depthAtLitres(box, 480)).toBe(40);
  });
  it('a lying drum is full at its width, half full at half of it', () => {
    expect(heightOf(lying)).toBe(60);
    expect(tankHolds(lying)).toBeCloseTo(81 * Math.PI, 9);
    expect(litresAtDepth(lying, 30)).toBeCloseTo(40.5 * Math.PI, 9);
    expect(depthAtLitres(lying, 40.5 * Math.PI)).toBeCloseTo(30, 9);
  });
  it('at a quarter of its width it holds (π/3 − √3/4) r² of π r², near a fifth and no quarter', () => {
    const [radius, length] = [30, 90];
    const litres = ((Math.PI / 3 - Math.sqrt(3) / 4) * radius ** 2 * length) / 1000;
    expect(litresAtDepth(lying, 15)).toBeCloseTo(litres, 9);
    expect(litres / tankHolds(lying)).toBeCloseTo(0.1955, 4);
  });
  it('an empty tank is empty and a full one full', () => {
    for (const shape of [upright, lying, box]) {
      expect(litresAtDepth(shape, 0)).toBe(0);
      expect(depthAtLitres(shape, 0)).toBeCloseTo(0, 9);
      expect(depthAtLitres(shape, tankHolds(shape))).toBeCloseTo(heightOf(shape), 6);
    }
  });
  // The usual steel drum is 22.5 inches across and 33.5 high inside; 57 US gallons to the brim, sold as 55. From memory.
  it('a drum of the usual size holds about 57 US gallons', () => {
    const drum: TankShape = { kind: 'upright', diameter_cm: 22.5 * 2.54, height_cm: 33.5 * 2.54 };
    expect(tankHolds(drum) / toSi('volume', 'gal', 1)).toBeCloseTo(57.7, 1);
  });
});

describe('a lying drum against a table of hydraulics', () => {
  it.each(CIRCLE_BELOW)('depth %f of the width: %s of its square', (depth, area) => {
    const drum: TankShape = { kind: 'lying', diameter_cm: 100, length_cm: 100 };
    // 100 cm across and 100 cm long: a litre is a thousandth of the square of the width.
    expectPrinted(litresAtDepth(drum, 100 * depth) / 1000, area);
  });
});

describe('a lying drum against a sum of slices', () => {
  it.each([0.02, 0.1, 0.25, 0.5, 0.8, 1])('%f of the width', (part) => {
    const depth_cm = lying.diameter_cm * part;
    expect(litresAtDepth(lying, depth_cm) / sliced(lying, depth_cm)).toBeCloseTo(1, 6);
  });
});

describe('whatever the shape', () => {
  it('the depth of the litres of a depth is that depth', () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (shape, part) => {
        const depth_cm = part * heightOf(shape);
        expect(Math.abs(depthAtLitres(shape, litresAtDepth(shape, depth_cm)) - depth_cm)).toBeLessThanOrEqual(1e-9);
      }),
      SEEDED,
    );
  });
  it('and the litres of the depth of some litres are those litres', () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0, max: 1, noNaN: true }), (shape, part) => {
        const litres = part * tankHolds(shape);
        const back = litresAtDepth(shape, depthAtLitres(shape, litres));
        expect(Math.abs(back - litres)).toBeLessThanOrEqual(1e-9 * Math.max(1, tankHolds(shape)));
      }),
      SEEDED,
    );
  });
  it('a full tank is no deeper than it is high, to the last digit', () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        expect(depthAtLitres(shape, tankHolds(shape))).toBeLessThanOrEqual(heightOf(shape));
      }),
      SEEDED,
    );
  });
  it('deeper is more, and a lying drum upside down holds the rest', () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0, max: 0.99, noNaN: true }), (shape, part) => {
        const [height, depth] = [heightOf(shape), part * heightOf(shape)];
        expect(litresAtDepth(shape, depth + 0.005 * height)).toBeGreaterThan(litresAtDepth(shape, depth));
        const rest = litresAtDepth(shape, height - depth);
        expect((litresAtDepth(shape, depth) + rest) / tankHolds(shape)).toBeCloseTo(1, 9);
      }),
      SEEDED,
    );
  });
});

describe('what a tank cannot have is refused', () => {
  it.each([
    ['depth_cm', () => litresAtDepth(lying, 61)],
    ['depth_cm', () => litresAtDepth(box, -1)],
    ['depth_cm', () => litresAtDepth(box, Number.NaN)],
    ['litres', () => depthAtLitres(box, 1201)],
    ['litres', () => depthAtLitres(box, -1)],
    ['diameter_cm', () => tankHolds({ ...lying, diameter_cm: 0 })],
    ['length_cm', () => tankHolds({ ...lying, length_cm: -90 })],
    ['width_cm', () => tankHolds({ ...box, width_cm: Number.POSITIVE_INFINITY })],
    ['height_cm', () => heightOf({ ...upright, height_cm: Number.NaN })],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
