import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { asOf } from '../../../src/garden/as-of.ts';
import type { Kept } from '../../../src/kept.ts';
import { openLedger } from '../../../src/ledger/ledger.ts';
import { ripeModel } from '../../../src/statistics/signs/ripe-chance.ts';
import { ALL, type Alike, lookedGarden, lookedRipeness, NONE, type Told } from './looked-garden.ts';

const YEAR: readonly Alike[] = [
  { count: 7, state: 'prime', look: ALL, set: '07-01' },
  { count: 1, state: 'over', look: ALL, set: '06-26' },
  { count: 2, state: 'just-ripe', look: 'tendril: dry, sound: ringing', set: '07-03' },
  { count: 3, state: 'unripe', look: NONE, set: '07-02' },
  { count: 1, state: 'unripe', look: ALL },
  { count: 2, state: 'prime' },
];
const TWO: Told = { 2024: YEAR, 2025: YEAR };

const together = (seasons: Told, today?: string) => lookedRipeness(seasons, today).together;

describe('signs put together', () => {
  const found = together(TWO);

  test('take the vine signs in the crop’s order, and fruits looked over alone', () => {
    expect(found.signs.map(({ id }) => id)).toEqual(['coil', 'spot', 'low']);
    expect(found.known).toHaveLength(28);
    expect(found.dated).toBe(26);
    // 1 July to 12 August are 42 days; the coil and the sound were looked for on the 12th, the spot was not.
    const lookOf = (id: string) => found.known.find(({ judged }) => judged.fruit.id === id)?.look;
    expect(lookOf('F1')).toMatchObject({ days_since_set: 42, signs: [true, true, true], variety: 'amber' });
    expect(lookOf('F9')?.signs).toEqual([true, null, false]);
    expect(lookOf('F14')?.days_since_set).toBeNull();
  });
  test('say what the model says, of ten and under the cap', () => {
    const model = ripeModel(
      found.known.map(({ judged, look }) => ({
        ...look,
        season: judged.season.slug,
        answer: judged.state !== 'unripe',
      })),
    );
    const asked = { days_since_set: 42, signs: [true, true, true], variety: 'amber' };
    const { chance, interval } = model.of(asked, 0.9);
    expect(found.of(asked)).toMatchObject({ ripe: { chance, interval }, of_ten: Math.min(8, Math.round(10 * chance)) });
  });
  test('a fruit with every sign is likelier ripe than one with none, and nothing is claimed above 8', () => {
    const { every, bare } = { every: found.usual.all, bare: found.usual.none };
    expect(every.value).toBeGreaterThan(bare.value ?? 10);
    expect(every.value).toBeLessThanOrEqual(8);
    expect(every).toMatchObject({
      n: 28,
      replicate: { kind: 'season', count: 2 },
      method: 'sign-together',
      reason: null,
    });
    expect(found.cap).toMatchObject({ cap: 8, lower: null });
  });
  test('two over-ripe ones say nothing of over', () => {
    expect(found.too_late.reason).toMatchObject({ code: 'few-over', values: { over: 2 } });
    expect(found.of({ days_since_set: 42, signs: [true, true, true], variety: null })?.over).toBeNull();
  });
});

describe('over', () => {
  const LATE: readonly Alike[] = [
    { count: 4, state: 'over', look: ALL, set: '06-20' },
    { count: 7, state: 'prime', look: ALL, set: '07-05' },
    { count: 4, state: 'unripe', look: NONE, set: '07-15' },
  ];
  const { of, known } = together({ 2024: LATE, 2025: LATE });
  const overAt = (days: number): number =>
    of({ days_since_set: days, signs: [true, true, true], variety: null })?.over ?? Number.NaN;

  test('is the chance of ripe times that of over among the ripe', () => {
    const among = ripeModel(
      known
        .filter(({ judged }) => judged.state !== 'unripe')
        .map(({ judged, look }) => ({ ...look, season: judged.season.slug, answer: judged.state === 'over' })),
    );
    const asked = { days_since_set: 36, signs: [false, false, false], variety: null };
    const claim = of(asked);
    expect(claim?.ripe.chance).toBeLessThan(0.9);
    expect(claim?.over).toBeCloseTo((claim?.ripe.chance ?? 0) * among.of(asked, 0.9).chance, 12);
  });
  test('is likelier of an old fruit, and never likelier than ripe', () => {
    expect(overAt(55)).toBeGreaterThan(overAt(36) + 0.2);
    const claim = of({ days_since_set: 30, signs: [false, false, false], variety: null });
    expect(claim?.over).toBeLessThanOrEqual(claim?.ripe.chance ?? 0);
  });
});

