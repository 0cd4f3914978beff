import fc from 'fast-check';
import { expect, it } from 'vitest';
import { daylightHours, extraterrestrialRadiation } from '../../src/agronomy/extraterrestrial-radiation.ts';
import { netRadiation } from '../../src/agronomy/net-radiation.ts';
import { type DayReadings, referenceDay } from '../../src/agronomy/reference-day.ts';
import { clearSky, solarBySunshine } from '../../src/agronomy/solar-radiation.ts';
import {
  type AirExtremes,
  meanSaturation,
  vapourAtDew,
  vapourByHighestHumidity,
  vapourByHumidity,
} from '../../src/agronomy/vapour-pressure.ts';

const SEEDED = { seed: 20250812, numRuns: 1000 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = (min: number, max: number) => fc.option(between(min, max), { freq: 1 });

const site = fc.record({
  latitude_deg: between(-65, 65),
  elevation_m: between(-400, 4000),
  wind_height_m: fc.constantFrom(1, 2, 3, 10),
  coast: fc.boolean(),
  dry_air: fc.boolean(),
});
const day_of_year = fc.integer({ min: 1, max: 366 });

it('is finite and not below zero, whatever was read', () => {
  const readings = fc
    .record({
      tmin_c: between(-30, 35),
      swing: between(0, 30),
      dew_c: maybe(-40, 36),
      humidities: fc.tuple(between(0, 100), between(0, 100)),
      highest: fc.boolean(),
      lowest: fc.boolean(),
      wind_m_s: maybe(0, 25),
      sun_h: maybe(0, 24),
      solar_mj_m2: maybe(0, 40),
    })
    .map(({ swing, humidities, highest, lowest, tmin_c, ...read }): DayReadings => {
      const [low, high] = [Math.min(...humidities), Math.max(...humidities)];
      const damp = { rh_max_pct: highest ? high : null, rh_min_pct: lowest ? low : null };
      return { tmin_c, tmax_c: tmin_c + swing, ...damp, ...read };
    });
  const met = { zero: 0, more: 0, hargreaves: 0 };
  fc.assert(
    fc.property(readings, site, fc.integer({ min: -90, max: 90 }), day_of_year, (read, place, latitude_deg, number) => {
      const day = referenceDay(read, { ...place, latitude_deg }, number);
      const eto_mm = day?.eto_mm ?? Number.NaN;
      expect(Number.isFinite(eto_mm)).toBe(true);
      expect(eto_mm).toBeGreaterThanOrEqual(0);
      met[eto_mm === 0 ? 'zero' : 'more'] += 1;
      met.hargreaves += day?.method === 'hargreaves' ? 1 : 0;
    }),
    SEEDED,
  );
  expect(Math.min(met.zero, met.more, met.hargreaves)).toBeGreaterThan(5);
});

/** Damp as it may be read so that it tells how much water is in the air, and what the air holds by it, kPa. */
type Damp = Pick<DayReadings, 'dew_c' | 'rh_max_pct' | 'rh_min_pct'>;
const damp = fc.oneof(
  between(-20, 3).map(
    (below) =>
      (tmin_c: number): Damp => ({ dew_c: tmin_c + below, rh_max_pct: null, rh_min_pct: null }),
  ),
  fc.tuple(between(5, 100), between(5, 100)).map(([one, other]) => (): Damp => {
    return { dew_c: null, rh_max_pct: Math.max(one, other), rh_min_pct: Math.min(one, other) };
  }),
  between(20, 100).map((rh_max_pct) => (): Damp => ({ dew_c: null, rh_max_pct, rh_min_pct: null })),
);

function held({ dew_c, rh_max_pct, rh_min_pct }: Damp, air: AirExtremes): number {
  if (dew_c !== null) return Math.min(vapourAtDew(dew_c), meanSaturation(air));
  if (rh_min_pct === null) return vapourByHighestHumidity(air.tmin_c, rh_max_pct ?? Number.NaN);
  return vapourByHumidity(air, { rh_max_pct: rh_max_pct ?? Number.NaN, rh_min_pct });
}

// Claimed where damp is read as dew point, both humidities or the highest, and sun and wind are read. By the swing of temperature
// a hotter afternoon is a clearer sky as well, which loses more heat; the lowest humidity is the next test's.
it('a hotter afternoon alone never makes it less where 2 MJ/m² and more are kept and damp, sun and wind were read', () => {
  let tried = 0;
  fc.assert(
    fc.property(
      site,
      day_of_year,
      between(-5, 28),
      between(0, 22),
      between(0, 12),
      damp,
      between(0, 15),
      between(0, 1),
      (place, number, tmin_c, swing, hotter, dampOf, wind_m_s, share) => {
        const read = dampOf(tmin_c);
        const sun_h = share * daylightHours(place.latitude_deg, number);
        const warmth = [swing, swing + hotter].map((above) => ({ tmin_c, tmax_c: tmin_c + above }));
        const ra = extraterrestrialRadiation(place.latitude_deg, number);
        const sun = {
          solar_mj_m2: solarBySunshine(sun_h, daylightHours(place.latitude_deg, number), ra),
          clear_mj_m2: clearSky(ra, place.elevation_m),
        };
        const kept = warmth.map((air) => netRadiation(air, held(read, air), sun));
        fc.pre(Math.min(...kept) >= 2);
        tried += 1;
        const [cooler = Number.NaN, hot = Number.NaN] = warmth.map(
          (air) => referenceDay({ ...air, ...read, wind_m_s, sun_h, solar_mj_m2: null }, place, number)?.eto_mm,
        );
        expect(hot).toBeGreaterThanOrEqual(cooler - 1e-9);
      },
    ),
    SEEDED,
  );
  expect(tried).toBeGreaterThan(SEEDED.numRuns / 2);
});

it('but at a lowest humidity held as it is, a hotter afternoon is a damper one and may dry less', () => {
  const place = { latitude_deg: 45, elevation_m: 0, wind_height_m: 2, coast: false, dry_air: false };
  const rest = { tmin_c: 15, dew_c: null, rh_max_pct: null, rh_min_pct: 70, wind_m_s: 5, sun_h: 8, solar_mj_m2: null };
  const [cooler, hot] = [16, 19].map((tmax_c) => referenceDay({ ...rest, tmax_c }, place, 180)?.eto_mm ?? Number.NaN);
  expect(hot).toBeLessThan(cooler ?? Number.NaN);
});
