import { describe, expect, test } from 'vitest';
import { dayOfYear } from '../../../src/agronomy/day-of-year.ts';
import { extraterrestrialRadiation, radiationAsWater } from '../../../src/agronomy/extraterrestrial-radiation.ts';
import { hargreaves } from '../../../src/agronomy/hargreaves.ts';
import { saturationPressure } from '../../../src/agronomy/vapour-pressure.ts';
import { windAtTwoMetres } from '../../../src/agronomy/wind-height.ts';
import { addDays, type Day } from '../../../src/day.ts';
import { type ThirstRecord, thirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import { HARGREAVES } from '../../published/fao-56/radiation.ts';
import { LYON_WITHOUT, UCCLE_DAY } from '../../published/fao-56/reference-evapotranspiration.ts';
import { dayRows, LATITUDE, type Parts, told, wateredGarden } from './watered-garden.ts';

const WHOLE = 'date,rain_mm,tmax_c,tmin_c,rh_max_pct,rh_min_pct,wind_m_s,sun_h';
const LYON = `place: {latitude: ${LYON_WITHOUT.latitude_deg}, longitude: 0, elevation_m: ${LYON_WITHOUT.elevation_m}}\n`;
const UCCLE = `place: {latitude: ${UCCLE_DAY.latitude_deg}, longitude: 0, elevation_m: ${UCCLE_DAY.elevation_m}}\n`;

const recordOf = (parts: Parts): ThirstRecord | null => thirstRecord(wateredGarden(parts));
const on = (record: ThirstRecord | null, day: string) => told(record).on(day as Day);

/** Eq. 52 of FAO-56 at the latitude of the test garden, or south of the line. */
const rough = (day: string, tmax: number, tmin: number, latitude_deg = LATITUDE): number =>
  hargreaves({ tmax, tmin }, radiationAsWater(extraterrestrialRadiation(latitude_deg, dayOfYear(day as Day))));

describe('days as far as they were read', () => {
  const { tmax, tmin } = HARGREAVES.day;

  // FAO-56, example 20: the place of example 15 on day 196, by Eq. 52.
  test('temperatures alone give the 5.0 mm of FAO’s example 20, and are called estimated', () => {
    const found = on(recordOf({ settings: LYON, weather: `2025-07-15,0,${tmax},${tmin}\n` }), '2025-07-15');
    expect(found?.eto_mm.toFixed(1)).toBe(HARGREAVES.printed);
    expect(found?.eto_mm).toBeCloseTo(HARGREAVES.exact, 5);
    expect(found?.how).toBe('estimated');
  });
  // The same example with the wind besides: Eq. 6, damp by the lowest temperature, sun by the swing.
  test.each(LYON_WITHOUT.eto_at_wind)('with a wind of $wind_m_s m/s beside them Eq. 6 is used', ({ wind_m_s, eto }) => {
    const { tmax_c, tmin_c } = LYON_WITHOUT.air;
    const weather = `2025-07-15,0,${tmax_c},${tmin_c},,,${wind_m_s},\n`;
    const found = on(recordOf({ settings: LYON, heading: WHOLE, weather }), '2025-07-15');
    expect(found?.eto_mm).toBeCloseTo(eto.exact, 8);
    expect(found?.how).toBe('estimated');
  });
  // FAO-56, example 18: all that Eq. 6 asks was read, the wind at 10 m.
  test('a day read whole is measured, with the wind gauge as high as it stands', () => {
    const { air, humidity, wind_m_s, sun_h, eto } = UCCLE_DAY;
    const cells = [air.tmax_c, air.tmin_c, humidity.rh_max_pct, humidity.rh_min_pct, wind_m_s, sun_h].join();
    const parts = { settings: UCCLE, heading: WHOLE, weather: `2025-07-06,0,${cells}\n` };
    const found = on(recordOf({ ...parts, wind_m: UCCLE_DAY.wind_height_m }), '2025-07-06');
    expect(found?.eto_mm).toBeCloseTo(eto.exact, 8);
    expect(found?.how).toBe('measured');
    const lower = on(recordOf(parts), '2025-07-06');
    expect(told(lower).eto_mm).toBeGreaterThan(eto.exact);
  });
  test('south of the equator July is the dim month', () => {
    const settings = 'place: {latitude: -45, longitude: 0}\n';
    const found = on(recordOf({ settings, weather: '2025-07-15,0,14,4\n' }), '2025-07-15');
    expect(found?.eto_mm).toBeCloseTo(rough('2025-07-15', 14, 4, -45), 12);
    expect(told(found).eto_mm).toBeLessThan(rough('2025-07-15', 14, 4, 45) / 2);
  });
  test('morning readings whose lowest comes out above the highest tell nothing', () => {
    // Filed a day back, the 8 °C of the second row are the highest of the first of July, whose lowest was 12.
    const weather = '2025-07-01,0,25,12\n2025-07-02,0,8,4\n2025-07-03,0,22,10\n';
    const record = recordOf({ weather, read: 'morning' });
    expect(told(record).days.map(({ date }) => date)).toEqual(['2025-07-02']);
    expect(on(record, '2025-07-01')).toBeNull();
  });
  test('without a station, a place or a thermometer there is no record', () => {
    const weather = '2025-07-01,0,25,12\n';
    expect(recordOf({})).toBeNull();
    expect(recordOf({ settings: '', weather })).toBeNull();
    expect(recordOf({ weather: '2025-07-01,4,,\n2025-07-02,4,25,\n' })).toBeNull();
  });
});

describe('rough days set right by whole ones', () => {
  const tmax = (index: number): number => 20 + (index % 9);
  const tmin = (index: number): number => 8 + (index % 4);
  /** So many days read whole from the first of June, and two with their temperatures alone in September. */
  function mixed(whole: number, late = '25,10') {
    const cells = (index: number): string =>
      `0,${tmax(index)},${tmin(index)},95,${40 + (index % 7)},${2 + (index % 3)},${4 + (index % 9)}`;
    const weather = `${dayRows('2025-06-01', whole, cells)}2025-09-10,0,${late},,,,\n2025-09-11,0,15,13,,,,\n`;
    return told(recordOf({ heading: WHOLE, weather }));
  }
  /** Least squares, written out: the slope is Σ(x − x̄)(y − ȳ) / Σ(x − x̄)². */
  function lineOf(record: ThirstRecord, whole: number) {
    const x = Array.from({ length: whole }, (_, index) =>
      rough(addDays('2025-06-01' as Day, index), tmax(index), tmin(index)),
    );
    const y = record.days.slice(0, whole).map(({ eto_mm }) => eto_mm);
    const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
    const [mx, my] = [mean(x), mean(y)];
    const slope =
      mean(x.map((one, index) => (one - mx) * ((y[index] ?? 0) - my))) / mean(x.map((one) => (one - mx) ** 2));
    return { a: my - slope * mx, b: slope };
  }

  test('from sixty days on, by their least-squares line', () => {
    const record = mixed(60);
    const { a, b } = lineOf(record, 60);
    expect(record.adjustment?.n).toBe(60);
    expect(record.adjustment?.a).toBeCloseTo(a, 10);
    expect(record.adjustment?.b).toBeCloseTo(b, 10);
    expect(on(record, '2025-09-10')?.eto_mm).toBeCloseTo(a + b * rough('2025-09-10', 25, 10), 10);
    expect(Math.abs(a + b * rough('2025-09-10', 25, 10) - rough('2025-09-10', 25, 10))).toBeGreaterThan(0.1);
    expect(on(record, '2025-09-10')?.how).toBe('estimated');
    expect(record.days.filter(({ how }) => how === 'measured')).toHaveLength(60);
  });
  test('fifty-nine leave them as they are', () => {
    const record = mixed(59);
    expect(record.adjustment).toBeNull();
    expect(on(record, '2025-09-10')?.eto_mm).toBeCloseTo(rough('2025-09-10', 25, 10), 12);
  });
  test('a day is never set right to less than nothing', () => {
    // With an honest line of a below zero a day without any swing would come out negative.
    const cells = (index: number): string =>
      `0,${18 + 0.2 * index},10,${100 - index},${96 - 1.5 * index},2,${0.2 * index}`;
    const weather = `${dayRows('2025-06-01', 60, cells)}2025-09-10,0,10,10,,,,\n`;
    const record = told(recordOf({ heading: WHOLE, weather }));
    expect(told(record.adjustment).a).toBeLessThan(0);
    expect(on(record, '2025-09-10')?.eto_mm).toBe(0);
  });
  test('a day read in part keeps what Eq. 6 makes of it', () => {
    const cells = (index: number): string =>
      `0,${tmax(index)},${tmin(index)},95,${40 + (index % 7)},${2 + (index % 3)},${4 + (index % 9)}`;
    const part = '2025-09-10,0,25,10,,,3,\n';
    const whole = `${dayRows('2025-06-01', 60, cells)}${part}`;
    const [beside, alone] = [whole, part].map((weather) => told(recordOf({ heading: WHOLE, weather })));
    expect(beside?.adjustment).not.toBeNull();
    expect(told(beside).on('2025-09-10' as Day)).toEqual(told(alone).on('2025-09-10' as Day));
    expect(told(beside).on('2025-09-10' as Day)?.how).toBe('estimated');
  });
  test('and is not counted among the whole ones', () => {
    const cells = (index: number): string =>
      `0,${tmax(index)},${tmin(index)},95,${40 + (index % 7)},${2 + (index % 3)},${index === 59 ? '' : 4 + (index % 9)}`;
    const record = told(
      recordOf({ heading: WHOLE, weather: `${dayRows('2025-06-01', 60, cells)}2025-09-10,0,25,10,,,,\n` }),
    );
    expect(record.adjustment).toBeNull();
    expect(on(record, '2025-07-30')?.how).toBe('estimated');
  });
});

describe('gaps', () => {
  /** No leap year among them, so that a date keeps its place in the year. */
  const TEN = [2013, 2014, 2015, 2017, 2018, 2019, 2021, 2022, 2023, 2025];
  const julyOf = (years: readonly number[], date = '07-10'): string =>
    years.map((year, index) => `${year}-${date},0,${20 + index},10\n`).join('');
  const usual = TEN.reduce((sum, year, index) => sum + rough(`${year}-07-10`, 20 + index, 10), 0) / TEN.length;

  test('are filled with the mean of the days within a week of their date, in all years', () => {
    const record = recordOf({ weather: julyOf(TEN) });
    for (const day of ['2025-07-03', '2025-07-11', '2025-07-17', '1999-07-09']) {
      expect(on(record, day)?.eto_mm).toBeCloseTo(usual, 10);
      expect(on(record, day)?.how).toBe('filled');
    }
    expect(on(record, '2025-07-02')).toBeNull();
    expect(on(record, '2025-07-18')).toBeNull();
  });
  test('stay gaps with fewer than ten such days, and a day of its own is its own', () => {
    expect(on(recordOf({ weather: julyOf(TEN.slice(1)) }), '2025-07-11')).toBeNull();
    expect(on(recordOf({ weather: julyOf(TEN) }), '2025-07-10')).toMatchObject({ how: 'estimated' });
  });
  test('the days around the new year are neighbours', () => {
    const weather = julyOf(TEN, '12-29');
    const record = recordOf({ weather, settings: 'place: {latitude: -45, longitude: 0}\n' });
    expect(on(record, '2026-01-03')?.how).toBe('filled');
    expect(on(record, '2026-01-06')).toBeNull();
  });
  test('are not among the days of the record', () => {
    const record = told(recordOf({ weather: julyOf(TEN) }));
    record.on('2025-07-11' as Day);
    expect(record.days.map(({ date }) => date)).toEqual(TEN.map((year) => `${year}-07-10`));
  });
});

describe('climate', () => {
  const span = (record: ThirstRecord | null, first: string, last: string) =>
    told(record).climate(first as Day, last as Day);

  test('is the mean of what was read in these months, of all years, the wind moved to two metres', () => {
    const weather = [
      '2024-06-10,0,25,12,90,40,4,8',
      '2025-06-30,0,25,12,90,50,2,8',
      '2025-07-15,0,25,12,90,60,,8',
      '2025-08-15,0,25,12,90,20,9,8',
      '2025-05-31,0,25,12,90,20,9,8',
    ];
    const record = recordOf({ heading: WHOLE, weather: `${weather.join('\n')}\n`, wind_m: 10 });
    const found = span(record, '2025-06-20', '2025-07-01');
    expect(found.wind_m_s).toBeCloseTo((windAtTwoMetres(4, 10) + windAtTwoMetres(2, 10)) / 2, 12);
    expect(found.rh_min_pct).toBeCloseTo(50, 12);
  });
  test('for want of readings is a wind of 2 m/s, and the night’s lowest taken as the dew point', () => {
    const found = span(recordOf({ weather: '2025-06-10,0,26,12\n2025-06-11,0,30,14\n' }), '2025-06-01', '2025-06-30');
    expect(found.wind_m_s).toBe(2);
    const told_pct = [
      [12, 26],
      [14, 30],
    ].map(([low = 0, high = 0]) => (100 * saturationPressure(low)) / saturationPressure(high));
    expect(found.rh_min_pct).toBeCloseTo(((told_pct[0] ?? 0) + (told_pct[1] ?? 0)) / 2, 10);
  });
  test('runs over the new year, and takes the whole record for months nobody read', () => {
    const rows = (month: string, wind: number): string => `2025-${month}-10,0,25,12,90,40,${wind},8\n`;
    const weather = rows('01', 2) + rows('06', 6) + rows('12', 4);
    const record = recordOf({ heading: WHOLE, weather });
    expect(span(record, '2024-11-01', '2025-02-28').wind_m_s).toBeCloseTo(3, 12);
    expect(span(record, '2025-03-01', '2025-04-30').wind_m_s).toBeCloseTo(4, 12);
  });
  test('air is never damper than full', () => {
    const found = span(recordOf({ weather: '2025-06-10,0,12,12\n' }), '2025-06-01', '2025-06-30');
    expect(found.rh_min_pct).toBe(100);
  });
});
