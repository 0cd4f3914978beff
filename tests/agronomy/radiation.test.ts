import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOfYear } from '../../src/agronomy/day-of-year.ts';
import {
  daylightHours,
  extraterrestrialRadiation,
  radiationAsWater,
} from '../../src/agronomy/extraterrestrial-radiation.ts';
import { hargreaves } from '../../src/agronomy/hargreaves.ts';
import { type Day, dayOf } from '../../src/day.ts';
import { HARGREAVES, LATITUDES, MORE_PRINTED, RA_AS_WATER, RADIATION } from '../published/fao-56/radiation.ts';
import { expectPrinted } from '../statistics/agreement.ts';

interface Latitude {
  readonly degrees: number;
  readonly minutes: number;
  readonly south: boolean;
}

const decimal = ({ degrees, minutes, south }: Latitude): number => (south ? -1 : 1) * (degrees + minutes / 60);
const expectExact = (actual: number, exact: number): void =>
  expect(Math.abs(actual / exact - 1), `${actual} against ${exact}`).toBeLessThanOrEqual(1e-6);

describe('FAO-56', () => {
  it.each(RADIATION)('example $example', (one) => {
    expect(dayOfYear(one.date as Day)).toBe(one.day_of_year);
    const ra = extraterrestrialRadiation(decimal(one), one.day_of_year);
    expectPrinted(ra, one.ra.printed);
    expectExact(ra, one.ra.exact);
    if (one.daylight === null) return;
    const hours = daylightHours(decimal(one), one.day_of_year);
    expectPrinted(hours, one.daylight.printed);
    expectExact(hours, one.daylight.exact);
  });
  it.each(MORE_PRINTED)('at $latitude_deg on day $day_of_year', ({ latitude_deg, day_of_year, ra, daylight }) => {
    expectPrinted(extraterrestrialRadiation(latitude_deg, day_of_year), ra);
    expectPrinted(daylightHours(latitude_deg, day_of_year), daylight);
  });
  it('example 7, latitudes in degrees and minutes', () => {
    for (const one of LATITUDES) {
      expectPrinted(decimal(one), one.decimal);
      expectPrinted((Math.PI / 180) * decimal(one), one.radians);
    }
  });
  it('example 8, as water', () => {
    expectPrinted(radiationAsWater(extraterrestrialRadiation(-20, 246)), RA_AS_WATER);
  });
  it('example 20, by temperature alone', () => {
    const ra_mm = radiationAsWater(extraterrestrialRadiation(45 + 43 / 60, 196));
    expectPrinted(hargreaves(HARGREAVES.day, ra_mm), HARGREAVES.printed);
    expectExact(hargreaves(HARGREAVES.day, ra_mm), HARGREAVES.exact);
  });
});

describe('the day of the year', () => {
  it('counts the leap day', () => {
    const days: [number, number, number, number][] = [
      [2023, 1, 1, 1],
      [2023, 12, 31, 365],
      [2024, 2, 29, 60],
      [2024, 3, 1, 61],
      [2024, 12, 31, 366],
      [2100, 12, 31, 365],
    ];
    for (const [year, month, date, number] of days) expect(dayOfYear(dayOf(year, month, date))).toBe(number);
  });
});

