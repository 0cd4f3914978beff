import { expect, test } from 'vitest';
import { addDays, type Day } from '../../../src/day.ts';
import { type MonthRecord, monthRecords } from '../../../src/ledger/water/month-record.ts';
import { HARGREAVES } from '../../published/fao-56/radiation.ts';
import { planting, smallGarden } from '../small-garden.ts';

interface Year {
  readonly year: number;
  /** Days read of July, the first first. */
  readonly days?: number;
  readonly rain_mm?: number;
  readonly tmax?: number;
}

const LATITUDE = 45 + 43 / 60;
const { tmax, tmin } = HARGREAVES.day;

function julyOf(years: readonly Year[], place: string | null = `${LATITUDE}`, read = 'evening'): MonthRecord {
  const rows = years.flatMap(({ year, days = 31, rain_mm = 2, tmax: high = tmax }) =>
    Array.from(
      { length: days },
      (_, index) => `${addDays(`${year}-07-01` as Day, index)},${rain_mm},${high},${tmin}\n`,
    ),
  );
  const garden = smallGarden({
    plantings: planting('P1', 'S1'),
    weather: `date,rain_mm,tmax_c,tmin_c\n${rows.join('')}`,
    read,
    settings: place === null ? '' : `place: {latitude: ${place}, longitude: 0, elevation_m: 200}\n`,
  });
  const july = monthRecords(garden)?.[6];
  if (!july) throw new Error('there is no July');
  return july;
}

/** No leap year, so that every July has the same sun. */
const FIVE = [2018, 2019, 2021, 2022, 2023].map((year) => ({ year }));

// FAO-56, Example 20: 45°43' N in July, 26.6 and 14.8 °C, 5.0 mm a day by Eq. 52. The paper takes the sun of the middle of the month.
test('a July of the days of FAO’s Example 20 has the thirst that FAO prints', () => {
  const { eto_mm_per_day, eto_years } = julyOf(FIVE);
  expect(eto_mm_per_day?.toFixed(1)).toBe(HARGREAVES.printed);
  expect(eto_years).toBe(5);
});

test('the thirst is the mean of the years, the rain that of the middle one', () => {
  // Range of 11.8 °C; with none at all the day takes nothing: (4 · ETo + 0) / 5.
  const whole = julyOf(FIVE).eto_mm_per_day ?? 0;
  const years = FIVE.map((one, index) => ({
    ...one,
    rain_mm: [9, 1, 2, 0, 8][index] ?? 0,
    tmax: index === 0 ? tmin : tmax,
  }));
  const { eto_mm_per_day, rain_mm_per_day } = julyOf(years);
  expect(eto_mm_per_day).toBeCloseTo((4 * whole) / 5, 10);
  expect(rain_mm_per_day).toBe(2);
});

test('it takes five years, each of twenty read days', () => {
  expect(julyOf(FIVE.slice(1))).toMatchObject({ eto_mm_per_day: null, rain_mm_per_day: null, eto_years: 4 });
  expect(julyOf(FIVE.map((one) => ({ ...one, days: 20 })))).toMatchObject({ eto_years: 5, rain_years: 5 });
  expect(julyOf(FIVE.map((one, index) => ({ ...one, days: index === 0 ? 19 : 20 })))).toMatchObject({
    eto_years: 4,
    eto_mm_per_day: null,
  });
});

test('without a place the sun is not known, but the rain is', () =>
  expect(julyOf(FIVE, null)).toMatchObject({ eto_mm_per_day: null, eto_years: 0, rain_mm_per_day: 2 }));

test('south of the equator July is the dim month', () => {
  const [north, south] = [julyOf(FIVE), julyOf(FIVE, `${-LATITUDE}`)].map(({ eto_mm_per_day }) => eto_mm_per_day ?? 0);
  expect(south).toBeGreaterThan(0);
  expect(south).toBeLessThan((north ?? 0) / 2);
});

test('beyond the polar circle a month without sun has no thirst, and no fault', () => {
  const garden = smallGarden({
    plantings: planting('P1', 'S1'),
    weather: `date,rain_mm,tmax_c,tmin_c\n${[2019, 2020, 2021, 2022, 2023].flatMap((year) => Array.from({ length: 31 }, (_, index) => `${addDays(`${year}-12-01` as Day, index)},0,-5,-15\n`)).join('')}`,
    settings: 'place: {latitude: 75, longitude: 0, elevation_m: 5}\n',
  });
  expect(monthRecords(garden)?.[11]?.eto_mm_per_day).toBeCloseTo(0, 10);
  expect(monthRecords(garden)?.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
});

test('a garden without a station has no record', () =>
  expect(monthRecords(smallGarden({ plantings: planting('P1', 'S1') }))).toBeNull());
