import { expect, test } from 'vitest';
import { mostOf, twentieths } from '../../../src/ledger/trial/claim.ts';

test('the most that is claimed: 16 of 20 after one summer, 18 after two, 19 ever after; none shared is as one', () => {
  expect([0, 1, 2, 3, 4, 12].map(mostOf)).toEqual([16, 16, 18, 19, 19, 19]);
});

test('a share in twentieths, kept from both ends alike', () => {
  expect([1, 2, 3, 4].map((seasons) => twentieths(1, seasons))).toEqual([16, 18, 19, 19]);
  expect([1, 2, 3, 4].map((seasons) => twentieths(0, seasons))).toEqual([4, 2, 1, 1]);
  expect([0.774, 0.776, 0.5, 0.224, 0.226].map((share) => twentieths(share, 3))).toEqual([15, 16, 10, 4, 5]);
  for (let at = 0; at <= 20; at++) expect(twentieths(at / 20, 2) + twentieths(1 - at / 20, 2)).toBe(20);
});
