import { expect, test } from 'vitest';
import { shareBelow } from './share-below.ts';

test('the standard normal table', () => {
  // Table of the standard normal distribution, four digits: half a unit in the last.
  for (const [z, share] of [
    [0, 0.5],
    [0.5, 0.6915],
    [1, 0.8413],
    [1.96, 0.975],
    [3, 0.9987],
    [-1.645, 0.05],
  ] as const)
    expect(Math.abs(shareBelow(z) - share)).toBeLessThan(0.00005);
});
