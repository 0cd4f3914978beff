import { describe, expect, test } from 'vitest';
import type { SignWorth } from '../../../src/ledger/ripeness/sign-worth.ts';
import { signEvidence } from '../../../src/statistics/signs/likelihood-ratio.ts';
import { ALL, lookedRipeness, NONE, type Told } from './looked-garden.ts';

/** 14 ripe (2 of them over) and 7 unripe; the coil showed on 12 ripe, both over ones among them, and 2 unripe. */
const MIXED: Told = {
  2025: [
    { count: 8, state: 'prime', look: ALL, why: 'ripe' },
    { count: 2, state: 'just-ripe', look: 'tendril: half-brown', why: 'lot' },
    { count: 2, state: 'just-ripe', look: 'tendril: green', why: 'lot' },
    { count: 2, state: 'over', look: 'tendril: dry', why: 'damaged' },
    { count: 1, state: 'unripe', look: 'tendril: dry', why: 'lot' },
    { count: 1, state: 'unripe', look: 'tendril: dry', why: 'curious' },
    { count: 5, state: 'unripe', look: NONE, why: 'lot' },
    { count: 3, state: 'unripe' },
    { count: 2, state: 'unripe', look: ALL, why: 'thinned' },
  ],
};

const worthOf = (seasons: Told, id: string): readonly SignWorth[] => {
  const found = lookedRipeness(seasons).signs.find(({ sign }) => sign.id === id);
  if (!found) throw new Error(`no sign ${id}`);
  return found.worth;
};

describe('two questions', () => {
  const [ripe, late] = worthOf(MIXED, 'coil');

  test('are counted as by hand, thinned fruit and fruit nobody looked at left out', () => {
    expect(ripe?.counts).toEqual({ yes: { shown: 12, looked: 14 }, no: { shown: 2, looked: 7 } });
    expect(late?.counts).toEqual({ yes: { shown: 2, looked: 2 }, no: { shown: 10, looked: 12 } });
  });
  test('and those by lot apart', () => {
    expect(ripe?.by_lot).toEqual({ yes: { shown: 2, looked: 4 }, no: { shown: 1, looked: 6 } });
    expect(late?.by_lot).toEqual({ yes: { shown: 0, looked: 0 }, no: { shown: 2, looked: 4 } });
  });
  test('the ratio is that of the formula, and leans to ripe', () => {
    const { ratio, interval } = signEvidence(
      { yes: { shown: 12, looked: 14 }, no: { shown: 2, looked: 7 } },
      0.9,
    ).shown;
    expect(ripe?.ratio).toMatchObject({ value: ratio, interval, unit: 'times', n: 21, method: 'sign-ratio' });
    expect(ripe?.leans).toBe('to-yes');
    expect(ripe?.ratio.reach).toBe('another-spot-this-summer');
  });
  test('two over-ripe ones are too few to ask whether it is too late', () => {
    expect(late?.ratio).toMatchObject({
      value: null,
      interval: null,
      reason: { code: 'few-over', values: { cuts: 14, over: 2, need_cuts: 20, need_over: 6 } },
    });
    expect(late?.leans).toBeNull();
  });
});

test('six over-ripe of twenty are enough, and five are not', () => {
  const late = (over: number): SignWorth | undefined =>
    worthOf(
      {
        2025: [
          { count: over, state: 'over', look: ALL },
          { count: 20 - over, state: 'prime', look: NONE },
        ],
      },
      'coil',
    )[1];
  expect(late(6)?.leans).toBe('to-yes');
  expect(late(5)?.ratio.reason?.code).toBe('few-over');
});

test('a sign that shows as often in both may be worth nothing, and one that shows in the unripe leans there', () => {
  const coil = (ripe: string, unripe: string) =>
    worthOf(
      {
        2025: [
          { count: 14, state: 'prime', look: ripe },
          { count: 10, state: 'unripe', look: unripe },
        ],
      },
      'coil',
    )[0];
  expect(coil(ALL, ALL)?.leans).toBe('unsure');
  expect(coil(NONE, ALL)?.leans).toBe('to-no');
});

test('how the judged came to be cut adds up to all of them', () => {
  const { ways, judged } = lookedRipeness(MIXED);
  expect(ways).toEqual({ 'looked-ripe': 8, lot: 10, free: 2, other: 4 });
  expect(judged).toHaveLength(24);
});