describe('told without its season', () => {
  const { held } = together(TWO).ripe_yet;

  test('every fruit has its claim, the furthest off first', () => {
    expect(held?.claims).toHaveLength(28);
    const off = held?.claims.map(({ chance, came }) => Math.abs(chance - Number(came))) ?? [];
    expect(off).toEqual(off.toSorted((a, b) => b - a));
    // The two unripe fruits that showed every sign.
    expect(
      held?.claims
        .filter(({ missed }) => missed)
        .map(({ judged }) => [judged.season.slug, judged.fruit.id])
        .sort(),
    ).toEqual([
      ['2024', 'F14'],
      ['2025', 'F14'],
    ]);
    expect(held?.bins.reduce((sum, { claims }) => sum + claims, 0)).toBe(28);
  });
  test('one who knows the signs lies nearer than one who says the same of all', () => {
    expect(held?.scores.together).toBeLessThan(held?.scores.base ?? 0);
    // 20 of 28 ripe in either season: (10.5 / 15) of all, so 20 · 0.3² + 8 · 0.7² of 28.
    expect(held?.scores.base).toBeCloseTo((20 * 0.3 ** 2 + 8 * 0.7 ** 2) / 28, 12);
  });
  test('one season can be held against nothing', () => {
    const one = together({ 2025: [...YEAR, ...YEAR] });
    expect(one.ripe_yet.held).toBeNull();
    expect(one.usual.all.value).not.toBeNull();
    expect(one.usual.all.reach).toBe('another-spot-this-summer');
  });
});

describe('says nothing', () => {
  test.each<[string, Told, number, number]>([
    [
      'nobody looked',
      {
        2025: [
          { count: 15, state: 'prime' },
          { count: 9, state: 'unripe' },
        ],
      },
      0,
      0,
    ],
    ['all were ripe', { 2025: [{ count: 24, state: 'prime', look: ALL }] }, 24, 0],
    [
      'five unripe',
      {
        2025: [
          { count: 24, state: 'prime', look: ALL },
          { count: 5, state: 'unripe', look: NONE },
        ],
      },
      29,
      5,
    ],
    [
      'nineteen in all',
      {
        2025: [
          { count: 12, state: 'prime', look: ALL },
          { count: 7, state: 'unripe', look: NONE },
        ],
      },
      19,
      7,
    ],
  ])('%s', (_why, seasons, cuts, unripe) => {
    const { usual, of, ripe_yet } = together(seasons);
    expect(usual.all).toMatchObject({
      value: null,
      interval: null,
      reason: { code: 'few-cuts', values: { cuts, unripe } },
    });
    expect(of({ days_since_set: 40, signs: [true, true, true], variety: null })).toBeNull();
    expect(ripe_yet.held).toBeNull();
  });
  test('without a day of set the signs still speak, and no age is made up', () => {
    const dateless = YEAR.map(({ set: _, ...rest }) => rest);
    const { usual, dated } = together({ 2024: dateless, 2025: dateless });
    expect([usual.days, dated]).toEqual([null, 0]);
    expect(usual.all.value).toBeGreaterThan(usual.none.value ?? 10);
  });
});

describe('fruit still growing', () => {
  const GROWING: Told = {
    2024: YEAR,
    2025: [...YEAR, { count: 1, state: null, look: ALL, set: '07-01' }, { count: 1, state: null, set: '07-01' }],
  };
  const on = (today: string) => together(GROWING, today).growing;

  test('has its claim within the days a look holds, and no longer', () => {
    // Looked at on 11 August.
    expect(
      ['2025-08-10', '2025-08-11', '2025-08-14', '2025-08-15'].map(
        (day) => on(day).filter(({ fruit }) => fruit.id === 'F17').length,
      ),
    ).toEqual([0, 1, 1, 0]);
    const [one] = on('2025-08-14');
    // 1 July to 14 August.
    expect(one?.look).toMatchObject({ days_since_set: 44, signs: [true, true, true] });
    expect(one?.claim?.of_ten).toBe(8);
  });
  test('nobody looked at has none', () => {
    expect(on('2025-08-13').map(({ fruit }) => fruit.id)).toEqual(['F17']);
  });
  test('on the eve of the cuts, the fruits to be cut are growing too, and only the year before is known', () => {
    const found = together(TWO, '2025-08-11');
    // The fourteenth has no day of set, but somebody looked at it.
    expect(found.growing).toHaveLength(14);
    expect(found.known).toHaveLength(14);
    expect(found.growing.every(({ claim }) => claim === null)).toBe(true);
  });
  test('a look of any day says what it says in the book of that day', () => {
    const today = '2025-08-14' as Day;
    const garden = asOf(lookedGarden(GROWING), today);
    const [found] = openLedger(garden, today).ripeness;
    const [one] = found?.together.growing ?? [];
    if (!found || !one) throw new Error('nothing grows');
    expect(found.together.on(one.season, one.planting, one.fruit, today)).toEqual(one.claim);
    expect(found.together.on(one.season, one.planting, one.fruit, '2025-08-20' as Day)).toBeNull();
  });
});

test('what is kept is what would be made', () => {
  const store = new Map<string, unknown>();
  const kept: Kept = {
    find: (kind, inputs) => store.get(kind + inputs),
    keep: (kind, inputs, value) => void store.set(kind + inputs, JSON.parse(JSON.stringify(value))),
  };
  const first = lookedRipeness(TWO, undefined, kept).together;
  const again = lookedRipeness(TWO, undefined, kept).together;
  expect(store.size).toBeGreaterThan(0);
  expect(again.usual).toEqual(first.usual);
  expect(again.ripe_yet.held?.scores).toEqual(first.ripe_yet.held?.scores);
  const asked = { days_since_set: 40, signs: [true, null, false], variety: null };
  expect(again.of(asked)).toEqual(first.of(asked));
});
