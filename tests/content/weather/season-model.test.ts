import { expect, test } from 'vitest';
import { seasonModel } from '../../../content/weather/season-model.ts';
import type { Facts } from '../../../src/book/chapter.ts';
import type { Day } from '../../../src/day.ts';
import { aprilRows, weatherOf } from '../../ledger/weather/gate-weather.ts';

const facts = (today: string): Facts => ({ today: today as Day, garden: { about: { weather: null } } }) as Facts;

/** The page's model of April 2025 beside four or more other Aprils, each of one warmth and rain. */
function april(others: readonly (readonly [rain: number, tmax: number])[], own: readonly [number, number]) {
  const year = (label: number, [rain, tmax]: readonly [number, number]): string =>
    aprilRows(
      label,
      Array.from({ length: 20 }, () => `${rain},${tmax},10`),
    );
  const rows = others.map((one, index) => year(2010 + index, one));
  const weather = weatherOf([...rows, year(2025, own)].join('\n'), '2025-04-20');
  return weather && seasonModel(facts('2025-04-20'), weather, [], null);
}

test('a place is told from the nearer end, or as the middle', () => {
  const others = [1, 2, 3, 4].map((value) => [value, 20 + value] as const);
  expect(april(others, [0.5, 30])).toMatchObject({
    warmth: { end: 'top', place: 1, of: 5, tied: 'no' },
    wetness: { end: 'bottom', place: 1, of: 5, tied: 'no' },
  });
  expect(april(others, [2.5, 23.5])).toMatchObject({
    warmth: { end: 'top', place: 2, of: 5 },
    wetness: { end: 'middle', place: 3, of: 5 },
  });
  expect(april(others, [1, 24])).toMatchObject({
    warmth: { end: 'top', place: 1, tied: 'yes' },
    wetness: { end: 'bottom', place: 1, tied: 'yes' },
  });
});

test('under five years nothing has a place', () => {
  expect(april([[1, 20]], [2, 22])).toMatchObject({ warmth: null, wetness: null, years: 2 });
});

test('years with too much unread are named', () => {
  const years = [2019, 2020, 2021, 2022, 2025].map((label) =>
    aprilRows(
      label,
      Array.from({ length: 20 }, () => '1,20,10'),
    ),
  );
  const weather = weatherOf([...years, '2024-04-01,3,20,9'].join('\n'), '2025-04-20');
  expect(weather && seasonModel(facts('2025-04-20'), weather, [], null).left_out).toEqual(['2024']);
});

test('a season is over on its last day, not before', () => {
  const weather = weatherOf(aprilRows(2025, ['1,20,10']), '2025-10-31');
  expect(weather && seasonModel(facts('2025-10-31'), weather, [], null).over).toBe(true);
  expect(weather && seasonModel(facts('2025-10-30'), weather, [], null).over).toBe(false);
});

test('gaps are told by what is lacking, five stretches of each and a count of the rest', () => {
  const cells = Array.from({ length: 30 }, (_, index) => (index % 2 === 0 ? '1,20,10' : ',20,10'));
  const weather = weatherOf(aprilRows(2025, cells), '2025-04-30');
  const gaps = weather && seasonModel(facts('2025-04-30'), weather, [], null).gaps;
  expect(gaps).toMatchObject([{ lacks: 'rain', more: 10 }]);
  expect(gaps?.[0]?.stretches).toHaveLength(5);
});
