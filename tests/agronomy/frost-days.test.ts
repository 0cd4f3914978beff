import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FrostRules, frostDates, type NightRead } from '../../src/agronomy/frost-days.ts';
import { addDays, type Day, dayOf, daysBetween, laterOf } from '../../src/day.ts';
import { daysAfterWhich, daysBeforeWhich } from '../../src/statistics/day-percentile.ts';
import { SEATTLE } from '../published/seattle-weather/daily.ts';
import { AT_0_C, AT_MINUS_2_C, FROM_JULY } from '../published/seattle-weather/frosts.ts';

const NORTH: FrostRules = { southern: false };
const SOUTH: FrostRules = { southern: true };

const NIGHTS: readonly NightRead[] = SEATTLE.map(({ date, tmin_c }) => ({ date: date as Day, tmin_c }));

/** Every night from one day to another, mild but for the frosts named. */
function nights(first: string, last: string, frosts: readonly string[], without: readonly string[] = []): NightRead[] {
  const length = daysBetween(first as Day, last as Day) + 1;
  return Array.from({ length }, (_, step) => addDays(first as Day, step))
    .filter((date) => !without.includes(date))
    .map((date) => ({ date, tmin_c: frosts.includes(date) ? -1 : 6 }));
}

const on = (date: string | null) => ({ on: date });
const cannot = (read: number, of: number) => ({ cannot: { code: 'too-few-days', read, of } });

describe('four years of Seattle, as R and awk find them', () => {
  it.each([
    [0, AT_0_C],
    [-2, AT_MINUS_2_C],
  ])('at or below %i °C', (threshold_c, expected) => {
    expect(frostDates(NIGHTS, { southern: false, threshold_c })).toEqual(
      expected.map(({ year, last, first }) => ({
        starts_on: `${year}-01-01`,
        turns_on: `${year}-07-01`,
        spring: on(last),
        autumn: on(first),
      })),
    );
  });
  it('0 °C is what is meant when nothing is said', () => {
    expect(frostDates(NIGHTS, NORTH)).toEqual(frostDates(NIGHTS, { southern: false, threshold_c: 0 }));
  });
  it('a night of exactly 0 °C is a frost: below 0 °C 2013 ended its frosts six weeks before', () => {
    const below = frostDates(NIGHTS, { southern: false, threshold_c: -0.01 });
    expect(below[1]?.spring).toEqual(on('2013-01-22'));
  });
  it('so many of the years, counted from 1 July, as R has them by quantile type 1', () => {
    const years = frostDates(NIGHTS, NORTH);
    const offsets = (half: 'spring' | 'autumn'): number[] =>
      years.flatMap((year) => {
        const frost = year[half];
        return 'on' in frost && frost.on !== null ? [daysBetween(year.turns_on, frost.on)] : [];
      });
    expect([0, 1, 2, 3].map((years) => daysAfterWhich(offsets('spring'), years))).toEqual(FROM_JULY.last);
    expect([0, 1, 2, 3].map((years) => daysBeforeWhich(offsets('autumn'), years))).toEqual(FROM_JULY.first);
  });
  it('moved by half a year, the same frosts are those of a southern garden', () => {
    const moved = NIGHTS.map(({ date, tmin_c }) => ({ date: addDays(date, 184), tmin_c }));
    // 1 July and 184 days is 1 January. The last nights of December come over the turn, where later frosts hide theirs.
    const spring = frostDates(moved, SOUTH).flatMap((year) => ('on' in year.spring ? [year.spring.on] : []));
    expect(spring).toEqual(AT_0_C.map(({ last }) => addDays(last as Day, 184)));
  });
});

