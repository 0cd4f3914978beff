import { expect, test } from 'vitest';
import { aprilRows, weatherOf } from './gate-weather.ts';

test('rain counts a trace as nothing, names missing days, and a morning reading belongs to the day before', () => {
  const rows = '2025-04-01,5,20,9\n2025-04-02,trace,31,8\n2025-04-03,,22,7';
  const evening = weatherOf(rows, '2025-04-03');
  expect(evening?.measures.rain_mm.figure).toMatchObject({
    value: 5,
    n: 2,
    reason: { code: 'days-missing', values: { told: 2, of: 3 } },
  });
  expect(evening?.warmest).toMatchObject({ on: '2025-04-02', figure: { value: 31 } });
  expect(evening?.coldest).toMatchObject({ on: '2025-04-03', figure: { value: 7 } });
  const morning = weatherOf(rows, '2025-04-03', { read: 'morning' });
  expect(morning?.warmest.on).toBe('2025-04-01');
  expect(morning?.coldest.on).toBe('2025-04-03');
  expect(morning?.measures.rain_mm.figure.n).toBe(1);
});

test('hot, cool, wet and soaking days by the house’s figures, their edges among them', () => {
  const cells = ['1,30,12', '0.9,29.9,11.9', '20,35,13', '19.9,31,5', 'trace,10,2'];
  const measures = weatherOf(aprilRows(2025, cells), '2025-04-05')?.measures;
  expect(measures?.hot_days.figure.value).toBe(3);
  expect(measures?.cool_nights.figure.value).toBe(3);
  expect(measures?.wet_days.figure.value).toBe(3);
  expect(measures?.soaking_days.figure.value).toBe(1);
  expect(measures?.wet_days.figure.reason).toBeNull();
});

test('a garden’s own figures take the place of the house’s, whatever their unit', () => {
  const settings =
    'thresholds: {hot_day_f: 90, cool_night_c: 5, wet_day_in: 0.5, soaking_day_mm: 30, dry_spell_days: 2}\n';
  const cells = ['12.7,32.2,4.9', '12.6,32.3,5', '0,20,6', '0,20,6'];
  const found = weatherOf(aprilRows(2025, cells), '2025-04-04', { settings });
  expect(found?.measures.hot_days.figure.value).toBe(1); // 90 °F is 32.22 °C
  expect(found?.measures.cool_nights.figure.value).toBe(1);
  expect(found?.measures.wet_days.figure.value).toBe(1); // half an inch is 12.7 mm
  expect(found?.dry_spells).toEqual([{ first: '2025-04-02', last: '2025-04-04', days: 3, open: false }]);
});

test('an unread day is neither wet nor dry, and breaks a spell that may have been longer', () => {
  const cells = ['0,,', '0,,', '0,,', ',,', '0,,', '0,,', '5,,', '0,,'];
  const found = weatherOf(aprilRows(2025, cells), '2025-04-08', { settings: 'thresholds: {dry_spell_days: 2}\n' });
  expect(found?.measures.dry_run_days.figure).toMatchObject({ value: 3, n: 7, reason: { code: 'days-missing' } });
  expect(found?.dry_spells.map(({ days, open }) => [days, open])).toEqual([
    [3, true],
    [2, true],
  ]);
  // One wet day, and the unread one stands alone: no wet run can have been longer.
  expect(found?.measures.wet_run_days.figure).toMatchObject({ value: 1, reason: null });
});

test('without a gauge the word tells wet from dry, and makes no figure of rain', () => {
  const cells = ['none', 'some', 'soaking', 'none', 'none'];
  const found = weatherOf(aprilRows(2025, cells), '2025-04-05', { header: 'date,rain' });
  expect(found?.measures.wet_days.figure.value).toBe(2);
  expect(found?.measures.soaking_days.figure.value).toBe(1);
  expect(found?.measures.dry_run_days.figure.value).toBe(2);
  expect(found?.measures.rain_mm.figure).toMatchObject({ value: null, reason: { code: 'no-gauge' } });
  expect(found?.measures.mean_c.figure).toMatchObject({ value: null, reason: { code: 'no-thermometer' } });
  expect(found?.has_readings).toBe(false);
});

test('heat by every method, with its own base and cap; the one of the settings is the one in print', () => {
  const settings = 'heat_units: {method: clipped, base_c: 15, cap_c: 32}\n';
  const found = weatherOf(aprilRows(2025, ['0,24,8', '0,36,18']), '2025-04-02', { settings });
  // The computed grid, 24/8 and 36/18 °C above 15 with a cap of 32, the second without grid row for 15.
  expect(found?.heat.average.figure.value).toBeCloseTo(1 + 12, 12);
  expect(found?.heat.clipped.figure.value).toBeCloseTo(4.5 + 10, 12);
  expect(found?.heat.sine.figure.value).toBeCloseTo(3.0664 + 11.1805, 3);
  expect(found?.heat.triangle.figure.value).toBeCloseTo(2.5312 + 11.5556, 3);
  expect(found?.measures.heat_c_days.figure).toBe(found?.heat.clipped.figure);
});

test('a mean of temperatures takes days with both readings, and says when some lack one', () => {
  const found = weatherOf(aprilRows(2025, ['0,20,10', '0,30,', '0,26,12']), '2025-04-03');
  expect(found?.measures.mean_c.figure).toMatchObject({ value: 17, n: 2, reason: { code: 'mean-of-some' } });
});

test('gaps: what was not read, in stretches', () => {
  const cells = ['0,20,10', ',20,10', ',20,10', '0,20,', '0,20,10'];
  const found = weatherOf(`${aprilRows(2025, cells)}\n2025-04-08,0,20,10`, '2025-04-08');
  expect(found?.gaps).toEqual([
    { first: '2025-04-02', last: '2025-04-03', days: 2, lacks: 'rain' },
    { first: '2025-04-04', last: '2025-04-04', days: 1, lacks: 'temperature' },
    { first: '2025-04-06', last: '2025-04-07', days: 2, lacks: 'all' },
  ]);
});

test('a station without a reading in the season has no weather, a garden without a station none either', () => {
  expect(weatherOf(aprilRows(2024, ['0,20,10']), '2025-06-01')).toBeNull();
});
