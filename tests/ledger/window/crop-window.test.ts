import { describe, expect, test } from 'vitest';
import { addDays, type Day, daysBetween } from '../../../src/day.ts';
import { keptInMemory, NOTHING_KEPT } from '../../../src/kept.ts';
import { createBases } from '../../../src/ledger/bases.ts';
import { type CropWindow, cropWindow } from '../../../src/ledger/window/crop-window.ts';
import { CUTS, type Cut, FILE_DAYS, type Running, runningGarden, setOn, TODAY } from './running-garden.ts';

function windowOf(running: Running = {}, kept = NOTHING_KEPT): CropWindow {
  const { garden, crop } = runningGarden(running);
  return cropWindow(garden, crop, TODAY, createBases(), kept);
}

const first = (found: CropWindow) => {
  const [one] = found.growing;
  if (!one) throw new Error('nothing grows');
  return one;
};
const lineOf = (found: CropWindow) => {
  const { window } = first(found);
  if (!window) throw new Error(`no window: ${first(found).cannot?.code}`);
  return window;
};

describe('a fruit that set on 1 July, seen on 1 August', () => {
  // Ripe is between 38 days (the oldest unripe) and 39 (the youngest just ripe): 8 or 9 August. Over is between 48 and 52.
  const found = windowOf();
  const { line, years, next_visit } = lineOf(found);

  test('becomes ripe about 39 days on, and is over about 50 days on', () => {
    expect(found.clock.unit).toBe('c_days');
    expect(years).toBe(4);
    expect(line.ripe.median).toBeGreaterThanOrEqual(7);
    expect(line.ripe.median).toBeLessThanOrEqual(9);
    expect(line.over?.median).toBeGreaterThanOrEqual(17);
    expect(line.over?.median).toBeLessThanOrEqual(22);
    for (const { half, most } of [line.ripe, line.over ?? line.ripe]) {
      expect([half.level, most.level]).toEqual([0.5, 0.9]);
      expect(most.low ?? 99).toBeLessThanOrEqual(half.low ?? 0);
      expect(most.high ?? 99).toBeGreaterThanOrEqual(half.high ?? 0);
    }
  });

  test('is to be looked at on the first day on which 1 in 10 is ripe', () => {
    const at = line.ripe_by.findIndex((one) => one >= 0.1);
    expect(at).toBeGreaterThan(0);
    expect(next_visit).toBe(addDays(TODAY, at));
  });

  test('has figures from the very numbers, over the cut fruits and itself', () => {
    const { to_ripe, to_over } = first(found);
    expect(to_ripe).toMatchObject({
      id: 'ripe.globe.window.G1.to_ripe',
      value: line.ripe.median,
      interval: { low: line.ripe.most.low, high: line.ripe.most.high, level: 0.9 },
      n: CUTS.length,
      reason: null,
    });
    expect(to_over.value).toBe(line.over?.median);
  });
});

test('where every day is as warm as the next, heat and days tell the same', () => {
  // The same temperature all day and every year: heat is days times a constant.
  const heat = lineOf(windowOf()).line.ripe;
  const days = windowOf({ years: 0 });
  expect([days.clock.unit, days.days_because]).toEqual(['days', 'no-thermometer']);
  const told = lineOf(days).line.ripe;
  for (const [one, other] of [
    [heat.median, told.median],
    [heat.most.low, told.most.low],
    [heat.most.high, told.most.high],
  ])
    expect(Math.abs((one ?? 99) - (other ?? -99))).toBeLessThanOrEqual(1);
});

test('heat still missing is run through past years: in years twice as warm it comes in half the days', () => {
  const usual = lineOf(windowOf({ growing: [setOn('2025-07-15')] })).line.ripe.median ?? Number.NaN;
  // 10 °C·days a day above a base of 10 °C in the years of the cuts and of today, 20 in the others.
  const warm = (year: number): number => (year >= 2024 ? 20 : 30);
  const found = windowOf({ growing: [setOn('2025-07-15')], warmth: warm, years: 12 });
  const faster = lineOf(found).line.ripe.median ?? Number.NaN;
  expect(found.years).toHaveLength(12);
  expect(usual).toBeGreaterThanOrEqual(20);
  expect(faster / usual).toBeGreaterThan(0.42);
  expect(faster / usual).toBeLessThan(0.62);
});

