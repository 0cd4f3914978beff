import { expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { usualFrosts } from '../../../src/ledger/year/frosts.ts';
import { planSeasonOf } from '../../../src/ledger/year/plan-season.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

/** Nights of 8 °C but for the ones named, over whole years. */
function gardenOf(years: readonly number[], cold: readonly string[], southern = false): Garden {
  const nights = years.flatMap((year) =>
    Array.from({ length: 365 }, (_, index) => {
      const date = new Date(Date.UTC(year, southern ? 6 : 0, 1 + index)).toISOString().slice(0, 10);
      return `${date},${cold.includes(date) ? 0 : 8},20`;
    }),
  );
  const season = southern
    ? { 'seasons/2024-25/season.yaml': 'label: 2024/25\nstarts_on: 2024-10-15\nends_on: 2025-03-14\n' }
    : { 'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n' };
  const { garden, problems } = linkTexts({
    'garden.yaml':
      'name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nweather: {station: post, read: midnight}\nspots: [{id: S1, kind: mound}]\n',
    'weather/post.csv': `date,tmin_c,tmax_c\n${[...new Set(nights)].join('\n')}\n`,
    ...season,
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return garden;
}

const frostsOf = (garden: Garden, today: string) => usualFrosts(garden, planSeasonOf(garden, today as Day));
const range = (first: number, count: number): number[] => Array.from({ length: count }, (_, index) => first + index);

test('of ten years the worst is left out, of nine none', () => {
  // Last frosts of 2015 to 2024: 1 to 10 April; first ones on the same days of October.
  const cold = range(2015, 10).flatMap((year, index) => {
    const date = String(index + 1).padStart(2, '0');
    return [`${year}-04-${date}`, `${year}-10-${date}`];
  });
  expect(frostsOf(gardenOf(range(2015, 10), cold), '2025-04-20')).toEqual({
    last_of_spring: { day: '2025-04-09', held: 9, years: 10 },
    first_of_autumn: { day: '2025-10-02', held: 9, years: 10 },
  });
  expect(frostsOf(gardenOf(range(2016, 9), cold), '2025-04-20')?.last_of_spring).toEqual({
    day: '2025-04-10',
    held: 9,
    years: 9,
  });
});

test('a record under five years tells nothing, and one without frost needs no day', () => {
  expect(frostsOf(gardenOf(range(2021, 4), []), '2025-04-20')).toEqual({ last_of_spring: null, first_of_autumn: null });
  expect(frostsOf(gardenOf(range(2020, 5), []), '2025-04-20')?.last_of_spring).toEqual({
    day: null,
    held: 5,
    years: 5,
  });
});

test('in the south spring ends before New Year, and the day is one of the season planned', () => {
  const cold = range(2019, 5).map((year) => `${year}-09-20`);
  const found = frostsOf(gardenOf(range(2019, 5), cold, true), '2025-03-14');
  expect(found?.last_of_spring).toEqual({ day: '2025-09-20', held: 5, years: 5 });
});

test('without a season there is nothing to plan', () => {
  expect(usualFrosts(gardenOf(range(2020, 5), []), null)).toBeNull();
});
