import { describe, expect, it } from 'vitest';
import { remainingDraws, ripeWindow } from '../../../src/statistics/ripe-states/remaining-time.ts';
import { cut, given, mean, sd, TWELVE, told } from './telling.ts';

const states = told(TWELVE);
const hanging = { variety: 'a', from: 34, to: 35, call_wrong: 0 };
const AFTER = [0, 2, 5, 10, 20, 40];

describe('what must not matter', () => {
  it('the order of the fruits', () => {
    expect(told(TWELVE.toReversed())).toEqual(states);
    expect(told([...TWELVE.slice(5), ...TWELVE.slice(0, 5)])).toEqual(states);
  });

  it('the same seed is the same, another moves a window by little', () => {
    expect(told(TWELVE)).toEqual(states);
    const [one, other] = [states, told(TWELVE, { seed: 2 })].map((found) => given(ripeWindow(found, hanging, [])));
    expect(other).not.toEqual(one);
    const width = (one?.to_just.most.high ?? 0) - (one?.to_just.most.low ?? 0);
    expect(Math.abs((one?.to_just.most.high ?? 0) - (other?.to_just.most.high ?? 0))).toBeLessThan(0.06 * width);
    expect(remainingDraws(states, hanging, 5)).toEqual(remainingDraws(states, hanging, 5));
  });

  it.each([2, 17.3, 0.01])('the unit of time: times %d', (factor) => {
    const scaled = told(TWELVE.map((fruit) => ({ ...fruit, from: factor * fruit.from, to: factor * fruit.to })));
    for (const key of ['spread', 'just', 'prime', 'between'] as const)
      for (const at of [0, 499, 999]) expect(scaled[key][at]).toBeCloseTo(states[key][at] ?? 0, 9);
    const own = given(ripeWindow(states, hanging, [3]));
    const fruit = { ...hanging, from: factor * hanging.from, to: factor * hanging.to };
    const other = given(ripeWindow(scaled, fruit, [3 * factor]));
    expect(other.to_just.most.high / factor).toBeCloseTo(own.to_just.most.high, 4);
    expect(other.to_just.median / factor).toBeCloseTo(own.to_just.median, 4);
    expect(other.later[0]?.unripe).toBeCloseTo(own.later[0]?.unripe ?? 0, 7);
  });

  it('the names of varieties, but for their order', () => {
    const renamed = told(TWELVE.map((fruit) => ({ ...fruit, variety: `z ${fruit.variety}` })));
    expect(renamed.varieties.map(({ middle }) => middle)).toEqual(states.varieties.map(({ middle }) => middle));
  });

  it('calls, where the settings do not use them', () => {
    const called = TWELVE.map((fruit) => ({ ...fruit, called_earlier: 3 }));
    expect(told(called)).toEqual(states);
    expect(told([...TWELVE, { variety: 'a', from: 30, to: 30, state: null, called_earlier: 0 }])).toEqual(states);
  });
});

describe('what must matter, and which way', () => {
  it('chances add up, and move one way with time', () => {
    for (const call_wrong of [null, 0, 0.1]) {
      const { later } = given(ripeWindow(states, { ...hanging, call_wrong }, AFTER));
      for (const [at, { unripe, ripe, over }] of later.entries()) {
        expect(unripe + (ripe ?? Number.NaN) + (over ?? Number.NaN)).toBeCloseTo(1, 9);
        expect(unripe).toBeLessThanOrEqual(later[at - 1]?.unripe ?? 1);
        expect(over ?? Number.NaN).toBeGreaterThanOrEqual(later[at - 1]?.over ?? 0);
      }
    }
  });

  it('quantiles stand in order, and so do the three times', () => {
    const { to_just, to_prime, to_over } = given(ripeWindow(states, hanging, []));
    if ('cannot' in to_prime || 'cannot' in to_over) throw new Error('refused');
    for (const { median, half, most } of [to_just, to_prime, to_over]) {
      const steps = [most.low, half.low, median, half.high, most.high];
      expect(steps).toEqual(steps.toSorted((a, b) => a - b));
    }
    expect(to_just.median).toBeLessThan(to_prime.median);
    expect(to_prime.median).toBeLessThan(to_over.median);
  });

  it('the later variety is later, and the unseen one less sure than either', () => {
    const [a, b] = ['a', 'b'].map((variety) => given(ripeWindow(states, { ...hanging, variety }, [])));
    const unseen = given(ripeWindow(states, { ...hanging, variety: null }, []));
    expect(b?.to_just.median).toBeGreaterThan(a?.to_just.median ?? Number.NaN);
    const widths = [a, b, unseen].map((one) => (one?.to_just.most.high ?? 0) - (one?.to_just.most.low ?? 0));
    expect(widths[2]).toBeGreaterThan(Math.max(widths[0] ?? 0, widths[1] ?? 0));
  });

  it('a variety of one cut leans on the others', () => {
    const more = told([...TWELVE, cut('c', 48, 'U')]);
    const [a, , c] = more.varieties;
    expect(mean(c?.middle ?? [])).toBeGreaterThan(mean(more.common));
    expect(sd(c?.middle ?? [])).toBeGreaterThan(sd(a?.middle ?? []));
    expect(c?.cut).toEqual({ U: 1, J: 0, P: 0, O: 0 });
  });

  it('a wider span of set dates says less', () => {
    const wide = told(TWELVE.map((fruit) => ({ ...fruit, from: fruit.from - 8, to: fruit.to + 8 })));
    expect(sd(wide.varieties[0]?.middle ?? [])).toBeGreaterThan(sd(states.varieties[0]?.middle ?? []));
  });

  it('fruits called not ripe shortly before they were cut ripe tell more than the cut alone', () => {
    const called = TWELVE.map((fruit) => ({ ...fruit, called_earlier: fruit.state === 'U' ? null : 8 }));
    const sure = told(called, { call_wrong: 0.05 });
    // Prime or over eight days after unripe: the middle moves up to the later times.
    expect(mean(sure.varieties[0]?.middle ?? [])).toBeGreaterThan(mean(states.varieties[0]?.middle ?? []));
  });

  it('an unripe fruit older than its date allows is told apart', () => {
    const found = ripeWindow(told(TWELVE), { ...hanging, from: 150, to: 151 }, []);
    expect(found).toEqual({ cannot: { code: 'outgrown' } });
    expect(remainingDraws(states, { ...hanging, from: 150, to: 151 }, 1)).toEqual({ cannot: { code: 'outgrown' } });
    // Not called unripe, it is simply over.
    const [now] = given(ripeWindow(states, { ...hanging, from: 150, to: 151, call_wrong: null }, [0])).later;
    expect(now?.over).toBeGreaterThan(0.999);
  });
});
