import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import type { Fruit } from '../../../src/garden/garden.ts';
import type { Outcome } from '../../../src/ledger/replay/outcome.ts';
import { judgeAdvice, scoreAdvice } from '../../../src/ledger/replay/score-advice.ts';
import { judgeWindow, scoreWindows } from '../../../src/ledger/replay/score-windows.ts';
import type { WeekAdvice } from '../../../src/ledger/replay/week-advice.ts';
import type { WeekWindow } from '../../../src/ledger/replay/week-windows.ts';
import { USUAL_LOSSES } from '../../../src/statistics/pick-or-wait/loss.ts';

const day = (text: string): Day => `2025-08-${text}` as Day;
const cameOff = (state: Outcome['state'], first: string, more: object = {}, last = first): Outcome => ({
  fruit: { pick: null, end: null, ...more } as unknown as Fruit,
  state,
  off: { first: day(first), last: day(last) },
});

describe('a window of the 10th to the 20th, the narrower of the 13th to the 16th, told on the 2nd', () => {
  const window: WeekWindow = {
    season: '2025',
    week: day('02'),
    crop: 'globe',
    fruit: 'F1',
    half: { from: day('13'), to: day('16') },
    most: { from: day('10'), to: day('20') },
    over: null,
  };

  test.each([
    ['unripe', '09', 'as-said', 'as-said'],
    ['just-ripe', '09', 'ripe-before', 'ripe-before'],
    ['over', '09', 'over-before', 'over-before'],
    ['unripe', '10', 'inside', 'as-said'],
    ['prime', '12', 'inside', 'ripe-before'],
    ['prime', '14', 'inside', 'inside'],
    ['unripe', '17', 'inside', 'unripe-after'],
    ['unripe', '20', 'inside', 'unripe-after'],
    ['unripe', '21', 'unripe-after', 'unripe-after'],
    ['over', '21', 'as-said', 'as-said'],
  ] as const)('%s when it came off on the %s: %s, of the narrower %s', (state, off, most_came, half_came) => {
    expect(judgeWindow(window, cameOff(state, off))).toMatchObject({ state, most_came, half_came });
  });

  test('is not judged by a fruit off before it was told, nor by one never cut', () => {
    expect(judgeWindow(window, cameOff('prime', '01')).most_came).toBeNull();
    expect(judgeWindow(window, cameOff('prime', '02')).most_came).toBe('ripe-before');
    expect(judgeWindow(window, undefined).most_came).toBeNull();
  });

  test('a span of days belies it only when all of them do', () => {
    expect(judgeWindow(window, cameOff('over', '08', {}, '11')).most_came).toBe('inside');
    expect(judgeWindow(window, cameOff('unripe', '19', {}, '23')).most_came).toBe('inside');
  });

  test('an end beyond the season is later than any day', () => {
    const open = { ...window, most: { from: day('10'), to: null }, half: { from: null, to: null } };
    expect(judgeWindow(open, cameOff('unripe', '30'))).toMatchObject({ most_came: 'inside', half_came: 'as-said' });
  });

  test('counts', () => {
    const outcomes = [
      cameOff('over', '09'),
      cameOff('unripe', '09'),
      cameOff('unripe', '21'),
      cameOff('prime', '14'),
      undefined,
    ];
    const judged = outcomes.map((outcome, at) => judgeWindow({ ...window, fruit: `F${at % 3}` }, outcome));
    expect(scoreWindows(judged)).toEqual({
      windows: 4,
      fruits: 3,
      over_before: 1,
      ripe_before: 0,
      unripe_after: 1,
      most: { outside: 3, as_said: 1, inside: 1 },
      half: { outside: 3, as_said: 1, inside: 1 },
    });
    expect(scoreWindows([])).toBeNull();
  });
});

/** Unripe and lost are much (4), split some (2), thinned little (1). */
describe('advice, by the usual losses', () => {
  const advice = (answer: WeekAdvice['answer']): WeekAdvice => ({
    season: '2025',
    week: day('02'),
    crop: 'globe',
    fruit: 'F1',
    looked_on: day('04'),
    row: 8,
    rain: 'likely',
    answer,
  });
  const split = { pick: { condition: 'split' } };
  const gnawed = { end: { lost_to: 'animal' } };

  test.each([
    ['pick', cameOff('unripe', '05'), 4, 0, 4],
    ['wait', cameOff('unripe', '05'), 4, 0, 0],
    ['either', cameOff('unripe', '05'), 4, 0, 2],
    ['pick', cameOff('prime', '06', split), 0, 2, 0],
    ['wait', cameOff('prime', '06', split), 0, 2, 2],
    ['wait', cameOff('unripe', '06', split), 4, 2, 0],
    ['pick', cameOff('unripe', '06', split), 4, 2, 2],
    ['wait', cameOff('prime', '06', gnawed), 0, 4, 4],
    ['wait', cameOff('over', '07'), 0, 4, 4],
    ['wait', cameOff('prime', '06'), 0, 0, 0],
    // Split already when it was looked at: waiting did not do it.
    ['wait', cameOff('prime', '04', split), 0, 0, 0],
  ] as const)('%s', (answer, outcome, picking, waiting, regret) => {
    expect(judgeAdvice(advice(answer), outcome, USUAL_LOSSES)).toMatchObject({ picking, waiting, regret });
  });

  test('is judged only while the look held', () => {
    expect(judgeAdvice(advice('wait'), cameOff('over', '08'), USUAL_LOSSES).regret).toBeNull();
    expect(judgeAdvice(advice('wait'), undefined, USUAL_LOSSES).regret).toBeNull();
  });

  test('is held against picking and waiting each time', () => {
    const judged = [
      judgeAdvice(advice('pick'), cameOff('unripe', '05'), USUAL_LOSSES), // 4 for nothing
      judgeAdvice(advice('wait'), cameOff('prime', '06', split), USUAL_LOSSES), // 2 for nothing
      judgeAdvice(advice('either'), cameOff('over', '06'), USUAL_LOSSES), // 2 for nothing
      judgeAdvice(advice('wait'), undefined, USUAL_LOSSES),
    ];
    expect(scoreAdvice(judged)).toEqual({
      judged: 3,
      missed: 2,
      picks: 1,
      waits: 1,
      regret: { card: 8, always_pick: 4, always_wait: 6 },
    });
    expect(scoreAdvice([])).toBeNull();
  });
});
