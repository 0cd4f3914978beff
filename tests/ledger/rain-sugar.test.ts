import { describe, expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { openLedger } from '../../src/ledger/ledger.ts';
import { companionsOf } from '../../src/ledger/rain-sugar/companion.ts';
import { dayPulls } from '../../src/ledger/rain-sugar/day-pull.ts';
import { evidenceOf, tooLittle } from '../../src/ledger/rain-sugar/evidence.ts';
import { rainSlope } from '../../src/ledger/rain-sugar/rain-slope.ts';
import type { SugarReading } from '../../src/ledger/rain-sugar/reading.ts';
import { planting, smallGarden } from './small-garden.ts';

const reading = (picked_on: string, rain_mm: number, more: Partial<SugarReading> = {}): SugarReading => ({
  key: `fruits/${picked_on}`,
  variety: 'amber',
  season: '2025',
  mound: '2025 S1',
  picked_on: picked_on as Day,
  brix: 10,
  rain_mm,
  windows: [rain_mm, rain_mm, rain_mm, rain_mm],
  mass_kg: null,
  days_since_set: null,
  forecast: false,
  ...more,
});

/** Nine picking days of August, wet ones as given by day and rain. */
const days = (wet: Readonly<Record<number, number>>): SugarReading[] =>
  [1, 4, 7, 10, 13, 16, 19, 22, 25].map((day) => reading(`2025-08-${String(day).padStart(2, '0')}`, wet[day] ?? 0));

describe('how much the picking days can tell', () => {
  test('wet days within three days are one spell, farther apart two', () => {
    expect(evidenceOf(days({ 4: 10, 7: 8 })).wet_spells).toBe(1);
    expect(evidenceOf(days({ 4: 10, 10: 8, 25: 5 }))).toMatchObject({ wet_spells: 3, dry_days: 6, picking_days: 9 });
    expect(evidenceOf(days({ 4: 4.9 })).wet_spells).toBe(0);
  });

  test.each([
    [{ 4: 10, 7: 8 }, 'few-rains'],
    [{ 4: 10, 10: 8, 19: 12 }, null],
    [{ 4: 10, 10: 8, 19: 60 }, 'one-day-decides'],
    [{ 1: 9, 4: 10, 10: 8, 13: 6, 19: 9, 22: 5, 25: 7 }, 'few-dry-days'],
  ] as const)('%o: %s', (wet, code) => {
    expect(tooLittle(evidenceOf(days(wet)))?.code ?? null).toBe(code);
  });

  test('six more picking days than seasons are wanted', () => {
    const few = days({ 4: 10, 10: 8, 19: 12 }).filter(
      ({ picked_on }) => picked_on !== '2025-08-25' && picked_on !== '2025-08-22',
    );
    expect(tooLittle(evidenceOf(few))).toBeNull();
    expect(tooLittle(evidenceOf(few.slice(0, -1)))?.code).not.toBeUndefined();
    const two = few.map((one, index) => ({ ...one, season: index < 3 ? '2024' : '2025' }));
    expect(tooLittle(evidenceOf(two))?.code).toBe('few-picking-days');
  });

  test('the share of one day is of the spread within variety and season, by hand', () => {
    const two = [reading('2025-08-01', 0), reading('2025-08-05', 6), reading('2025-08-09', 12)];
    expect(evidenceOf(two).one_day_share).toBeCloseTo(36 / 72, 12);
  });
});

test('how much of a slope is one day’s, by hand: the most first, fruits of a day together', () => {
  const four = [
    reading('2025-08-01', 0),
    reading('2025-08-05', 6),
    reading('2025-08-09', 12),
    reading('2025-08-09', 12),
  ];
  // Mean 7.5: 56.25, 2.25, and twice 20.25.
  expect(dayPulls(four).map(({ day, share }) => [day, share * 99])).toEqual([
    ['2025-08-01', expect.closeTo(56.25, 9)],
    ['2025-08-09', expect.closeTo(40.5, 9)],
    ['2025-08-05', expect.closeTo(2.25, 9)],
  ]);
  expect(dayPulls([reading('2025-08-01', 3), reading('2025-08-05', 3)])).toEqual([]);
});

describe('what came with the rain', () => {
  /** A station on which the three days before each reading had this middle temperature. */
  const station = (readings: readonly SugarReading[], middle: (one: SugarReading) => number | null) => ({
    id: 'post',
    days: readings.flatMap((one) =>
      [1, 2, 3].map((back) => {
        const date = new Date(Date.parse(one.picked_on) - back * 86_400_000).toISOString().slice(0, 10) as Day;
        const c = middle(one);
        const temperatures = { tmax_c: c === null ? null : c + 5, tmin_c: c === null ? null : c - 5 };
        return { key: `weather/${date}`, date, rain_mm: 0, rain: null, ...temperatures };
      }),
    ),
  });
  const wet = days({ 4: 10, 10: 8, 19: 12 });

  test('cool days that always came with rain cannot be told from it; warmth on its own path can', () => {
    const cool = companionsOf(wet, station(wet, ({ rain_mm }) => 22 - rain_mm / 3) as never, 3);
    expect(cool[0]).toMatchObject({ kind: 'warmth', days: 9, r: expect.closeTo(-1, 9), together: true });
    const free = companionsOf(
      wet,
      station(wet, ({ picked_on }) => (Number(picked_on.slice(-2)) % 2 ? 20 : 24)) as never,
      3,
    );
    expect(free[0]?.together).toBe(false);
  });

  test('lateness is within the season: two seasons, rain only in the later one, tell nothing of it', () => {
    const late = wet.map((one, index) => ({ ...one, rain_mm: index }));
    expect(companionsOf(late, station(late, () => null) as never, 3)).toMatchObject([
      { kind: 'warmth', days: 0, r: null, together: false },
      { kind: 'lateness', days: 9, r: expect.closeTo(1, 9), together: true },
    ]);
    const years = [
      ...wet.map((one) => ({
        ...one,
        season: '2024',
        picked_on: one.picked_on.replace('2025', '2024') as Day,
        rain_mm: 0,
      })),
      ...wet.map((one) => ({ ...one, rain_mm: 9 })),
    ];
    expect(companionsOf(years, station(years, () => null) as never, 3)[1]).toMatchObject({ r: 0, together: false });
  });

  test('too few days tell nothing', () => {
    const few = wet.slice(0, 5);
    expect(companionsOf(few, station(few, () => 20) as never, 3)[1]).toMatchObject({ days: 5, r: null });
  });
});

test('a fruit that stands apart is placed by the slope and does not move it', () => {
  const sugar = [9.9, 10.1, 9.2, 10.2, 9.6, 9.9, 10.1, 8.9, 10.0];
  const rows = days({ 4: 10, 10: 8, 19: 12 }).flatMap((one, index) =>
    [0, 1].map((mound) => ({
      ...one,
      key: `${one.key} ${mound}`,
      mound: `S${(index + mound) % 4}`,
      brix: (sugar[index] ?? 0) + mound * (index % 3) * 0.1,
    })),
  );
  const apart = [reading('2025-08-20', 15, { brix: 7 }), reading('2025-08-20', 15, { brix: 7, variety: 'birch' })];
  const [alone, beside] = [rainSlope(rows), rainSlope(rows, apart)];
  if ('cannot' in alone || 'cannot' in beside) throw new Error('no fit');
  expect({ ...beside, apart_brix: [] }).toEqual(alone);
  expect(beside.apart_brix[1]).toBeNull();
  // Covariates are taken about their means, so a fruit of the mean sugar stands at the mean of the marks.
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const below = mean(rows.map(({ brix }) => brix)) - 7;
  expect(beside.apart_brix[0]).toBeCloseTo(mean(beside.partial_brix) - below, 9);
});

const fruit = (id: string, day: string, cut: string, pick = ''): string =>
  `- {id: ${id}, planting: P1, fate: picked, pick: {picked_on: 2025-08-${day}${pick}}, cut: {cut_on: 2025-08-${day}, ${cut}}}\n`;
const RAIN = `date,rain_mm\n${Array.from({ length: 31 }, (_, index) => `2025-08-${String(index + 1).padStart(2, '0')},${index + 1 === 9 ? 20 : index + 1 === 20 ? '' : 0}`).join('\n')}\n`;

const rainOf = (fruits: readonly string[], weather: string | undefined = RAIN) =>
  openLedger(
    smallGarden({ plantings: planting('P1', 'S1'), fruits: fruits.join(''), ...(weather && { weather }) }),
    '2025-09-01' as Day,
  ).rain;

describe('which fruits are read', () => {
  test('just ripe or prime, metered, with the rain of the three days that end on the eve', () => {
    const [found] = rainOf([
      fruit('F1', '10', 'state: prime, brix_centre: 9.5'),
      fruit('F2', '12', 'state: just-ripe, brix_centre: 9'),
      fruit('F3', '13', 'state: prime, brix_centre: 10'),
      fruit('F4', '09', 'state: prime, brix_centre: 10'),
      fruit('F5', '12', 'state: unripe, brix_centre: 5'),
      fruit('F6', '12', 'state: over, brix_centre: 9'),
      fruit('F7', '22', 'state: prime, brix_centre: 9'),
      fruit('F8', '12', 'state: prime'),
    ]);
    // Rain of the 9th counts for pickings on the 10th, 11th and 12th; on the 22nd the 20th was not read.
    expect(found?.readings.map(({ key, rain_mm }) => [key, rain_mm])).toEqual([
      ['fruits/2025/F4', 0],
      ['fruits/2025/F1', 20],
      ['fruits/2025/F2', 20],
      ['fruits/2025/F3', 0],
    ]);
    expect(found?.readings.map(({ windows }) => windows)[3]).toEqual([0, 0, 20, 20]);
    expect(found?.slope).toMatchObject({ value: null, reason: { code: 'few-rains' }, n: 4 });
  });

  test('a fruit picked because rain was coming stands apart', () => {
    const [found] = rainOf([
      fruit('F1', '10', 'state: prime, brix_centre: 9.5'),
      fruit('F2', '12', 'state: prime, brix_centre: 9', ', reason: forecast'),
    ]);
    expect(found?.readings).toHaveLength(1);
    expect(found?.apart).toHaveLength(1);
  });

  test('each window counts the fruits whose days were read in it', () => {
    const [found] = rainOf([
      fruit('F1', '12', 'state: prime, brix_centre: 9.5'),
      fruit('F2', '26', 'state: prime, brix_centre: 9'),
    ]);
    // The 20th was not read: it lies in the seven days before the 26th, and not in the five.
    expect(found?.windows.map(({ days, slope }) => [days, slope.n, slope.replicate?.count])).toEqual([
      [2, 2, 2],
      [3, 2, 2],
      [5, 2, 2],
      [7, 1, 1],
    ]);
  });

  test('without a station there is nothing to hold sugar against', () => {
    expect(rainOf([fruit('F1', '10', 'state: prime, brix_centre: 9.5')], '')).toEqual([]);
  });
});

test('pairs that straddle rain, several fruits of the same two days once, by hand', () => {
  const [found] = rainOf([
    fruit('F1', '08', 'sweet: sweet'),
    fruit('F2', '11', 'sweet: faint, than_last: less'), // wet after dry: less sweet after rain
    fruit('F3', '11', 'sweet: sweet, than_last: less'), // the same pair of days
    fruit('F4', '15', 'sweet: sweet, than_last: sweeter'), // dry after wet: less sweet after rain
    fruit('F5', '18', 'sweet: sweet, than_last: less'), // dry after dry: no pair
  ]);
  expect(found?.pairs).toMatchObject({ less: 2, sweeter: 0, same: 0, fruits: 3 });
  expect(found?.pairs.test).toMatchObject({ above: 2, below: 0 });
  expect(found?.pairs.test?.p).toBeCloseTo(0.5, 9);
});
