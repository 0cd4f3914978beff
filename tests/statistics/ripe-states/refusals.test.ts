import { expect, it } from 'vitest';
import { ripeWindow } from '../../../src/statistics/ripe-states/remaining-time.ts';
import { WEAK_RIPE_PRIORS } from '../../../src/statistics/ripe-states/ripe-priors.ts';
import { ripeStates } from '../../../src/statistics/ripe-states/ripe-states.ts';
import type { RipeState, SeenFruit } from '../../../src/statistics/ripe-states/seen-fruit.ts';
import { cut, given, SETTINGS, TWELVE, told } from './telling.ts';

const fruits = (states: string): SeenFruit[] => [...states].map((state, at) => cut('a', 35 + at, state as RipeState));

it.each([
  { name: 'nothing', cuts: '', cannot: { code: 'few-cut', cut: 0, need: 6 } },
  { name: 'five', cuts: 'UUJPO', cannot: { code: 'few-cut', cut: 5, need: 6 } },
  { name: 'all unripe', cuts: 'UUUUUUU', cannot: { code: 'one-state', state: 'U', cut: 7 } },
  { name: 'all prime', cuts: 'PPPPPP', cannot: { code: 'one-state', state: 'P', cut: 6 } },
  { name: 'none unripe', cuts: 'JJPPPO', cannot: { code: 'no-unripe', cut: 6 } },
])('tells why: $name', ({ cuts, cannot }) => {
  expect(ripeStates(fruits(cuts), WEAK_RIPE_PRIORS, SETTINGS)).toEqual({ cannot });
});

it('fruits that were only called count for none', () => {
  const called: SeenFruit[] = [1, 2, 3].map((at) => ({
    variety: 'a',
    from: 30 + at,
    to: 31 + at,
    state: null,
    called_earlier: 0,
  }));
  const found = ripeStates([...fruits('UUJPO'), ...called], WEAK_RIPE_PRIORS, { ...SETTINGS, call_wrong: 0.1 });
  expect(found).toEqual({ cannot: { code: 'few-cut', cut: 5, need: 6 } });
});

it('one unripe fruit of another variety is enough', () => {
  const found = told([...fruits('JJPPPO'), cut('b', 30, 'U')]);
  expect(found.varieties.map(({ cut: counts }) => counts.U)).toEqual([0, 1]);
});

it('stages that no fruit was cut in are not told', () => {
  const hanging = { variety: 'a', from: 34, to: 35, call_wrong: 0 };
  const prime = given(ripeWindow(told(fruits('UUUJPPP')), hanging, [5]));
  expect('cannot' in prime.to_prime).toBe(false);
  expect(prime.to_over).toEqual({ cannot: { code: 'few-cut-over' } });
  expect(prime.later[0]).toMatchObject({ ripe: null, over: null });
  // One over is an odd one; two are told.
  const one = given(ripeWindow(told(fruits('UUUJPPO')), hanging, []));
  expect(one.to_over).toEqual({ cannot: { code: 'few-cut-over' } });
  const two = given(ripeWindow(told(fruits('UUUJPOO')), hanging, []));
  expect('cannot' in two.to_over).toBe(false);
  const just = given(ripeWindow(told(fruits('UUUJJJJ')), hanging, []));
  expect(just.to_prime).toEqual({ cannot: { code: 'none-cut-prime' } });
});

it('throws for what is no fruit, prior, setting or window', () => {
  const [first, ...others] = TWELVE;
  const wrong: Partial<SeenFruit>[] = [
    { from: -1 },
    { from: 50, to: 40 },
    { from: 0, to: 0 },
    { to: Number.POSITIVE_INFINITY },
    { from: Number.NaN },
    { called_earlier: -1 },
    { called_earlier: 31 },
  ];
  for (const change of wrong) {
    const given_ = [{ ...(first ?? cut('a', 30, 'U')), ...change }, ...others];
    expect(() => ripeStates(given_, WEAK_RIPE_PRIORS, SETTINGS), JSON.stringify(change)).toThrow(RangeError);
  }
  expect(() => ripeStates(TWELVE, { ...WEAK_RIPE_PRIORS, spread: 0 }, SETTINGS)).toThrow(RangeError);
  for (const change of [{ draws: 0 }, { draws: 1.5 }, { call_wrong: -0.1 }, { call_wrong: 0.5 }])
    expect(() => ripeStates(TWELVE, WEAK_RIPE_PRIORS, { ...SETTINGS, ...change })).toThrow(RangeError);
  const states = told(TWELVE);
  const hanging = { variety: 'a', from: 34, to: 35, call_wrong: 0 };
  expect(() => ripeWindow(states, hanging, [-1])).toThrow(RangeError);
  expect(() => ripeWindow(states, { ...hanging, to: 33 }, [])).toThrow(RangeError);
  expect(() => ripeWindow(states, { ...hanging, call_wrong: 0.7 }, [])).toThrow(RangeError);
});