describe('the sun, anywhere on any day', () => {
  const place = fc.oneof(
    fc.integer({ min: -900, max: 900 }).map((tenths) => tenths / 10),
    fc.constantFrom(-90, -66.56, 0, 66.56, 90),
  );
  const day = fc.integer({ min: 1, max: 366 });
  const SEEDED = { seed: 20250812, numRuns: 500 };

  it('gives energy and hours that are numbers, not below nothing', () => {
    const met = { night: 0, day: 0 };
    fc.assert(
      fc.property(place, day, (latitude, number) => {
        const [ra, hours] = [extraterrestrialRadiation(latitude, number), daylightHours(latitude, number)];
        expect(ra).toBeGreaterThanOrEqual(0);
        // At the pole in midsummer: 1440 · 0.082 · 1.033 · sin 0.409 and a little.
        expect(ra).toBeLessThan(49);
        expect(hours).toBeGreaterThanOrEqual(0);
        expect(hours).toBeLessThanOrEqual(24);
        if (hours === 0) expect(ra).toBe(0);
        if (hours > 0.01) expect(ra).toBeGreaterThan(0);
        met.night += hours === 0 ? 1 : 0;
        met.day += hours === 24 ? 1 : 0;
      }),
      SEEDED,
    );
    expect(Math.min(met.night, met.day)).toBeGreaterThan(10);
  });
  it('is up north as long as it is down south', () => {
    fc.assert(
      fc.property(place, day, (latitude, number) => {
        expect(daylightHours(latitude, number) + daylightHours(-latitude, number)).toBeCloseTo(24, 9);
      }),
      SEEDED,
    );
  });
  it('gives what its height above the horizon does, summed over the hours', () => {
    const steps = 2000;
    fc.assert(
      fc.property(place, day, (latitude, number) => {
        const phi = (latitude / 180) * Math.PI;
        const tilt = 0.409 * Math.sin((2 * Math.PI * number) / 365 - 1.39);
        let sum = 0;
        for (let step = 0; step < steps; step++) {
          const hour = -Math.PI + (2 * Math.PI * (step + 0.5)) / steps;
          sum += Math.max(Math.sin(phi) * Math.sin(tilt) + Math.cos(phi) * Math.cos(tilt) * Math.cos(hour), 0);
        }
        const whole = 1440 * 0.082 * (1 + 0.033 * Math.cos((2 * Math.PI * number) / 365));
        // Midpoints miss at most an 8th of the step squared at each of the two bends, where the slope is at most 1.
        const error = whole * 2 * ((2 * Math.PI) / steps) ** 2;
        expect(Math.abs(extraterrestrialRadiation(latitude, number) - (whole * sum) / steps)).toBeLessThan(error);
      }),
      { ...SEEDED, numRuns: 200 },
    );
  });
  it('knows winter and summer in both halves of the world', () => {
    for (const latitude of [35, 50]) {
      const [june, december] = [172, 355];
      expect(extraterrestrialRadiation(latitude, june)).toBeGreaterThan(extraterrestrialRadiation(latitude, december));
      expect(extraterrestrialRadiation(-latitude, june)).toBeLessThan(extraterrestrialRadiation(-latitude, december));
      expect(daylightHours(-latitude, june)).toBeLessThan(12);
    }
  });
  it('beyond the polar circle is held at night and at day', () => {
    expect([extraterrestrialRadiation(80, 355), daylightHours(80, 355)]).toEqual([0, 0]);
    expect(daylightHours(80, 172)).toBe(24);
    // The sun goes round at one height, the sine of the declination: 1440 · 0.082 · dr · sin δ.
    const tilt = 0.409 * Math.sin((2 * Math.PI * 172) / 365 - 1.39);
    const nearness = 1 + 0.033 * Math.cos((2 * Math.PI * 172) / 365);
    expect(extraterrestrialRadiation(90, 172)).toBeCloseTo(1440 * 0.082 * nearness * Math.sin(tilt), 6);
    expect(extraterrestrialRadiation(-90, 172)).toBe(0);
  });
});

describe('hargreaves', () => {
  it('by hand: 0.0023 · (22.2 + 17.8) · √9 · 10 is 2.76', () => {
    expect(hargreaves({ tmax: 26.7, tmin: 17.7 }, 10)).toBeCloseTo(2.76, 12);
  });
  it('is nothing without a swing, without sun or in deep frost', () => {
    expect(hargreaves({ tmax: 20, tmin: 20 }, 15)).toBe(0);
    expect(hargreaves({ tmax: 30, tmin: 20 }, 0)).toBe(0);
    expect(hargreaves({ tmax: -20, tmin: -30 }, 3)).toBe(0);
  });
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['latitude_deg', () => extraterrestrialRadiation(90.1, 100)],
    ['latitude_deg', () => daylightHours(Number.NaN, 100)],
    ['day_of_year', () => extraterrestrialRadiation(10, 0)],
    ['day_of_year', () => daylightHours(10, 367)],
    ['day_of_year', () => daylightHours(10, 1.5)],
    ['tmin', () => hargreaves({ tmax: 10, tmin: 11 }, 5)],
    ['tmax', () => hargreaves({ tmax: Number.NaN, tmin: 1 }, 5)],
    ['ra_mm', () => hargreaves({ tmax: 20, tmin: 10 }, -1)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
