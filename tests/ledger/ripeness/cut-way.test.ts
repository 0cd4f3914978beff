import { expect, test } from 'vitest';
import type { Fruit } from '../../../src/garden/garden.ts';
import { cutWay } from '../../../src/ledger/ripeness/cut-way.ts';

type Parts = Parameters<typeof cutWay>[0];

const parts = (why: string | null, reason: string | null = null, condition: string | null = null): Parts =>
  ({ cut: { why }, pick: { reason, condition } }) as unknown as Pick<Fruit, 'cut' | 'pick'>;

test.each([
  ['ripe', 'looked-ripe'],
  ['lot', 'lot'],
  ['damaged', 'free'],
  ['season-end', 'free'],
  ['curious', 'other'],
])('what the cut says decides: %s is %s', (why, way) => {
  // Whatever the pick says beside it.
  expect(cutWay(parts(why, 'ripe', 'split'))).toBe(way);
});

test.each([
  ['ripe', 'split', 'looked-ripe'],
  ['damage', null, 'free'],
  ['frost', 'whole', 'free'],
  ['season-end', null, 'free'],
  [null, 'gnawed', 'free'],
  ['other', 'whole', 'other'],
  ['forecast', null, 'other'],
  [null, null, 'other'],
])('without it, the pick: %s and %s is %s', (reason, condition, way) => {
  expect(cutWay(parts(null, reason, condition))).toBe(way);
});

test('a fruit cut off the vine at the end, never picked, with no reason given', () => {
  expect(cutWay({ cut: { why: null }, pick: null } as unknown as Parts)).toBe('other');
});