test('kept and fresh are the same', () => {
  const kept = keptInMemory();
  const [fresh, anew, again] = [windowOf(), windowOf({}, kept), windowOf({}, kept)].map((one) => first(one).window);
  expect(anew).toEqual(fresh);
  expect(again).toEqual(fresh);
});

describe('a call of not ripe', () => {
  const visit = (call: string, on: string): string =>
    `- {id: V1, visited_on: ${on}, fruits: [{fruit: G1, call: ${call}}]}\n`;
  const growing = [setOn('2025-06-22')]; // 40 days: as likely ripe as not
  const without = lineOf(windowOf({ growing }));

  test('puts the window off, in a line of its own', () => {
    const found = lineOf(windowOf({ growing, visits: visit('not-yet', '2025-08-01') }));
    expect(found.line).toEqual(without.line);
    expect(without.called).toBeNull();
    expect(found.called?.ripe_by[0]).toBeLessThan((without.line.ripe_by[0] ?? 0) - 0.1);
    expect(found.called?.ripe_by[0]).toBeGreaterThan(0); // a call may be wrong
  });

  test('counts from the day it was made: an old one tells less', () => {
    const [old, fresh] = ['2025-07-25', '2025-08-01'].map((on) =>
      lineOf(windowOf({ growing, visits: visit('not-yet', on) })),
    );
    expect(old?.called?.ripe_by[0]).toBeGreaterThan(fresh?.called?.ripe_by[0] ?? 1);
    expect(old?.called?.ripe_by[0]).toBeLessThanOrEqual((without.line.ripe_by[0] ?? 0) + 1e-9);
  });

  test('nobody’s, an unsure one and a call of ripe change nothing', () => {
    for (const call of ['unsure', 'ripe'])
      expect(lineOf(windowOf({ growing, visits: visit(call, '2025-08-01') })).called).toBeNull();
  });
});

describe('looking again', () => {
  const next = (set: string): number => daysBetween(TODAY, lineOf(windowOf({ growing: [setOn(set)] })).next_visit);
  test('is never more than a week on, and every two days once it may be ripe', () => {
    expect(next('2025-07-28')).toBe(7);
    expect(next('2025-06-22')).toBe(2);
    for (const set of ['2025-07-05', '2025-07-01', '2025-06-27']) expect([1, 2, 3, 4, 5, 6, 7]).toContain(next(set));
  });
});

