import { expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import type { Station } from '../../../src/garden/garden.ts';
import { standingOf } from '../../../src/ledger/weather/long-record.ts';
import { sameDates } from '../../../src/ledger/weather/window.ts';
import { aprilRows, weatherOf } from './gate-weather.ts';

/** Twenty days of April a year, all alike: rain and temperatures differ by year. */
const year = (label: number, rain: number, tmax: number): string =>
  aprilRows(
    label,
    Array.from({ length: 20 }, () => `${rain},${tmax},10`),
  );

test('the season’s place, counted in by hand, from both ends', () => {
  const rows = [year(2019, 1, 20), year(2020, 4, 22), year(2021, 2, 24), year(2022, 5, 26), year(2025, 3, 25)];
  const found = weatherOf(rows.join('\n'), '2025-04-20');
  // Warmth 20 22 24 26 and 25: second from the top, fourth from the bottom, of five.
  expect(found?.measures.mean_c.standing).toMatchObject({
    from_top: { place: 2, of: 5, tied: 0 },
    from_bottom: { place: 4, of: 5, tied: 0 },
    lowest: 15,
    highest: 18,
    middle: 16.5,
  });
  // Rain 20 80 40 100 and 60: the middle of five.
  expect(found?.measures.rain_mm.standing).toMatchObject({ from_top: { place: 3 }, from_bottom: { place: 3 } });
  expect(found?.measures.rain_mm.place).toMatchObject({ value: 3, n: 5, replicate: { kind: 'year', count: 5 } });
});

test('four years are too few, the fifth makes a ranking', () => {
  const four = [year(2021, 1, 20), year(2022, 4, 22), year(2023, 2, 24), year(2025, 3, 25)].join('\n');
  const found = weatherOf(four, '2025-04-20');
  expect(found?.measures.mean_c.standing).toBeNull();
  expect(found?.measures.mean_c.place).toMatchObject({ value: null, reason: { code: 'not-ranked' } });
  expect(weatherOf(`${four}\n${year(2024, 1, 21)}`, '2025-04-20')?.measures.mean_c.standing).not.toBeNull();
});

test('a year takes part with 95 of 100 days read: 19 of 20 do, 18 do not', () => {
  const others = [2019, 2020, 2021, 2022].map((label) => year(label, 1, 20));
  const lacking = (days: number): string =>
    aprilRows(
      2023,
      Array.from({ length: 20 }, (_, index) => (index < days ? ',,' : '9,30,10')),
    );
  const ranked = (days: number): readonly string[] | undefined =>
    weatherOf([...others, lacking(days), year(2025, 3, 25)].join('\n'), '2025-04-20')?.measures.rain_mm.standing?.years;
  expect(ranked(1)).toEqual(['2019', '2020', '2021', '2022', '2023', '2025']);
  expect(ranked(2)).toEqual(['2019', '2020', '2021', '2022', '2025']);
});

test('a season with too much unread is not ranked itself', () => {
  const years = [2019, 2020, 2021, 2022, 2023].map((label) => year(label, 1, 20));
  const found = weatherOf([...years, aprilRows(2025, ['1,30,10'])].join('\n'), '2025-04-20');
  expect(found?.measures.mean_c.standing).toBeNull();
});

test('a running season is held against the same days of other years only', () => {
  const years = [2019, 2020, 2021, 2022].map((label) => `${year(label, 1, 20)}\n${label}-04-21,99,40,30`);
  const found = weatherOf([...years, year(2025, 2, 25)].join('\n'), '2025-04-20');
  expect(found?.measures.rain_mm.standing?.highest).toBe(20);
});

test('an unread day does not cost a year its place: sums are evened out to all days', () => {
  const years = [2019, 2020, 2021, 2022].map((label) => year(label, 10, 20));
  const lacking = aprilRows(
    2025,
    Array.from({ length: 20 }, (_, index) => (index === 7 ? ',,' : '10.2,20.1,10')),
  );
  const measures = weatherOf([...years, lacking].join('\n'), '2025-04-20')?.measures;
  expect(measures?.rain_mm.figure.value).toBeCloseTo(193.8, 9); // less than the 200 of the other years
  expect(measures?.rain_mm.standing?.from_top.place).toBe(1);
  expect(measures?.heat_c_days.standing?.from_top.place).toBe(1);
});

test('equal years share a place', () => {
  const years = ['a', 'b', 'c', 'd', 'e'].map((label, index) => ({
    label,
    value: [3, 5, 5, 1, 5][index] ?? 0,
    read: 10,
    of: 10,
    at_least: false,
    evened: [3, 5, 5, 1, 5][index] ?? 0,
  }));
  expect(standingOf('c', years)).toMatchObject({ from_top: { place: 1, tied: 2 }, from_bottom: { place: 3, tied: 2 } });
  expect(standingOf('a', years)).toMatchObject({ from_top: { place: 4, tied: 0 }, lowest: 1, middle: 5, highest: 5 });
});

test('a window over New Year keeps its two years, and 29 February becomes 1 March', () => {
  const day = (date: string) => ({ date: date as Day, key: date, rain_mm: 1 }) as never;
  const station: Station = { id: 'gate', days: [day('2022-12-31'), day('2023-01-02'), day('2025-01-01')] };
  const windows = sameDates(station, '2024-02-29' as Day, '2025-01-31' as Day);
  expect(windows.map(({ label, first, last }) => [label, first, last])).toEqual([
    ['2022/23', '2022-03-01', '2023-01-31'],
    ['2024/25', '2024-02-29', '2025-01-31'],
  ]);
  expect(windows[0]?.days.filter((one) => one !== null)).toHaveLength(2);
});