describe('by hand', () => {
  it('a northern year runs from January to December', () => {
    const frosts = ['2025-01-03', '2025-04-20', '2025-06-30', '2025-07-01', '2025-10-30'];
    expect(frostDates(nights('2025-01-01', '2025-12-31', frosts), NORTH)).toEqual([
      { starts_on: '2025-01-01', turns_on: '2025-07-01', spring: on('2025-06-30'), autumn: on('2025-07-01') },
    ]);
  });
  it('a southern one from July to June, over New Year', () => {
    const frosts = ['2023-07-09', '2023-09-28', '2024-05-02', '2024-06-11'];
    expect(frostDates(nights('2023-07-01', '2024-06-30', frosts), SOUTH)).toEqual([
      { starts_on: '2023-07-01', turns_on: '2024-01-01', spring: on('2023-09-28'), autumn: on('2024-05-02') },
    ]);
  });
  it('the same record read as northern is two halves of two years', () => {
    const years = frostDates(nights('2023-07-01', '2024-06-30', ['2023-09-28']), NORTH);
    expect(years).toEqual([
      { starts_on: '2023-01-01', turns_on: '2023-07-01', spring: cannot(0, 181), autumn: on('2023-09-28') },
      { starts_on: '2024-01-01', turns_on: '2024-07-01', spring: on(null), autumn: cannot(0, 184) },
    ]);
  });
  it('a half-year without frost is null, read whole', () => {
    const [year] = frostDates(nights('2025-01-01', '2025-12-31', ['2025-11-20']), NORTH);
    expect([year?.spring, year?.autumn]).toEqual([on(null), on('2025-11-20')]);
  });
  it('95 of 100 days are enough: of 181, 172 are and 171 are not', () => {
    const gone = Array.from({ length: 10 }, (_, step) => addDays(dayOf(2025, 2, 1), step));
    const spring = (without: readonly string[]) =>
      frostDates(nights('2025-01-01', '2025-06-30', ['2025-03-20'], without), NORTH)[0]?.spring;
    expect(spring(gone.slice(0, 9))).toEqual(on('2025-03-20'));
    expect(spring(gone)).toEqual(cannot(171, 181));
  });
  it('a night written of but not read counts as little as none', () => {
    const blind = nights('2025-01-01', '2025-06-30', ['2025-03-20']).map((night, place) =>
      place < 10 ? { ...night, tmin_c: null } : night,
    );
    expect(frostDates(blind, NORTH)[0]?.spring).toEqual(cannot(171, 181));
  });
  it('no days, no years', () => {
    expect(frostDates([], SOUTH)).toEqual([]);
  });
  it.each<[string, NightRead[], FrostRules]>([
    [
      'date: 2025-03-01 twice',
      [...nights('2025-03-01', '2025-03-02', []), ...nights('2025-03-01', '2025-03-01', [])],
      NORTH,
    ],
    ['tmin_c: NaN', [{ date: dayOf(2025, 1, 1), tmin_c: Number.NaN }], NORTH],
    ['threshold_c: NaN', [], { southern: false, threshold_c: Number.NaN }],
  ])('impossible %s is refused', (name, days, rules) => {
    expect(() => frostDates(days, rules)).toThrow(RangeError);
    expect(() => frostDates(days, rules)).toThrow(`invalid ${name}`);
  });
});

it('any record: in whatever order, each frost lies in its half and none in it lies beyond', () => {
  const record = fc.record({
    from: fc.integer({ min: 0, max: 1500 }).map((step) => addDays(dayOf(2019, 1, 1), step)),
    temperatures: fc.array(fc.integer({ min: -30, max: 120 }), { minLength: 400, maxLength: 800, size: 'max' }),
    southern: fc.boolean(),
  });
  let found = 0;
  fc.assert(
    fc.property(record, ({ from, temperatures, southern }) => {
      const read = temperatures.map((tenths, step) => ({ date: addDays(from, step), tmin_c: tenths / 10 }));
      const years = frostDates(read, { southern });
      expect(frostDates(read.toReversed(), { southern })).toEqual(years);
      for (const { starts_on, turns_on, spring, autumn } of years) {
        const ends_on = addDays(dayOf(Number(starts_on.slice(0, 4)) + 1, southern ? 7 : 1, 1), -1);
        const frosts = read.filter(({ tmin_c }) => tmin_c <= 0).map(({ date }) => date);
        if ('on' in spring && spring.on) {
          expect(spring.on >= starts_on && spring.on < turns_on && frosts.includes(spring.on)).toBe(true);
          expect(frosts.filter((date) => date > laterOf(spring.on as Day, starts_on) && date < turns_on)).toEqual([]);
          found += 1;
        }
        if ('on' in autumn && autumn.on) {
          expect(autumn.on >= turns_on && autumn.on <= ends_on && frosts.includes(autumn.on)).toBe(true);
          expect(frosts.filter((date) => date >= turns_on && date < (autumn.on as Day))).toEqual([]);
          found += 1;
        }
      }
    }),
    { seed: 20250812, numRuns: 40 },
  );
  expect(found).toBeGreaterThan(40);
});
