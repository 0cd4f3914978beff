import { expect, test } from 'vitest';
import { claimCap, claimOfTen, type HeldOutClaim } from '../../../src/statistics/signs/claim-cap.ts';

/** So many bold claims a season, and how many of them held. */
const claims = (seasons: readonly (readonly [made: number, held: number])[], claimed = 0.92): HeldOutClaim[] =>
  seasons.flatMap(([made, held], season) =>
    Array.from({ length: made }, (_, k) => ({ season: `${season}`, claimed, held: k < held })),
  );

test.each([
  { name: 'nothing yet', made: claims([]), cap: 8, asked: false },
  {
    name: '59 claims',
    made: claims([
      [20, 20],
      [20, 20],
      [19, 19],
    ]),
    cap: 8,
    asked: false,
  },
  {
    name: '60 of two seasons',
    made: claims([
      [30, 30],
      [30, 30],
    ]),
    cap: 8,
    asked: false,
  },
  {
    name: '60 of three, all held',
    made: claims([
      [20, 20],
      [20, 20],
      [20, 20],
    ]),
    cap: 9,
    asked: true,
  },
  // 59 of 60 counted fruit by fruit would do (0.91 and up); three seasons do not say so much.
  {
    name: '60 of three, one did not hold',
    made: claims([
      [20, 20],
      [20, 20],
      [20, 19],
    ]),
    cap: 8,
    asked: true,
  },
  {
    name: '100 of five, 95 held',
    made: claims(Array.from({ length: 5 }, () => [20, 19] as const)),
    cap: 9,
    asked: true,
  },
  {
    name: '100 of five, one season in ruins',
    made: claims([
      [20, 20],
      [20, 20],
      [20, 20],
      [20, 20],
      [20, 8],
    ]),
    cap: 8,
    asked: true,
  },
  {
    name: '120 modest claims',
    made: claims(
      [
        [40, 40],
        [40, 40],
        [40, 40],
      ],
      0.84,
    ),
    cap: 8,
    asked: false,
  },
])('$name: $cap in 10', ({ made, cap, asked }) => {
  const found = claimCap(made);
  expect(found.cap).toBe(cap);
  expect(found.lower !== null).toBe(asked);
  if (found.lower !== null) expect(found.lower >= 0.8).toBe(cap === 9);
});

test('counts only claims that would read 9 or more', () => {
  const found = claimCap([
    ...claims([
      [20, 20],
      [20, 19],
      [20, 20],
    ]),
    ...claims([[50, 0]], 0.8),
  ]);
  expect(found).toMatchObject({ claims: 60, held: 59, seasons: 3 });
});

test('a claim that did not hold never raises the cap, one that held never lowers its limit', () => {
  for (let held = 15; held < 20; held++) {
    const [less, more] = [held, held + 1].map((last) =>
      claimCap(
        claims([
          [20, 20],
          [20, 20],
          [20, 20],
          [20, last],
        ]),
      ),
    );
    expect(more?.lower ?? 0).toBeGreaterThan(less?.lower ?? 1);
    expect(more?.cap ?? 0).toBeGreaterThanOrEqual(less?.cap ?? 10);
  }
});

test('claims are whole and never above the cap', () => {
  expect([0, 0.04, 0.05, 0.649, 0.651, 0.849, 0.97, 1].map((chance) => claimOfTen(chance, 8))).toEqual([
    0, 0, 1, 6, 7, 8, 8, 8,
  ]);
  expect([0.849, 0.851, 1].map((chance) => claimOfTen(chance, 9))).toEqual([8, 9, 9]);
  expect(() => claimOfTen(1.2, 8)).toThrow('invalid chance: 1.2');
  expect(() => claimCap([{ season: 'a', claimed: Number.NaN, held: true }])).toThrow(RangeError);
});
