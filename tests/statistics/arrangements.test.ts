import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { drawOrder, everyChoice, everyOrder, ordersOf } from '../../src/statistics/arrangements.ts';

it('counts orders', () => {
  expect([0, 1, 2, 3, 7, 10].map(ordersOf)).toEqual([1, 1, 2, 6, 5040, 3_628_800]);
  expect(ordersOf(171)).toBe(Number.POSITIVE_INFINITY);
});

describe('everyOrder', () => {
  it.each([0, 1, 2, 3, 4, 5, 6])('of %i things is each order once, the given one first', (n) => {
    const items = Array.from({ length: n }, (_, index) => index);
    const orders = [...everyOrder(items)];
    expect(orders).toHaveLength(ordersOf(n));
    expect(new Set(orders.map((order) => order.join()))).toHaveLength(orders.length);
    expect(orders.every((order) => [...order].sort((a, b) => a - b).join() === items.join())).toBe(true);
    expect(orders[0]).toEqual(items);
  });
  it('leaves the items as they were', () => {
    const items = ['a', 'b', 'c'];
    expect([...everyOrder(items)]).toHaveLength(6);
    expect(items).toEqual(['a', 'b', 'c']);
  });
});

describe('everyChoice', () => {
  it('of 2 from 4, worked by hand', () => {
    expect([...everyChoice(4, 2)].map((one) => one.join(''))).toEqual(['01', '02', '03', '12', '13', '23']);
  });
  it('of all, of none, and of more than there are', () => {
    expect([...everyChoice(3, 3)]).toEqual([[0, 1, 2]]);
    expect([...everyChoice(3, 0)]).toEqual([[]]);
    expect([...everyChoice(2, 3)]).toEqual([]);
  });
  it('of 7 from 16: each once', () => {
    const choices = [...everyChoice(16, 7)].map((one) => one.join());
    expect(new Set(choices)).toHaveLength(11_440);
    expect(choices).toHaveLength(11_440);
  });
});

describe('drawOrder', () => {
  const stream = xoroshiro128plus(20250812);
  const random = () => uniformFloat64(stream);

  it('gives each of the 24 orders of four equally often', () => {
    const counts = new Map<string, number>();
    for (let draw = 0; draw < 24_000; draw++) {
      const order = drawOrder(['a', 'b', 'c', 'd'], random).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(24);
    // Chi-square on 23 degrees of freedom stays below 49.728 in 999 of 1,000 (NIST/SEMATECH e-Handbook, from memory).
    const chiSquare = [...counts.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(chiSquare).toBeLessThan(49.728);
  });
  it('holds at the ends of the stream', () => {
    expect(drawOrder([1, 2, 3], () => 0)).toEqual([2, 3, 1]);
    expect(drawOrder([1, 2, 3], () => 1 - 2 ** -53)).toEqual([1, 2, 3]);
  });
});
