import fc from 'fast-check';
import { expect, it } from 'vitest';
import { areJoined, components } from '../../src/statistics/connectivity.ts';

it('joins what was together, and what was together with a third', () => {
  const found = components([['d', 'e'], ['b', 'a'], ['f'], ['c', 'b']]);
  expect(found).toEqual([['a', 'b', 'c'], ['d', 'e'], ['f']]);
  expect(areJoined(found, 'a', 'c')).toBe(true);
  expect(areJoined(found, 'c', 'a')).toBe(true);
  expect(areJoined(found, 'a', 'd')).toBe(false);
  expect(areJoined(found, 'f', 'f')).toBe(true);
  expect(areJoined(found, 'a', 'nobody')).toBe(false);
});

it('joins the varieties of a season, and seasons by a variety they share', () => {
  expect(
    components([
      ['r', 's', 't'],
      ['u', 'v'],
      ['t', 'u'],
    ]),
  ).toEqual([['r', 's', 't', 'u', 'v']]);
});

it('knows nothing of no edges, and of edges of nothing', () => {
  expect(components([])).toEqual([]);
  expect(components([[], ['a'], []])).toEqual([['a']]);
});

const edges = fc.array(fc.array(fc.constantFrom(...'abcdefghij'), { maxLength: 3 }), { maxLength: 9 });

it('gives the classes of the transitive closure, in any order of the edges', () => {
  fc.assert(
    fc.property(edges, (given) => {
      const things = [...new Set(given.flat())].sort();
      const reach = new Map(things.map((thing) => [thing, new Set([thing])]));
      // Warshall 1962, Journal of the ACM 9:11-12: whoever reaches the middle one reaches what it reaches.
      for (const edge of given) for (const one of edge) for (const other of edge) reach.get(one)?.add(other);
      for (const middle of things)
        for (const one of things)
          if (reach.get(one)?.has(middle)) for (const other of reach.get(middle) ?? []) reach.get(one)?.add(other);
      const closed = new Map(things.map((thing) => [thing, [...(reach.get(thing) ?? [])].sort()]));
      const found = components(given);
      expect(found).toEqual(things.map((thing) => closed.get(thing)).filter((one, at) => one?.[0] === things[at]));
      expect(components(given.map((edge) => edge.toReversed()).reverse())).toEqual(found);
    }),
    { seed: 20251102, numRuns: 300 },
  );
});