describe('where nothing can be told it says why', () => {
  const reason = (running: Running) => first(windowOf(running)).cannot;

  test.each<[string, Running, object]>([
    ['no cuts', { cuts: [] }, { code: 'few-cut-open', values: { cut: 0, wanted: 6 } }],
    ['five cuts', { cuts: CUTS.slice(4, 9) }, { code: 'few-cut-open', values: { cut: 5, wanted: 6 } }],
    ['only ripe cuts', { cuts: CUTS.slice(6) }, { code: 'none-unripe', values: { cut: 11 } }],
    ['only unripe cuts', { cuts: CUTS.slice(0, 6) }, { code: 'one-state' }],
    ['no day of set', { growing: ['fate: growing'] }, { code: 'no-set-day' }],
    ['set today', { growing: [setOn('2025-08-01')] }, { code: 'time-unknown' }],
  ])('%s', (_, running, expected) => expect(reason(running)).toMatchObject(expected));

  test('a fruit called unripe though older than all cuts leave possible: something is wrong', () => {
    const visit = (on: string): string => `- {id: V1, visited_on: ${on}, fruits: [{fruit: G1, call: not-yet}]}\n`;
    const growing = [setOn('2025-05-22')]; // 71 days
    expect(reason({ growing, visits: visit('2025-08-01') })).toMatchObject({ code: 'outgrown' });
    const told = lineOf(windowOf({ growing }));
    expect([told.line.ripe.most.high, told.line.over?.most.high]).toEqual([0, 0]);
    expect(reason({ growing, visits: visit('2025-07-10') })).toBeNull();
  });

  test('with fewer than three past years time is counted in days', () => {
    expect(windowOf({ years: 2 })).toMatchObject({ days_because: 'few-years', clock: { unit: 'days' } });
    expect(windowOf({ years: 3 }).days_because).toBeNull();
  });

  test('a thermometer read in some years only tells the heat of too few cuts', () => {
    const warmth = (year: number): number | null => (year === 2024 ? null : 20);
    expect(windowOf({ warmth })).toMatchObject({ days_because: 'heat-unread', clock: { unit: 'days' } });
  });

  test.each([15, 16])('of %i cuts one over at most: nobody can say when it will be too late', (cuts) => {
    const found = windowOf({ cuts: CUTS.slice(0, cuts) });
    expect(lineOf(found).line.over).toBeNull();
    expect(first(found).to_over).toMatchObject({ value: null, reason: { code: 'few-cut-over' } });
    expect(first(found).to_ripe.value).not.toBeNull();
  });

  test('what lies beyond the season has no day', () => {
    const found = windowOf({
      growing: [setOn('2025-07-31')],
      warmth: (year) => (year === 2025 || year === 2024 ? 20 : 11),
    });
    // 1 °C·day a day from here on in three of four years, and 76 days to the season's end.
    expect(lineOf(found).line.ripe.most.high).toBeNull();
    expect(first(found).to_ripe).toMatchObject({ value: null, interval: null, reason: { code: 'beyond-season' } });
  });
});

describe('which cuts count', () => {
  test('one cut young to thin the vine does not; one without a day of set counts from its planting', () => {
    const found = windowOf({
      cuts: [...CUTS, { days: 20, state: 'unripe', more: ', why: thinned' }, { days: null, state: 'prime' }],
    });
    expect(found.cut).toHaveLength(CUTS.length + 1);
    expect(found.by_planting).toBe(1);
    // The garden's own: planted 20 May, all set on 20 June 2024 but the growing one, on 1 July 2025.
    expect(found.span).toEqual({ fewest: 31, most: 42, from: 'own' });
  });

  test('with too few of its own the span is the crop file’s, and without either such a fruit is left out', () => {
    const bare: Cut[] = Array.from({ length: 6 }, () => ({ days: null, state: 'prime' }));
    // 80 less 44, and 80 less 36 and four weeks more.
    expect(windowOf({ cuts: bare })).toMatchObject({ span: { fewest: 36, most: 72, from: 'crop' }, by_planting: 6 });
    const none = windowOf({ cuts: bare, crop: '' });
    expect([none.span, none.cut.length]).toEqual([null, 0]);
    expect(FILE_DAYS).toContain('planted_days_low: 80');
  });
});

test('calls held against the knife are counted, and begin as one wrong in five', () => {
  const cuts: Cut[] = [
    { days: 30, state: 'unripe' },
    { days: 42, state: 'prime' },
    { days: 44, state: 'prime' },
  ];
  // F1 called ripe and unripe: wrong. F2 called not yet and prime: wrong. F3 called four days before: does not count.
  const visits = `- {id: V1, visited_on: 2024-07-19, fruits: [{fruit: F1, call: ripe}]}
- {id: V2, visited_on: 2024-07-30, fruits: [{fruit: F2, call: not-yet}, {fruit: F3, call: ripe}]}
`;
  const found = windowOf({ cuts, more: { 'seasons/2024/visits.yaml': visits } });
  expect(found.calls).toMatchObject({ calls: 2, wrong: 2 });
  expect(found.calls.chance).toBeCloseTo(3 / 7, 12);
  expect(windowOf().calls).toMatchObject({ calls: 0, wrong: 0, chance: 0.2 });
});

test('between seasons nothing hangs, and nothing is fitted', () => {
  const { garden, crop } = runningGarden();
  const found = cropWindow(garden, crop, '2025-11-20' as Day, createBases(), NOTHING_KEPT);
  expect([found.season, found.growing]).toEqual([null, []]);
});
