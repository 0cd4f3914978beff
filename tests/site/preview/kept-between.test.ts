import { expect, test } from 'vitest';
import { keptInMemory, NOTHING_KEPT } from '../../../src/kept.ts';
import { keptBetween } from '../../../src/site/preview/kept-between.ts';

test('keeps what the last whole build used, and drops the rest', () => {
  const kept = keptBetween(NOTHING_KEPT);
  kept.keep('charts', 'a', 1);
  kept.keep('charts', 'b', 2);
  kept.turn();
  expect(kept.find('charts', 'a')).toBe(1);
  kept.turn();
  expect([kept.find('charts', 'a'), kept.find('charts', 'b'), kept.find('fits', 'a')]).toEqual([
    1,
    undefined,
    undefined,
  ]);
});

test('builds that break off drop nothing', () => {
  const kept = keptBetween(NOTHING_KEPT);
  kept.keep('charts', 'a', 1);
  kept.turn();
  for (const text of ['b', 'c', 'd']) kept.keep('files', text, text);
  expect([kept.find('charts', 'a'), kept.find('files', 'b')]).toEqual([1, 'b']);
});

test('takes from below, and keeps nothing there', () => {
  const base = keptInMemory();
  base.keep('fits', 'a', 1);
  const kept = keptBetween(base);
  kept.keep('fits', 'b', 2);
  expect([kept.find('fits', 'a'), kept.find('fits', 'b'), base.find('fits', 'b')]).toEqual([1, 2, undefined]);
});
